/** Why the balanced mix is as it is: the bounds it stands at, what each costs, and how to let one go. */
import { Button } from 'react-aria-components';
import { withHolds } from '../../../../household/reckon/mix/mix-edits.ts';
import { heldAt } from '../../../../household/reckon/mix/mix-remedies.ts';
import { shareChanges } from '../../../../household/reckon/mix/shares.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import type { AdviceProps } from '../advice-props.ts';
import { WhyReason } from './WhyReason.tsx';
import './why.css';

export function WhyPanel({ mix, view, nameOf }: AdviceProps) {
  const { mix: kept } = useMixDraft();
  const answer = useAnswer('why', view.fault ? undefined : withHolds(mix), async (problem) => {
    const [why, best] = await Promise.all([engine.why(problem), engine.solve(problem)]);
    if (!why.ok) return why;
    if (!best.ok) return best;
    const shares = best.value.status === 'optimal' ? best.value.shares : undefined;
    return { ok: true, value: { reasons: why.value, shares } };
  });
  const { value } = answer;
  const elsewhere = value?.shares && shareChanges(mix.shares, value.shares).length > 0;
  const costly = value?.reasons.filter((r) => r.gain > 0) ?? [];
  // A share that is held stands at both its ends; only where that costs something is it worth a line.
  const free = value?.reasons.filter((r) => r.gain <= 0 && !heldAt(mix, r.pointer)) ?? [];
  const list = { mix, view, keptRules: kept?.problem.rules.length ?? 0, nameOf };

  return (
    <section className="why" aria-labelledby="why-heading">
      <h2 id="why-heading">Why the mix is as it is</h2>
      <AnswerState {...answer} />
      {view.fault && <p>The mix cannot be read as it stands; the verdict above says why.</p>}
      {value && (
        <div aria-busy={answer.working} className={answer.working ? 'stale' : undefined}>
          {!value.shares && (
            <p>No mix keeps these rules. What collides, and what mends it, is listed near the top.</p>
          )}
          {elsewhere && (
            <div className="why-elsewhere">
              <p>What follows is about the balanced mix. The mix on the screen stands elsewhere.</p>
              <Button className="button" onPress={() => void view.balance()}>
                Balance it
              </Button>
            </div>
          )}
          {value.shares && costly.length === 0 && (
            <p>
              <strong>Nothing holds it back.</strong>{' '}
              {mix.problem.aims?.length
                ? 'The balanced mix meets your wishes as well as these foods can; no bound stands in the way.'
                : BEST[mix.problem.objective]}
            </p>
          )}
          {costly.length > 0 && (
            <p className="hint">
              {costly.length === 1 ? 'One bound holds' : `${costly.length} bounds hold`} the balanced mix back
              {costly.length === 1 ? '' : ', what costs most first'}. Bounds on nutrients are there for the
              animal: let one go only where you know why.
            </p>
          )}
          <ul className="why-list" aria-label="Bounds that hold the mix back">
            {costly.map((reason) => (
              <WhyReason key={reason.pointer} reason={reason} {...list} />
            ))}
          </ul>
          {free.length > 0 && (
            <>
              <h3>At a limit, at no cost</h3>
              <ul className="why-list" aria-label="Limits that cost nothing">
                {free.map((reason) => (
                  <WhyReason key={reason.pointer} reason={reason} {...list} />
                ))}
              </ul>
            </>
          )}
        </div>
      )}
    </section>
  );
}

const BEST = {
  nearest: 'The balanced mix is the nearest there is to what you want; no bound keeps it from coming nearer.',
  cheapest: 'The balanced mix is the cheapest there is; no bound makes it dearer.',
  varied: 'The balanced mix is as varied as these foods can be; no bound makes it less so.',
} as const;
