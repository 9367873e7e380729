/** Every nutrient of mix and ration, folded away until wanted. */
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { countedName, NUTRIENTS, type Unit, unitWord } from '../../../nutrition/nutrients.ts';
import { figure } from '../../shared/windows.ts';
import { Folded } from './Folded.tsx';

export function NutrientTable({ evaluation }: { evaluation: Evaluation | undefined }) {
  const rows = NUTRIENTS.flatMap((n) => {
    const line = evaluation?.nutrients[n.tag];
    return line ? [{ ...n, line }] : [];
  });
  return (
    <Folded className="nutrient-table" summary={`All nutrients (${rows.length})`}>
      <div className="table-scroll">
        <table>
          <caption>Per 100 g as fed. “At least” where figures are missing for a part.</caption>
          <thead>
            <tr>
              <th scope="col">Nutrient</th>
              <th scope="col">Mix</th>
              <th scope="col">Ration</th>
              <th scope="col">Known for, of the ration</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ tag, unit, line }) => (
              <tr key={tag}>
                <th scope="row">{countedName(tag)}</th>
                <td>{said(line.mix, line.coverage_mix, unit)}</td>
                <td>{said(line.ration, line.coverage, unit)}</td>
                <td>{Math.round(line.coverage)} %</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Folded>
  );
}

function said(value: number, coverage: number, unit: Unit): string {
  if (coverage < 0.5 && value === 0) return 'unknown';
  return `${coverage < 99.5 ? '≥ ' : ''}${figure(value)} ${unitWord(unit)}`;
}
