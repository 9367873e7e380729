/** One of the best mixes: both values, and what would change against the mix as it stands. */

import { Button } from 'react-aria-components';
import type { Shares } from '../../../../formulation/problem/problem.ts';
import { shareChanges } from '../../../../household/reckon/mix/shares.ts';
import { words } from '../../../../words/words.ts';
import { pointWords, type TradeGoal, type TradePoint } from './trade-off.ts';

const MOST_SHOWN = 6;

export function TradeOffPoint(props: {
  pair: readonly [TradeGoal, TradeGoal];
  point: TradePoint;
  /** Shares as they stand. */
  present: Shares;
  nameOf(id: string): string;
  take(): void;
}) {
  const t = words().tradeOff.point;
  const { pair, point, present, nameOf, take } = props;
  const changes = shareChanges(present, point.shares);
  const rest = changes.length - MOST_SHOWN;
  return (
    <section className="trade-chosen" aria-label={t.label}>
      <p>
        <strong>{t.chosen(pointWords(pair, point))}</strong>
      </p>
      {changes.length === 0 ? (
        <p>{t.same}</p>
      ) : (
        <>
          <p>{t.against}</p>
          <ul className="trade-changes">
            {changes.slice(0, MOST_SHOWN).map(({ id, from, to }) => (
              <li key={id}>
                <span>{nameOf(id)}</span>
                <span>
                  {to > from ? '▲' : '▼'} {t.change(from, to)}
                </span>
              </li>
            ))}
          </ul>
          {rest > 0 && <p className="hint">{t.rest(rest)}</p>}
          <Button className="button strong" onPress={take}>
            {t.take}
          </Button>
        </>
      )}
    </section>
  );
}
