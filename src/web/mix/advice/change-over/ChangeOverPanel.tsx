/** From the present food to this mix over days: what is fed now, how long it takes, and the plan. */

import { useMemo, useState } from 'react';
import { words as nutrientWords } from '../../../../formulation/solve/bounds.ts';
import { hereAmong } from '../../../../household/reckon/care/here.ts';
import { dailyGramsOf, type MixAsFood, withoutFresh } from '../../../../household/reckon/mix/change-over.ts';
import type { ChangeOverPlan } from '../../../../kitchen/feeding/change-over.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { today } from '../../../shared/today.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import { BalanceFirst } from '../../BalanceFirst.tsx';
import { isFit } from '../../useFormulation.ts';
import type { AdviceProps } from '../advice-props.ts';
import { ChangeOverFields } from './ChangeOverFields.tsx';
import { ChangeOverPlanView } from './ChangeOverPlanView.tsx';
import type { ChangeOverChoices } from './choices.ts';
import { dailyFault, planColumns } from './plan-columns.ts';
import { usePresentFood } from './present-food.ts';
import './change-over.css';

/** What was chosen for each mix, for as long as the page is open: a look at another tab loses nothing. */
const chosen = new Map<string, ChangeOverChoices>();

export function ChangeOverPanel({ mix, view }: AdviceProps) {
  const t = words().changeOver;
  const { house } = useMixDraft();
  const animals = hereAmong(house.animals, mix.animalIds);
  const usual = dailyGramsOf(mix.problem, animals);
  const [choices, setChoices] = useState<ChangeOverChoices>(
    () => chosen.get(mix.id) ?? { present: '', days: 14, start: today() },
  );
  // Two fields may be changed in one go: each change builds on the one before, not on what was last drawn.
  const choose = (patch: Partial<ChangeOverChoices>) =>
    setChoices((before) => {
      const next = { ...before, ...patch };
      chosen.set(mix.id, next);
      return next;
    });
  const daily = choices.daily ?? usual?.grams;
  const step = choices.step ?? mix.problem.scale_step_grams;
  const present = usePresentFood(choices, mix);
  const { problem, fresh } = useMemo(
    () => withoutFresh(mix.problem, view.evaluation?.beside),
    [mix.problem, view.evaluation?.beside],
  );
  const fault = daily === undefined ? undefined : dailyFault(daily, step);
  const ready = isFit(view.state) && present.value && daily !== undefined && !fault && choices.start !== '';
  const plan: ChangeOverPlan = {
    days: choices.days,
    dailyGrams: daily,
    stepGrams: step,
    start: choices.start,
  };
  const asked = useAnswer(
    'change',
    ready ? { problem, shares: mix.shares, old: present.value!.food, plan } : undefined,
    (q) => engine.changeOver(q.problem, q.shares, q.old, q.plan),
  );

  return (
    <section className="change-over" aria-label={t.heading}>
      <div className="asked-head">
        <h2>{t.heading}</h2>
        <AnswerState working={present.working || asked.working} fault={present.fault ?? asked.fault} />
      </div>
      <p className="hint">{problem.beside.length > 0 ? t.introBeside : t.intro}</p>
      <ChangeOverFields
        mix={mix}
        choices={choices}
        choose={choose}
        daily={daily}
        dailyFrom={choices.daily === undefined ? usual?.from : undefined}
        dailyFault={fault}
        step={step}
      />
      {fresh.length > 0 && <p>{t.fresh(fresh.map((f) => f.name ?? f.id))}</p>}
      {!isFit(view.state) && <BalanceFirst view={view} words={t.first} />}
      {isFit(view.state) && choices.present === '' && <p>{t.choose}</p>}
      {isFit(view.state) && choices.present !== '' && daily === undefined && <p>{t.sayDaily}</p>}
      {present.value && <Partly blend={present.value} />}
      {ready && asked.value && (
        <ChangeOverPlanView
          plan={asked.value}
          columns={planColumns(present.value!.food, mix.name, problem.beside, (f) => f.name ?? f.id)}
          title={t.title(present.value!.food.name ?? '', mix.name)}
          daily={daily}
          stale={asked.working}
        />
      )}
    </section>
  );
}

function Partly({ blend: { food, partly } }: { blend: MixAsFood }) {
  const t = words().changeOver;
  const name = food.name ?? food.id;
  const shown = partly.slice(0, 6).map(nutrientWords);
  if (shown.length === 0) return null;
  const more = partly.length - shown.length;
  return <p className="hint">{more > 0 ? t.partlyMore(name, shown, more) : t.partly(name, shown)}</p>;
}
