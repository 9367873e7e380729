/** The points of the picture as a table, for those who would rather read. */

import { Button } from 'react-aria-components';
import { words } from '../../../../words/words.ts';
import { pointWords, short, type TradeGoal, type TradePoint, unitOf } from './trade-off.ts';

export function TradeOffTable(props: {
  pair: readonly [TradeGoal, TradeGoal];
  points: readonly TradePoint[];
  chosen: number | undefined;
  choose(index: number): void;
}) {
  const t = words().tradeOff.table;
  const { figure, number } = words().figures;
  const head = (goal: TradeGoal) => t.head(short(goal), unitOf(goal));
  const { pair, points, chosen, choose } = props;
  const [first, second] = pair;
  return (
    <details className="trade-table">
      <summary>{t.same}</summary>
      <div className="table-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{t.mix}</th>
              <th scope="col">{head(first)}</th>
              <th scope="col">{head(second)}</th>
              <th scope="col">
                <span className="sr-only">{t.lookAt}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {points.map((point, k) => (
              <tr key={`${point.a} ${point.b}`} className={k === chosen ? 'chosen' : undefined}>
                <th scope="row">{number(k + 1)}</th>
                <td>{figure(point.a)}</td>
                <td>{figure(point.b)}</td>
                <td>
                  <Button
                    className="quiet-button small"
                    aria-label={(k === chosen ? t.shownOf : t.lookOf)(k + 1, pointWords(pair, point))}
                    onPress={() => choose(k)}
                  >
                    {k === chosen ? t.shown : t.look}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
