/** Which animals a mix is made for; what of it they refuse, and what is new to them, stands below. */
import type { ReactNode } from 'react';
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
  onChange(animalIds: readonly string[]): void;
  children: ReactNode;
}

export function MixAnimals({ mix, animals, onChange, children }: Props) {
  const { animals: t, head } = words().mix;

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
      {children}
    </div>
  );
}
