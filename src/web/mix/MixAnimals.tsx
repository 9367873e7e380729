/** Which animals a mix is made for, and the foods that are out because one of them refuses them. */
import { joined } from '../../formulation/explain/sentences.ts';
import type { Animal, Mix } from '../../household/model.ts';
import { linkTo } from '../shared/route.ts';
import '../shared/styles/ticks.css';
import './MixAnimals.css';

interface Props {
  mix: Mix;
  /** All animals of the household. */
  animals: readonly Animal[];
  /** For each food of the mix that is refused, by id, the names of the animals that refuse it; see `forAnimals`. */
  refusedBy: Readonly<Record<string, readonly string[]>>;
  onChange(animalIds: readonly string[]): void;
}

export function MixAnimals({ mix, animals, refusedBy, onChange }: Props) {
  const nameOf = (foodId: string) => mix.problem.foods.find((f) => f.id === foodId)?.name ?? foodId;

  function made(id: string, chosen: boolean) {
    onChange(chosen ? [...mix.animalIds, id] : mix.animalIds.filter((a) => a !== id));
  }

  return (
    <div className="mix-animals">
      {animals.length === 0 ? (
        <p className="hint">
          No animal is kept yet. <a href={linkTo('animals', 'new')}>Add one</a>, and its food a day and what
          it refuses count here.
        </p>
      ) : (
        <fieldset className="ticks">
          <legend>Made for</legend>
          {animals.map((a) => (
            <label key={a.id} className="tick">
              <input
                type="checkbox"
                checked={mix.animalIds.includes(a.id)}
                onChange={(e) => made(a.id, e.target.checked)}
              />
              <span>
                {a.name} {a.invented && <span className="tag">invented</span>}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      <ul className="refused-foods" aria-live="polite" aria-label="Out because an animal refuses it">
        {Object.entries(refusedBy).map(([foodId, names]) => (
          <li key={foodId}>
            {nameOf(foodId)} is out: {joined(names)} {names.length === 1 ? 'refuses' : 'refuse'} it.
          </li>
        ))}
      </ul>
    </div>
  );
}
