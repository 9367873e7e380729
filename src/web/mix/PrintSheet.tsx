/** What goes on paper: names, shares, grams and the verdict. Hidden on the screen. */
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { ownLimitWords } from './limits/limit-words.ts';
import type { FormulationView } from './useFormulation.ts';
import { headed } from './Verdict.tsx';

export function PrintSheet({
  mix,
  view,
  nameOf,
}: {
  mix: Mix;
  view: FormulationView;
  nameOf(f: Ingredient): string;
}) {
  const { foods, batch_grams: batch } = mix.problem;
  const used = foods.flatMap((food) => {
    const share = mix.shares[food.id];
    return share !== undefined && share > 0.005 ? [{ food, share }] : [];
  });
  const { head, rest } = headed(view);
  return (
    <div className="print-sheet" aria-hidden="true">
      <h1>{mix.name}</h1>
      <p>
        {head}. {rest}
      </p>
      <table>
        <thead>
          <tr>
            <th>Food</th>
            <th>Share</th>
            <th>Grams of {batch}</th>
            <th>Weighed</th>
          </tr>
        </thead>
        <tbody>
          {used.map(({ food, share }) => (
            <tr key={food.id}>
              <td>{nameOf(food)}</td>
              <td>{share.toFixed(1)} %</td>
              <td>{view.weighed?.grams?.[food.id] ?? `about ${((share * batch) / 100).toFixed(1)}`} g</td>
              <td>☐</td>
            </tr>
          ))}
        </tbody>
      </table>
      {mix.problem.own_limits?.map((limit) => (
        <p key={ownLimitWords(limit)}>{ownLimitWords(limit)}.</p>
      ))}
      <p>Not veterinary advice. A home mix never replaces a complete food.</p>
    </div>
  );
}
