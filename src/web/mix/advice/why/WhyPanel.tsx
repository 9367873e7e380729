/** Why the best mix is as it is: the limits it stands at, what each costs, and how to change one. */

import { Button } from 'react-aria-components';
import { withHolds } from '../../../../household/reckon/mix/mix-edits.ts';
import { heldAt } from '../../../../household/reckon/mix/mix-remedies.ts';
import { shareChanges } from '../../../../household/reckon/mix/shares.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { longAnswers } from '../../../worker/engine.ts';
import { takesLong } from '../../../worker/lane.ts';
import type { AdviceProps } from '../advice-props.ts';
import { WhyReason } from './WhyReason.tsx';
import './why.css';

export function WhyPanel({ mix, view, nameOf }: AdviceProps) {
  const t = words().why;
  const { mix: kept } = useMixDraft();
  // Of a mix that takes long it is asked once it is found; where that was stopped, there is no best mix to ask about.
  const later = takesLong(mix.problem) && (view.working || view.stopped);
  const answer = useAnswer(
    'why',
    view.fault || later ? undefined : withHolds(mix),
    async (problem, { signal }) => {
      const best = await longAnswers.solve(problem, { signal });
      const why = await longAnswers.why(problem, { signal, aside: true });
      if (!why.ok) return why;
      if (!best.ok) return best;
      const shares = best.value.status === 'optimal' ? best.value.shares : undefined;
      return { ok: true, value: { reasons: why.value, shares } };
    },
  );
  const { value } = answer;
  const elsewhere = value?.shares && shareChanges(mix.shares, value.shares).length > 0;
  const costly = value?.reasons.filter((r) => r.gain > 0) ?? [];
  // A share that is held stands at both its ends; only where that costs something is it worth a line.
  const free = value?.reasons.filter((r) => r.gain <= 0 && !heldAt(mix, r.pointer)) ?? [];
  const list = { mix, view, keptRules: kept?.problem.rules.length ?? 0, nameOf };

  return (
    <section className="why" aria-labelledby="why-heading">
      <h2 id="why-heading">{t.heading}</h2>
      <AnswerState {...answer} />
      {view.fault && <p>{t.unreadable}</p>}
      {later && <p className="hint">{words().long.whyLater}</p>}
      {value && (
        <div aria-busy={answer.working} className={answer.working ? 'stale' : undefined}>
          {!value.shares && <p>{t.noMix}</p>}
          {elsewhere && (
            <div className="why-elsewhere">
              <p>{t.elsewhere}</p>
              <Button className="button" onPress={() => void view.balance()}>
                {t.fit}
              </Button>
            </div>
          )}
          {value.shares && costly.length === 0 && (
            <p>
              <strong>{t.nothing}</strong>{' '}
              {t.best[mix.problem.aims?.length ? 'wishes' : mix.problem.objective]}
            </p>
          )}
          {costly.length > 0 && <p className="hint">{t.holding(costly.length)}</p>}
          <ul className="why-list" aria-label={t.list}>
            {costly.map((reason) => (
              <WhyReason key={reason.pointer} reason={reason} {...list} />
            ))}
          </ul>
          {free.length > 0 && (
            <>
              <h3>{t.free}</h3>
              <ul className="why-list" aria-label={t.freeList}>
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
