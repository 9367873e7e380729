/** The points of the picture as a table, for those who would rather read. */
import { Button } from 'react-aria-components';
import { figure } from '../../../../formulation/explain/sentences.ts';
import { pointWords, short, type TradeGoal, type TradePoint, unitOf } from './trade-off.ts';

export function TradeOffTable(props: {
  pair: readonly [TradeGoal, TradeGoal];
  points: readonly TradePoint[];
  chosen: number | undefined;
  choose(index: number): void;
}) {
  const { pair, points, chosen, choose } = props;
  const [first, second] = pair;
  return (
    <details className="trade-table">
      <summary>The same as a table</summary>
      <div className="table-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">Mix</th>
              <th scope="col">{head(first)}</th>
              <th scope="col">{head(second)}</th>
              <th scope="col">
                <span className="sr-only">Look at it</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {points.map((point, k) => (
              <tr key={`${point.a} ${point.b}`} className={k === chosen ? 'chosen' : undefined}>
                <th scope="row">{k + 1}</th>
                <td>{figure(point.a)}</td>
                <td>{figure(point.b)}</td>
                <td>
                  <Button
                    className="quiet-button small"
                    aria-label={`${k === chosen ? 'Shown' : 'Look'}: mix ${k + 1}, ${pointWords(pair, point)}`}
                    onPress={() => choose(k)}
                  >
                    {k === chosen ? 'Shown' : 'Look'}
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

const head = (goal: TradeGoal) => `${short(goal)} (${unitOf(goal)})`;
