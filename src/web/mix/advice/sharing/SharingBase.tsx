/** The shared base as it is weighed, and what each animal gets added to it. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { SharedMix } from '../../../../formulation/advice/shared-base.ts';
import { joined } from '../../../../formulation/explain/sentences.ts';
import type { Eater } from '../../../../formulation/problem/for-animals.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import {
  portionsNear,
  problemsApart,
  type WeighedPortion,
  weighSharing,
} from '../../../../household/reckon/mix/sharing.ts';
import { useAnswer } from '../../../shared/answer.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import type { Answer } from '../../../worker/formulation.worker.ts';
import type { FormulationView } from '../../useFormulation.ts';
import { costWords, figure } from './sharing-words.ts';

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
  const { change } = useMixDraft();
  const [said, say] = useState('');
  const { base, portions } = weighSharing(shared, problem);
  const blended = shared.weighings > 0;
  const weighed = useAnswer(
    'weighed apart',
    blended && !stale ? { shared, problem, problems: problemsApart(problem, eaters) } : undefined,
    weighedApart,
  );
  const weighedNow = weighed.working ? undefined : weighed.value;
  const names = joined(shared.animals.map((a) => a.name));
  const foods = Object.entries(shared.base)
    .filter(([, share]) => share > 0.005)
    .sort((a, b) => b[1] - a[1]);

  function take() {
    change((m) => ({
      ...m,
      shares: { ...Object.fromEntries(m.problem.foods.map((f) => [f.id, 0])), ...shared.base },
    }));
    say(blended ? 'The mix now stands at the shares of the base.' : 'The mix now stands at these shares.');
    view.say('The mix is the shared base. Undo takes this back.');
    focusWhenThere('.sharing h2');
  }

  return (
    <>
      {blended ? (
        <p>
          <strong>{shared.weighings === 1 ? 'One weighing' : `${shared.weighings} weighings`} apart.</strong>{' '}
          {shared.sentence}
        </p>
      ) : (
        <p>
          <strong>One mix suits {names} without additions.</strong> {shared.sentence}
        </p>
      )}
      {shared.unverified.length > 0 && (
        <>
          <h3>What does not hold, or was not checked</h3>
          <ul className="sharing-list">
            {shared.unverified.map((s) => (
              <li key={s}>{s}</li>
            ))}
          </ul>
        </>
      )}
      {(!shared.proved || shared.notes.length > 0) && (
        <p>
          {!shared.proved && <strong>Not proved to be the least. </strong>}
          {shared.notes.join(' ')}
        </p>
      )}

      <h3>{blended ? 'The base' : 'The mix'}</h3>
      <div className="table-scroll">
        <table className="sharing-table">
          <caption>
            {problem.batch_grams} g in steps of {problem.scale_step_grams} g
          </caption>
          <thead>
            <tr>
              <th scope="col">Food</th>
              <th scope="col">Share</th>
              <th scope="col">Grams</th>
            </tr>
          </thead>
          <tbody>
            {foods.map(([id, share]) => (
              <tr key={id}>
                <th scope="row">{nameOf(id)}</th>
                <td>{share.toFixed(1)} %</td>
                <td>{base[id] ?? 0} g</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Button className="button" isDisabled={stale} onPress={take}>
        {blended ? 'Take the base mix' : 'Take this mix'}
      </Button>
      {blended && (
        <p className="hint">
          Taken, the mix on this page is the base alone. It can be out of range until the additions are in it.
        </p>
      )}
      <p className="sharing-notice" role="status">
        {said}
      </p>

      <h3>{blended ? 'What each gets added' : 'What it costs each'}</h3>
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
  const { portion, batch, step, blended, standing, nameOf } = props;
  return (
    <div className="sharing-animal" data-animal={portion.name}>
      <h4>{portion.name}</h4>
      {portion.additions.length === 0 && blended && <p>Gets the base as it is.</p>}
      {portion.additions.length > 0 && (
        <div className="table-scroll">
          <table className="sharing-table">
            <caption>Added for {portion.name}</caption>
            <thead>
              <tr>
                <th scope="col">Food</th>
                <th scope="col">To 100 g of base</th>
                <th scope="col">To {batch} g</th>
              </tr>
            </thead>
            <tbody>
              {portion.additions.map((a) => (
                <tr key={a.food}>
                  <th scope="row">{nameOf(a.food)}</th>
                  <td>{figure(a.per100)} g</td>
                  <td>{a.weighed} g</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {portion.rounded && (
        <p className="hint">
          Rounded to whole steps of {step} g, the nearest that keep the rules where there are such.
        </p>
      )}
      {standing && blended && (
        <p>
          {standing.breaches.length === 0
            ? '✓ As weighed, in range.'
            : `! As weighed, just outside: ${standing.breaches.map((b) => b.sentence).join(' ')} A finer scale step or a larger batch may mend it.`}
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
