/** Every nutrient of mix and ration, folded away until wanted. */
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { countedName, NUTRIENTS, type Unit, unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { figure } from '../../shared/windows.ts';
import { NutrientName } from '../../shared/words/NutrientName.tsx';
import { Folded } from './Folded.tsx';

export function NutrientTable({ evaluation }: { evaluation: Evaluation | undefined }) {
  const rows = NUTRIENTS.flatMap((n) => {
    const line = evaluation?.nutrients[n.tag];
    return line ? [{ ...n, line }] : [];
  });
  const t = words().nutrients.table;
  const { percent } = words().figures;
  return (
    <Folded className="nutrient-table" summary={t.title(rows.length)}>
      {() => (
        <div className="table-scroll">
          <table>
            <caption>{t.caption}</caption>
            <thead>
              <tr>
                <th scope="col">{t.nutrient}</th>
                <th scope="col">{t.mix}</th>
                <th scope="col">{t.ration}</th>
                <th scope="col">{t.known}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ tag, unit, line }) => (
                <tr key={tag}>
                  <th scope="row">
                    <NutrientName tag={tag}>{countedName(tag)}</NutrientName>
                  </th>
                  <td>{said(line.mix, line.coverage_mix, unit)}</td>
                  <td>{said(line.ration, line.coverage, unit)}</td>
                  <td>{percent(line.coverage, 0)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </Folded>
  );
}

function said(value: number, coverage: number, unit: Unit): string {
  const t = words().nutrients;
  if (coverage < 0.5 && value === 0) return t.unknown;
  const amount = `${figure(value)} ${unitWord(unit)}`;
  return coverage < 99.5 ? t.lanes.atLeast(amount) : amount;
}
