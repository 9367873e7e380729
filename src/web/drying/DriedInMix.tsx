/** What 100 g of the dried food hold beside what the mix counts, and the step that brings it into the mix. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { ownAtMoisture, withMoisture } from '../../household/reckon/drying/measured-moisture.ts';
import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useSaveFood } from '../store/save-food.ts';
import { useReferenceTable } from '../worker/engine.ts';
import { asText } from './LabelledNumber.tsx';
import { foodLines } from './view-model.ts';

/** Percent of water that make no difference worth a step. */
const ALIKE = 0.05;

export function DriedInMix({ food: id, dried }: { food: string; dried: DriedRun }) {
  const { house, mix, change, undo } = useMixDraft();
  const own = useSaveFood();
  const [used, setUsed] = useState(false);
  const food = mix?.problem.foods.find((f) => f.id === id);
  const { foods: table, lookedUp } = useReferenceTable(food?.ref ? [food.ref] : []);
  if (!mix || !food) return <p className="hint">The mix at hand does not name this food.</p>;
  if (food.ref && !table.has(food.ref))
    return <p className="hint">{lookedUp ? 'The figures of this food are not at hand.' : 'Working…'}</p>;
  const lines = foodLines(food, dried, table);
  const counted = lines.find((l) => l.tag === 'WATER')?.mix;
  const same = counted !== undefined && Math.abs(counted - dried.moisture) < ALIKE;
  const ownFood = house.foods.find((f) => f.id === id);
  const water = asText(dried.moisture);

  async function use() {
    if (ownFood) {
      // Food and mixes are changed as one: the food's page must not say otherwise than the mix.
      await own.save(ownAtMoisture(ownFood, dried.moisture, today()), ownFood);
    } else change((m) => withMoisture(m, id, dried.moisture, table), 'moisture as dried');
    setUsed(true);
    focusWhenThere('.dry-in-mix h3');
  }

  return (
    <section className="dry-in-mix" aria-label="In the mix">
      <h3 tabIndex={-1}>What 100 g of it hold</h3>
      <table>
        <caption>Per 100 g as weighed.</caption>
        <thead>
          <tr>
            <th scope="col">Content</th>
            <th scope="col">“{mix.name}” counts</th>
            <th scope="col">The same at {water} % water</th>
            <th scope="col">From the fresh food</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((l) => (
            <tr key={l.tag}>
              <th scope="row">
                {l.name} <small>{l.unit}</small>
              </th>
              <td>{figure(l.mix)}</td>
              <td>{figure(l.damp)}</td>
              <td>{figure(l.fresh)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="hint">
        Water apart, another harvest differs more than another dryer: the last column, worked out from the
        fresh food, is a second opinion.
      </p>
      {same ? (
        <p>The mix counts with {water} % water.</p>
      ) : (
        <Button className="button strong" onPress={() => void use().catch(() => {})}>
          Use it in the mix
        </Button>
      )}
      {used && undo && same && !ownFood && (
        <Button
          className="quiet-button"
          onPress={() => {
            undo();
            setUsed(false);
            focusWhenThere('.dry-in-mix h3');
          }}
        >
          Undo
        </Button>
      )}
      <Failed error={own.error} />
      <p className="hint" aria-live="polite">
        {used && same && 'The mix has it; look there whether it is still in balance. '}
        Batches count with the water of their lots already; this is for what you plan.
      </p>
    </section>
  );
}

const figure = (value: number | undefined) =>
  value === undefined ? 'not known' : asText(value, value < 10 ? 2 : 1);
