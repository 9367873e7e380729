/** What goes on paper: names, shares, grams and the verdict. Hidden on the screen. */
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
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
  const { figures: f, mix: texts } = words();
  const t = texts.paper;
  const gramsOf = (id: string, share: number) => {
    const grams = view.weighed?.grams?.[id];
    return grams === undefined ? t.about((share * batch) / 100) : f.grams(grams);
  };
  return (
    <div className="print-sheet" aria-hidden="true">
      <h1>{mix.name}</h1>
      <p>
        {head}. {rest}
      </p>
      <table>
        <thead>
          <tr>
            <th>{t.food}</th>
            <th>{t.share}</th>
            <th>{t.grams(batch)}</th>
            <th>{t.weighed}</th>
          </tr>
        </thead>
        <tbody>
          {used.map(({ food, share }) => (
            <tr key={food.id}>
              <td>{nameOf(food)}</td>
              <td>{f.fixed(share, 1)} %</td>
              <td>{gramsOf(food.id, share)}</td>
              <td>☐</td>
            </tr>
          ))}
        </tbody>
      </table>
      {mix.problem.own_limits?.map((limit) => (
        <p key={ownLimitWords(limit)}>{ownLimitWords(limit)}.</p>
      ))}
      <p>{t.notVet}</p>
    </div>
  );
}
