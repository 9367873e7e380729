/** The picture of weights as a table, newest first. */
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Mark } from './picture-view.ts';

export function WeightTable({ marks, weekly, day }: { marks: readonly Mark[]; weekly: boolean; day: Day }) {
  const { bodyWeight, figures: f } = words();
  const t = bodyWeight.picture;
  return (
    <details>
      <summary>{t.table}</summary>
      <div className="table-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{weekly ? t.columns.week : t.columns.day}</th>
              <th scope="col">{t.columns.weighed}</th>
              <th scope="col">{t.columns.trend}</th>
              <th scope="col">{t.columns.between}</th>
            </tr>
          </thead>
          <tbody>
            {[...marks].reverse().map((m) => (
              <tr key={m.id}>
                <th scope="row">{f.day(m.day, day)}</th>
                <td>
                  {m.low === m.high ? f.grams(m.low, 1) : t.weighedRange(m.low, m.high)}
                  {m.unlikely && <small> {t.key.unlikely}</small>}
                </td>
                <td>{m.trend && !m.unlikely && f.bodyGrams(m.trend.grams)}</td>
                <td>{m.trend && !m.unlikely && t.trendRange(m.trend.low, m.trend.high)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
