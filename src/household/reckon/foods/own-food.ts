/** Own foods made from what is already known. */
import { withEvidence } from '../../../foods/evidence.ts';
import { factorOf } from '../../../foods/figures.ts';
import type { Figures, Food } from '../../../foods/food.ts';
import type { FoodSource } from '../../../foods/sources/source.ts';
import type { OwnFood } from '../../model.ts';

/** Makes an id that nothing has yet: chance is passed in. */
type NewId = () => string;

/** A reference food kept as an own one, its table row the first source. */
export function ownFromReference(food: Food, newId: NewId): OwnFood {
  return ownFrom(food, { name: food.name, figures: food, source: food.source, newId });
}

/**
 * An own food whose only source is figures that follow from a reference food.
 * @param made.source where the figures come from, in words
 */
export function ownFrom(
  food: Food,
  made: {
    readonly name: string;
    readonly figures: Figures;
    readonly source: string;
    readonly newId: NewId;
  },
): OwnFood {
  const { name, figures, source, newId } = made;
  const { composition, sd, low, high } = figures;
  const first: FoodSource = {
    id: newId(),
    name: source,
    ref: food.ref,
    basis: 'as fed',
    composition,
    sd,
    low,
    high,
    ...factorOf(figures),
  };
  const bare: OwnFood = {
    id: newId(),
    name,
    kind: 'mix',
    group: food.group,
    composition: {},
    sd: {},
    source,
    invented: false,
  };
  return withEvidence(bare, { sources: [first] });
}

/** A table's row as one more source of an own food. */
export function sourceFromReference(food: Food, id: string): FoodSource {
  const { ref, source, composition, sd } = food;
  return { id, name: source, ref, basis: 'as fed', composition, sd, ...factorOf(food) };
}
