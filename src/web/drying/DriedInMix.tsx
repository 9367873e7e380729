/** What 100 g of the dried food hold beside what the mix counts, and the step that brings it into the mix. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { ownAtMoisture, withMoisture } from '../../household/reckon/drying/measured-moisture.ts';
import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useSaveFood } from '../store/save-food.ts';
import { useReferenceTable } from '../worker/engine.ts';
import { foodLines } from './view-model.ts';

/** Percent of water that make no difference worth a step. */
const ALIKE = 0.05;
/** g that the contents are given for. */
const PER = 100;

export function DriedInMix({ food: id, dried }: { food: string; dried: DriedRun }) {
  const { house, mix, change, undo } = useMixDraft();
  const own = useSaveFood();
  const t = words().drying.inMix;
  const [used, setUsed] = useState(false);
  const food = mix?.problem.foods.find((f) => f.id === id);
  const { foods: table, lookedUp } = useReferenceTable(food?.ref ? [food.ref] : []);
  if (!mix || !food) return <p className="hint">{t.notNamed}</p>;
  if (food.ref && !table.has(food.ref)) return <p className="hint">{lookedUp ? t.noFigures : t.working}</p>;
  const lines = foodLines(food, dried, table);
  const counted = lines.find((l) => l.tag === 'WATER')?.mix;
  const same = counted !== undefined && Math.abs(counted - dried.moisture) < ALIKE;
  const ownFood = house.foods.find((f) => f.id === id);

  async function use() {
    if (ownFood) {
      // Food and mixes are changed as one: the food's page must not say otherwise than the mix.
      await own.save(ownAtMoisture(ownFood, dried.moisture, today()), ownFood);
    } else change((m) => withMoisture(m, id, dried.moisture, table), t.undoName);
    setUsed(true);
    focusWhenThere('.dry-in-mix h3');
  }

  return (
    <section className="dry-in-mix" aria-label={t.section}>
      <h3 tabIndex={-1}>{t.title(PER)}</h3>
      <table>
        <caption>{t.caption(PER)}</caption>
        <thead>
          <tr>
            <th scope="col">{t.content}</th>
            <th scope="col">{t.counts(mix.name)}</th>
            <th scope="col">{t.sameAt(dried.moisture)}</th>
            <th scope="col">{t.fromFresh}</th>
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
      <p className="hint">{t.about}</p>
      {same ? (
        <p>{t.countsWith(dried.moisture)}</p>
      ) : (
        <Button className="button strong" onPress={() => void use().catch(() => {})}>
          {t.use}
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
          {words().common.undo}
        </Button>
      )}
      <Failed error={own.error} />
      <p className="hint" aria-live="polite">
        {[...(used && same ? [t.used] : []), t.batches].join(' ')}
      </p>
    </section>
  );
}

const figure = (value: number | undefined) =>
  value === undefined ? words().drying.inMix.notKnown : words().figures.number(value, value < 10 ? 2 : 1);
