/** Every nutrient of mix and ration, folded away until wanted. */
import type { Evaluation } from '../../formulation/result.ts';
import { NUTRIENTS } from '../../nutrition/nutrients.ts';
import { figure, unitWord } from '../mix/windows.ts';

export function NutrientTable({ evaluation }: { evaluation: Evaluation | undefined }) {
  const rows = NUTRIENTS.flatMap((n) => {
    const line = evaluation?.nutrients[n.tag];
    return line ? [{ ...n, line }] : [];
  });
  return (
    <details className="nutrient-table">
      <summary>All nutrients ({rows.length})</summary>
      <div className="table-scroll">
        <table>
          <caption>Per 100 g as fed. “At least” where figures are missing for a part.</caption>
          <thead>
            <tr>
              <th scope="col">Nutrient</th>
              <th scope="col">Mix</th>
              <th scope="col">Ration</th>
              <th scope="col">Known for</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ tag, name, unit, line }) => (
              <tr key={tag}>
                <th scope="row">{name}</th>
                <td>{line.coverage < 0.5 ? 'unknown' : `${figure(line.mix)} ${unitWord(unit)}`}</td>
                <td>
                  {line.coverage < 0.5
                    ? 'unknown'
                    : `${line.coverage < 99.5 ? '≥ ' : ''}${figure(line.ration)} ${unitWord(unit)}`}
                </td>
                <td>{Math.round(line.coverage)} %</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
