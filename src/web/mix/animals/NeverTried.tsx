/** Which foods of the mix each of its animals has never tried: one line an animal, its foods folded away under it. */
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Animal, Mix } from '../../../household/model.ts';
import { neverTried } from '../../../household/reckon/care/food-standing.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { linkTo } from '../../shared/route.ts';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import './NeverTried.css';

interface Props {
  /** With what its animals bring. */
  mix: Mix;
  nameOf(food: Ingredient): string;
}

export function NeverTried({ mix, nameOf }: Props) {
  const t = words().trials;
  const { house } = useMixDraft();
  const save = useSave('animals');
  const { animalIds, problem } = mix;
  const all = useMemo(() => neverTried(house, { animalIds, problem }), [house, animalIds, problem]);
  if (all.length === 0) return null;

  function knows(animal: Animal, foods: readonly { readonly food: Ingredient }[]) {
    const known = [...(animal.knows ?? []), ...foods.map((f) => f.food.ref ?? f.food.id)];
    save.mutate({ ...animal, knows: [...new Set(known)] }, animal);
  }

  return (
    <section className="never-tried" aria-label={t.title}>
      {all.map(({ animal, foods }) => (
        <details key={animal.id}>
          <summary>{t.mix.newTo(animal.name, foods.length)}</summary>
          <p className="hint">{t.mix.newHint}</p>
          <ul>
            {foods.map(({ food, trying }) => (
              <li key={food.id} data-untried={food.id}>
                <span>
                  {nameOf(food)} {trying && <small>{t.mix.trying}</small>}
                </span>
                {!trying && (
                  <a
                    href={linkTo('animals', animal.id, 'trials', food.ref ?? food.id)}
                    aria-label={t.lists.tryItOf(nameOf(food))}
                  >
                    {t.lists.tryIt}
                  </a>
                )}
              </li>
            ))}
          </ul>
          <Button className="quiet-button small" onPress={() => knows(animal, foods)}>
            {t.mix.knowsAll(animal.name)}
          </Button>
        </details>
      ))}
      <Failed error={save.error} />
    </section>
  );
}
