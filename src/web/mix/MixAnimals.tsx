/** Which animals a mix is made for, and the foods that are out because one of them refuses them. */
import type { Animal, Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
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
  const { animals: t, head } = words().mix;
  const nameOf = (foodId: string) => mix.problem.foods.find((f) => f.id === foodId)?.name ?? foodId;

  function made(id: string, chosen: boolean) {
    onChange(chosen ? [...mix.animalIds, id] : mix.animalIds.filter((a) => a !== id));
  }

  return (
    <div className="mix-animals">
      {animals.length === 0 ? (
        <p className="hint">
          <Sentence of={t.none} with={{ add: (text) => <a href={linkTo('animals', 'new')}>{text}</a> }} />
        </p>
      ) : (
        <fieldset className="ticks">
          <legend>{t.madeFor}</legend>
          {animals.map((a) => (
            <label key={a.id} className="tick">
              <input
                type="checkbox"
                checked={mix.animalIds.includes(a.id)}
                onChange={(e) => made(a.id, e.target.checked)}
              />
              <span>
                {a.name} {a.invented && <span className="tag">{head.invented}</span>}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      <ul className="refused-foods" aria-live="polite" aria-label={t.refused}>
        {Object.entries(refusedBy).map(([foodId, names]) => (
          <li key={foodId}>{t.isOut(nameOf(foodId), names)}</li>
        ))}
      </ul>
    </div>
  );
}
