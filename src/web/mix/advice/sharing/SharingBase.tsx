/** The shared base as it is weighed, and what each animal gets added to it. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { SharedMix } from '../../../../formulation/advice/shared-base.ts';
import type { Eater } from '../../../../formulation/problem/for-animals.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import {
  portionsNear,
  problemsApart,
  type WeighedPortion,
  weighSharing,
} from '../../../../household/reckon/mix/sharing.ts';
import { words } from '../../../../words/words.ts';
import { useAnswer } from '../../../shared/answer.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import type { Answer } from '../../../worker/formulation.worker.ts';
import type { FormulationView } from '../../useFormulation.ts';
import { costWords } from './sharing-words.ts';

/** What one animal gets, and how base and additions as weighed stand under its rules. */
interface Weighed {
  readonly portion: WeighedPortion;
  readonly standing: Evaluation;
}

interface Props {
  shared: SharedMix;
  /** Of the mix as it is kept, without what its animals bring. */
  problem: Problem;
  eaters: readonly Eater[];
  /** Whether a newer answer is on its way. */
  stale: boolean;
  view: FormulationView;
  nameOf(id: string): string;
}

export function SharingBase({ shared, problem, eaters, stale, view, nameOf }: Props) {
  const t = words().sharing.base;
  const { grams } = words().figures;
  const { change } = useMixDraft();
  const [said, say] = useState('');
  const { base, portions } = weighSharing(shared, problem);
  const blended = shared.weighings > 0;
  const weighed = useAnswer(
    'weighed',
    blended && !stale ? { shared, problem, problems: problemsApart(problem, eaters) } : undefined,
    weighedApart,
  );
  const weighedNow = weighed.working ? undefined : weighed.value;
  const foods = Object.entries(shared.base)
    .filter(([, share]) => share > 0.005)
    .sort((a, b) => b[1] - a[1]);

  function take() {
    change((m) => ({
      ...m,
      shares: { ...Object.fromEntries(m.problem.foods.map((f) => [f.id, 0])), ...shared.base },
    }));
    say(blended ? t.tookBase : t.took);
    view.say(t.tookNotice);
    focusWhenThere('.sharing h2');
  }

  return (
    <>
      {blended ? (
        <p>
          <strong>{t.weighings(shared.weighings)}</strong> {shared.sentence}
        </p>
      ) : (
        <p>
          <strong>{t.suits(shared.animals.map((a) => a.name))}</strong> {shared.sentence}
        </p>
      )}
      {shared.unverified.length > 0 && (
        <>
          <h3>{t.unverified}</h3>
          <ul className="sharing-list">
            {shared.unverified.map((s) => (
              <li key={s}>{s}</li>
            ))}
          </ul>
        </>
      )}
      {(!shared.proved || shared.notes.length > 0) && (
        <p>
          {!shared.proved && <strong>{t.notProved} </strong>}
          {shared.notes.join(' ')}
        </p>
      )}

      <h3>{blended ? t.base : t.mix}</h3>
      <div className="table-scroll">
        <table className="sharing-table">
          <caption>{t.caption(problem.batch_grams, problem.scale_step_grams)}</caption>
          <thead>
            <tr>
              <th scope="col">{t.food}</th>
              <th scope="col">{t.share}</th>
              <th scope="col">{t.grams}</th>
            </tr>
          </thead>
          <tbody>
            {foods.map(([id, share]) => (
              <tr key={id}>
                <th scope="row">{nameOf(id)}</th>
                <td>{t.shareOf(share)}</td>
                <td>{grams(base[id] ?? 0)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Button className="button" isDisabled={stale} onPress={take}>
        {blended ? t.takeBase : t.take}
      </Button>
      {blended && <p className="hint">{t.takeHint}</p>}
      <p className="sharing-notice" role="status">
        {said}
      </p>

      <h3>{blended ? t.adds : t.costs}</h3>
      <div className="sharing-animals">
        {shared.animals.map(({ id, cost }, k) => {
          const portion = weighedNow?.[k]?.portion ?? portions[k];
          return (
            portion && (
              <Portion
                key={id}
                portion={portion}
                cost={costWords(cost)}
                batch={problem.batch_grams}
                step={problem.scale_step_grams}
                blended={blended}
                standing={weighedNow?.[k]?.standing}
                nameOf={nameOf}
              />
            )
          );
        })}
      </div>
    </>
  );
}

function Portion(props: {
  portion: WeighedPortion;
  cost: string;
  batch: number;
  step: number;
  blended: boolean;
  /** Base and additions as weighed, under the rules of this animal. */
  standing: Evaluation | undefined;
  nameOf(id: string): string;
}) {
  const t = words().sharing.base;
  const { grams } = words().figures;
  const { portion, batch, step, blended, standing, nameOf } = props;
  return (
    <div className="sharing-animal" data-animal={portion.name}>
      <h4>{portion.name}</h4>
      {portion.additions.length === 0 && blended && <p>{t.asItIs}</p>}
      {portion.additions.length > 0 && (
        <div className="table-scroll">
          <table className="sharing-table">
            <caption>{t.addedFor(portion.name)}</caption>
            <thead>
              <tr>
                <th scope="col">{t.food}</th>
                <th scope="col">{t.to100(100)}</th>
                <th scope="col">{t.toBatch(batch)}</th>
              </tr>
            </thead>
            <tbody>
              {portion.additions.map((a) => (
                <tr key={a.food}>
                  <th scope="row">{nameOf(a.food)}</th>
                  <td>{grams(a.per100, a.per100 < 1 ? 2 : 1)}</td>
                  <td>{grams(a.weighed)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {portion.rounded && <p className="hint">{t.rounded(step)}</p>}
      {standing && blended && (
        <p>
          {standing.breaches.length === 0
            ? t.weighedIn
            : t.weighedOut(standing.breaches.map((b) => b.sentence))}
        </p>
      )}
      <p>{props.cost}</p>
    </div>
  );
}

/** For each animal the portion in steps of the scale nearest to what was worked out, in range where one was found. */
async function weighedApart(question: {
  shared: SharedMix;
  problem: Problem;
  problems: readonly Problem[];
}): Promise<Answer<Weighed[]>> {
  const { shared, problem, problems } = question;
  const values: Weighed[] = [];
  for (const [animal, own] of problems.entries()) {
    let first: Weighed | undefined;
    let kept: Weighed | undefined;
    for (const portion of portionsNear(shared, problem, animal)) {
      const answer = await engine.evaluate(own, portion.sharesAsWeighed);
      if (!answer.ok) return answer;
      first ??= { portion, standing: answer.value };
      if (answer.value.breaches.length > 0) continue;
      kept = { portion, standing: answer.value };
      break;
    }
    values.push((kept ?? first)!);
  }
  return { ok: true, value: values };
}
