/** One food as it was understood: its name, what is wanted of it, two others it may be, and a way to make it one's own. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { NameMatch } from '../../foods/best-match.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import { isFresh } from '../../household/reckon/mix/beside.ts';
import { ingredientFromOwn, ingredientFromReference } from '../../household/reckon/mix/mix-edits.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { MakeOwn } from './MakeOwn.tsx';

interface Props {
  food: Ingredient;
  /** As the keeper wrote it, where they did. */
  typed: string | undefined;
  match: NameMatch | undefined;
  onInstead(food: Ingredient): void;
  onRemove(): void;
}

export function FoodRow({ food, typed, match, onInstead, onRemove }: Props) {
  const t = words().start.foods;
  const [making, setMaking] = useState(false);
  const name = food.name ?? food.id;
  const table: ReferenceFood | undefined = match?.foods.find((f) => f.ref === food.ref);
  const others = (match?.foods ?? []).filter((f) => f.ref !== food.ref).slice(0, 2);
  const isOwn = food.ref === undefined;
  return (
    <li className="start-row">
      <div className="start-food">
        <strong>{name}</strong>
        {food.want !== undefined && <span> {t.wanted(food.want)}</span>}
        {typed !== undefined && typed.toLowerCase() !== name.toLowerCase() && (
          <small className="start-typed">{t.typed(typed)}</small>
        )}
        {isFresh(table?.composition.WATER) && <small className="start-fresh">{t.fresh}</small>}
      </div>
      <div className="start-others">
        {others.length > 0 && <small>{t.or}</small>}
        {others.map((other) => (
          <Button
            key={other.ref}
            className="quiet-button small"
            aria-label={t.instead(other.name, name)}
            onPress={() => {
              onInstead(ingredientFromReference(other));
              focusWhenThere('.start-foods textarea');
            }}
          >
            {other.name}
          </Button>
        ))}
        {!isOwn && (
          <Button
            className="quiet-button small"
            aria-expanded={making}
            aria-label={t.makeOwnOf(name)}
            onPress={() => setMaking(!making)}
          >
            {t.makeOwn}
          </Button>
        )}
        <Button className="quiet-button small" aria-label={t.removeFood(name)} onPress={onRemove}>
          {words().common.remove}
        </Button>
      </div>
      {making && (
        <MakeOwn
          name={typed ?? name}
          onMade={(own) => {
            setMaking(false);
            onInstead(ingredientFromOwn(own));
            focusWhenThere('.start-foods textarea');
          }}
          onLeave={() => setMaking(false)}
        />
      )}
    </li>
  );
}
