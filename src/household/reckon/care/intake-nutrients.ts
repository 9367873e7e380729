/** What of a nutrient was offered, taken, eaten and left, each between honest limits. */
import {
  type AmountsIn,
  contentEaten,
  type IntakeSet,
  nutrientEaten,
  nutrientLeft,
} from '../../../care/leftovers/intake-set.ts';
import { type Range, sumOf } from '../../../care/leftovers/pile.ts';
import type { FoodAmounts } from '../../../formulation/amounts/food-amounts.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';
import type { Portion } from './intake-question.ts';
import type { PortionAmounts } from './portion-amounts.ts';

/** One nutrient of all food that was offered, taken or eaten on the noted nights. */
export interface NutrientOf {
  /** In the unit of the tagname, over all noted nights. */
  readonly amount: Range;
  /** Per 100 g of that food; undefined where there can have been none. */
  readonly content?: Range;
  /** Percent of that food, by weight, of which the amount is known or estimated: at least so much. */
  readonly coverage: number;
}

export interface NutrientIntake {
  readonly tag: Tag;
  readonly offered: NutrientOf;
  readonly taken: NutrientOf;
  readonly eaten: NutrientOf;
  /** What was neither eaten nor, as far as it was looked for, unknown: bowl, floor and hoards, in the unit of the tagname. */
  readonly left: Range;
}

/** What may have been taken or eaten of some portions. */
export interface Fed {
  readonly set: IntakeSet;
  /** Of each food of the set, in its order. */
  readonly portions: readonly (readonly Portion[])[];
}

/** @param portions of all foods, in any order */
export function fedOf(set: IntakeSet, portions: readonly Portion[]): Fed {
  return { set, portions: set.offered.map(({ food }) => portions.filter((p) => p.food === food)) };
}

/**
 * One nutrient over all nights; nothing where nobody knows it of any food.
 * @param byNights what was taken, night by night @param bySpans what was eaten, by spans between looks for hoards
 */
export function nutrientIntake(
  tag: Tag,
  byNights: readonly Fed[],
  bySpans: readonly Fed[],
  tables: PortionAmounts,
): NutrientIntake[] {
  if (!byNights.some((n) => n.portions.some((own) => own.some((p) => isKnown(tables.get(p.made), tag)))))
    return [];
  const all = byNights.map(
    ({ set, portions }): Fed => ({ set: { offered: set.offered, piles: [] }, portions }),
  );
  const amounts = amountsIn(bySpans, tables, tag);
  return [
    {
      tag,
      offered: nutrientOf(all, tables, tag),
      taken: nutrientOf(byNights, tables, tag),
      eaten: nutrientOf(bySpans, tables, tag),
      left: nutrientLeft(
        bySpans.map((s) => s.set),
        amounts,
      ),
    },
  ];
}

function isKnown(food: FoodAmounts | undefined, tag: Tag): boolean {
  return food !== undefined && food.amount(tag).status !== 'unknown';
}

function nutrientOf(fed: readonly Fed[], tables: PortionAmounts, tag: Tag): NutrientOf {
  const sets = fed.map((f) => f.set);
  const amounts = amountsIn(fed, tables, tag);
  const content = contentEaten(sets, amounts);
  const known = coverageIn(fed, tables, tag);
  const all = known.every((foods) => foods.every((percent) => percent.low === 100));
  return {
    amount: nutrientEaten(sets, amounts),
    ...(content && { content }),
    coverage: all ? 100 : (contentEaten(sets, known)?.low ?? 0),
  };
}

/** Amounts per 100 g of each food of each set; one that came from two batches lies between them by weight. */
function amountsIn(fed: readonly Fed[], tables: PortionAmounts, tag: Tag): AmountsIn {
  return perFood(fed, (made) => tables.get(made)?.amount(tag) ?? NOTHING);
}

const NOTHING: Range = { low: 0, high: 0 };
const ALL: Range = { low: 100, high: 100 };

/** 100 for a food of which the amount is known or estimated, 0 for one of which it is not. */
function coverageIn(fed: readonly Fed[], tables: PortionAmounts, tag: Tag): AmountsIn {
  return perFood(fed, (made) => (isKnown(tables.get(made), tag) ? ALL : NOTHING));
}

function perFood(fed: readonly Fed[], of: (made: string) => Range): AmountsIn {
  return fed.map(({ portions }) =>
    portions.map((own) => {
      const [only, ...others] = own;
      if (only && others.length === 0) return of(only.made);
      const grams = sumOf(own.map((p) => p.grams));
      const at = (end: keyof Range) => sumOf(own.map((p) => p.grams * of(p.made)[end])) / grams;
      return { low: at('low'), high: at('high') };
    }),
  );
}
