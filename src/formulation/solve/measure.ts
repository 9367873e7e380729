/** Nutrient and ratio rules as quotients, for a mix, for a part of it, or for two foods fed together. */
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { NutrientRule, On, RatioRule } from '../problem/problem.ts';
import { denominatorOf, dryPart, ratioWords, unitWords, words } from './bounds.ts';

/** What a rule on a nutrient or a ratio measures: one sum over all that is eaten, divided by another. */
export interface Measure {
  /** "protein", "calcium to phosphorus". */
  readonly subject: string;
  readonly unit: string;
  readonly on: On;
  top(food: FoodAmounts): number;
  /** 1 for a content as fed, the dry part for one of dry matter (for a least or a most), the second nutrient of a ratio. */
  bottom(side: 'min' | 'max'): (food: FoodAmounts) => number;
}

/** How a rule measures, the same for the whole mix, for a part of it and together with another food. */
export function measureOf(rule: NutrientRule | RatioRule): Measure {
  const on = rule.on ?? 'mix';
  if ('ratio' in rule) {
    const [over, under] = rule.ratio;
    return {
      subject: ratioWords(rule),
      unit: '',
      on,
      top: (f) => f.amount(over).value,
      bottom: () => denominatorOf(under),
    };
  }
  const dry = rule.basis === 'DM';
  return {
    subject: words(rule.nutrient),
    unit: unitWords(rule.nutrient, dry),
    on,
    top: (f) => f.amount(rule.nutrient).value,
    bottom: dry ? dryPart : () => () => 1,
  };
}
