/** Names that are not sure: what each may mean, to choose from. Nothing of it is in the mix until it is chosen. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import { ingredientFromOwn, ingredientFromReference } from '../../household/reckon/mix/mix-edits.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { MakeOwn } from './MakeOwn.tsx';
import type { OpenName } from './useFoodWords.ts';

interface Props {
  names: readonly OpenName[];
  /** Undefined leaves it out. */
  onSettle(name: OpenName, food: Ingredient | undefined): void;
}

export function OpenNames({ names, onSettle }: Props) {
  const t = words().start.foods;
  const [making, setMaking] = useState<OpenName>();
  if (names.length === 0) return null;
  const settle = (name: OpenName, food: Ingredient | undefined) => {
    onSettle(name, food);
    setMaking(undefined);
    focusWhenThere('.start-foods textarea');
  };
  return (
    <section className="start-open" aria-label={t.unsure}>
      <h3>{t.unsure}</h3>
      <p className="hint">{t.unsureHint}</p>
      <ul>
        {names.map((open) => (
          <li key={open.name}>
            <p>
              <strong>{open.name}</strong> {open.match.note ?? t.noFood}
            </p>
            <div className="start-others">
              {open.match.foods.map((food) => (
                <Button
                  key={food.ref}
                  className="button small"
                  aria-label={t.takeFor(food.name, open.name)}
                  onPress={() => settle(open, ingredientFromReference(food))}
                >
                  {food.name}
                </Button>
              ))}
              <Button
                className="button small"
                aria-expanded={making === open}
                aria-label={t.makeOwnOf(open.name)}
                onPress={() => setMaking(making === open ? undefined : open)}
              >
                {t.makeOwn}
              </Button>
              <Button
                className="quiet-button small"
                aria-label={t.leaveOutFood(open.name)}
                onPress={() => settle(open, undefined)}
              >
                {t.leaveOut}
              </Button>
            </div>
            {making === open && (
              <MakeOwn
                name={open.name}
                onMade={(own) => settle(open, ingredientFromOwn(own))}
                onLeave={() => setMaking(undefined)}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
