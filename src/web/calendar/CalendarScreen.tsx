/** Calendar: from buying to the bowl, forwards or backwards. */
import './calendar.css';

import { useState } from 'react';
import { Button } from 'react-aria-components';
import { capital } from '../../formulation/explain/sentences.ts';
import type { Mix } from '../../household/model.ts';
import { sizeOfNext } from '../../household/reckon/batch/next-batch.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { besideDays } from '../../household/reckon/calendar/fed-beside.ts';
import {
  lotsWithoutDays,
  overdueFreezeSteps,
  readyFoods,
} from '../../household/reckon/calendar/plan-notices.ts';
import { planSentences } from '../../kitchen/calendar/sentences.ts';
import { shortTitle } from '../../kitchen/calendar/step-words.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { AnswerState } from '../shared/answer.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useEachMinute } from '../shared/hooks/each-minute.ts';
import { useCalendar } from '../shared/hooks/useCalendar.ts';
import { usePellets } from '../shared/hooks/usePellets.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { MixChoice } from '../shared/mix/MixChoice.tsx';
import { stopHead } from '../shared/recall/StopNotice.tsx';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { BesideDays } from './BesideDays.tsx';
import { DaysFields } from './DaysFields.tsx';
import { ExportPlan } from './ExportPlan.tsx';
import { KitchenPicture } from './KitchenPicture.tsx';
import { PlanFrame } from './PlanFrame.tsx';
import { StepList } from './StepList.tsx';

export function CalendarScreen() {
  useEachMinute();
  const { mix } = useMixDraft();
  if (!mix) return <FirstMix />;
  return (
    <main id="main" className="page cal-page">
      <h1>{words().calendar.title}</h1>
      <MixChoice />
      <Calendar key={mix.id} kept={mix} day={today()} />
    </main>
  );
}

function Calendar({ kept, day }: { kept: Mix; day: Day }) {
  const { house } = useMixDraft();
  const { mix, view, fault } = useCalendar(kept, day);
  const [chosen, setChosen] = useState<string>();
  const stocks = usePellets(day) ?? [];
  const t = words().calendar.screen;
  if (!view)
    return fault === undefined ? (
      <AnswerState working fault={undefined} />
    ) : (
      <p role="alert" className="field-error">
        {fault}
      </p>
    );
  if (view.plan.input.supplies.length === 0 && !view.weighing)
    return (
      <p>
        <Sentence of={t.noShares(mix.name)} with={{ mix: (text) => <a href={linkTo('mix')}>{text}</a> }} />
      </p>
    );
  const { grams } = sizeOfNext(house, mix, view.under.chosenFor(mix.problem));
  const { plan } = view;
  const beside = besideDays(stocks, mix).foods;
  return (
    <>
      <p className="hint">
        {grams === undefined
          ? t.for(plan.input.name, mix.name)
          : t.forGrams(plan.input.name, mix.name, grams)}{' '}
        <a href={linkTo('shopping')}>{t.toBuy}</a>
      </p>
      {view.stopped.map(({ batch, name, stop }) => (
        <StopLine key={batch.id} batch={batch} name={name} stop={stop} />
      ))}
      <section aria-label={t.inShort} className="cal-said">
        {planSentences(plan).map((s) => (
          <p key={s}>{s}</p>
        ))}
      </section>
      <Notices view={view} day={day} />
      <PlanFrame view={view} day={day} />
      <KitchenPicture plan={plan} beside={beside} day={day} chosen={chosen} choose={setChosen} />
      <StepList mix={mix} view={view} day={day} chosen={chosen} choose={setChosen} />
      <BesideDays mix={mix} stocks={stocks} day={day} />
      <Ready names={readyFoods(plan)} />
      <DaysFields />
      <ExportPlan view={view} beside={beside} />
      <p className="hint cal-foot">{words().kitchen.stepsInPractice}</p>
    </>
  );
}

/** What stands in the way, or was dropped, each with its way out. */
function Notices({ view, day }: { view: BatchCalendar; day: Day }) {
  const { house } = useMixDraft();
  const { change, error } = useKitchen();
  const t = words().calendar.screen;
  const { plan, dropped, next } = view;
  const toFreezer = (text: string) => <a href={linkTo('cupboard', 'cold')}>{text}</a>;
  const late = overdueFreezeSteps(plan, day);
  const without = lotsWithoutDays(house, plan);
  const animals = view.present?.runsOut.status === 'unknown';
  return (
    <>
      {view.fromPassed && <p className="notice-line">{t.beginPassed}</p>}
      {dropped.map((d) => (
        <p key={d} className="notice-line">
          {d}
        </p>
      ))}
      {late.map((s) => (
        <p key={s.id} className="notice-line">
          <Sentence
            of={t.overdue(s.goods.map((g) => g.name).join(', '), shortTitle(s), dayInWords(s.end, plan.end))}
            with={{ tick: toFreezer }}
          />
        </p>
      ))}
      {without.length > 0 && (
        <p className="notice-line">
          <Sentence
            of={
              without.length === 1 ? t.packWithoutDays(without[0] ?? '') : t.packsWithoutDays(without.length)
            }
            with={{ plan: toFreezer }}
          />
        </p>
      )}
      {animals && (
        <p className="notice-line">
          <Sentence
            of={t.whenRunsOut}
            with={{
              animals: (text) => <a href={linkTo('animals')}>{text}</a>,
              now: (text) => <a href={linkTo('today')}>{text}</a>,
            }}
          />
        </p>
      )}
      {(next.pins.length > 0 || dropped.length > 0) && (
        <p>
          <Button
            className="button small"
            onPress={() => {
              change({ next: { ...next, pins: [] } });
              focusWhenThere('.cal-list h2');
            }}
          >
            {t.takeBack}
          </Button>
        </p>
      )}
      <Failed error={error} />
    </>
  );
}

/** A batch that is not fed any more, with the way to why. */
function StopLine({ batch, name, stop }: BatchCalendar['stopped'][number]) {
  const t = words().pelletStock.stop;
  return (
    <p className="stop-notice" data-testid="plan-stop">
      <strong>
        {capital(name)}: {stopHead(stop)}
      </strong>{' '}
      <a href={linkTo('weigh', batch.id)}>{t.record}</a>
    </p>
  );
}

function Ready({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  const t = words().calendar.screen;
  return (
    <section aria-label={t.ready}>
      <h2>{t.readyToWeigh}</h2>
      <p>{t.readyFoods(names)}</p>
    </section>
  );
}
