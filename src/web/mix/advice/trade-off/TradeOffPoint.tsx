/** One of the best mixes: both values, and what would change against the mix as it stands. */
import { Button } from 'react-aria-components';
import type { Shares } from '../../../../formulation/problem/problem.ts';
import { shareChanges } from '../../../../household/reckon/mix/shares.ts';
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
  const { pair, point, present, nameOf, take } = props;
  const changes = shareChanges(present, point.shares);
  const rest = changes.length - MOST_SHOWN;
  return (
    <section className="trade-chosen" aria-label="The mix that is chosen">
      <p>
        <strong>The mix chosen: {pointWords(pair, point)}.</strong>
      </p>
      {changes.length === 0 ? (
        <p>This is the mix as it stands.</p>
      ) : (
        <>
          <p>Against the mix as it stands:</p>
          <ul className="trade-changes">
            {changes.slice(0, MOST_SHOWN).map(({ id, from, to }) => (
              <li key={id}>
                <span>{nameOf(id)}</span>
                <span>
                  {to > from ? '▲' : '▼'} {from.toFixed(1)} to {to.toFixed(1)} %
                </span>
              </li>
            ))}
          </ul>
          {rest > 0 && (
            <p className="hint">
              {rest === 1 ? 'One more share moves' : `${rest} more shares move`}, each by no more than these.
            </p>
          )}
          <Button className="button strong" onPress={take}>
            Take this mix
          </Button>
        </>
      )}
    </section>
  );
}
