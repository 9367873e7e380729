/** Own foods made from what is already known. */
import { withEvidence } from '../../foods/evidence.ts';
import type { Figures, Food } from '../../foods/food.ts';
import type { FoodSource } from '../../foods/sources/source.ts';
import type { OwnFood } from '../../household/model.ts';
import { newId } from '../store/new-id.ts';

/** A reference food kept as an own one, its table row the first source. */
export function ownFromReference(food: Food): OwnFood {
  return ownFrom(food, food.name, food, food.source);
}

/** An own food whose only source is figures that follow from a reference food. */
export function ownFrom(food: Food, name: string, figures: Figures, source: string): OwnFood {
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
export function sourceFromReference({ ref, source, composition, sd }: Food): FoodSource {
  return { id: newId(), name: source, ref, basis: 'as fed', composition, sd };
}
