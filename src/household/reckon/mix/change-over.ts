/** The change from the present food to a mix: what the present food holds, and the mix as its days count it. */

import type { Composition } from '../../../foods/food.ts';
import { isWhole } from '../../../formulation/explain/in-range.ts';
import { AIR_DRY, type Beside, type Ingredient, type Problem } from '../../../formulation/problem/problem.ts';
import type { BesideShares, Evaluation, NutrientLine } from '../../../formulation/problem/result.ts';
import { COMPLETE } from '../../../kitchen/tolerances.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { Animal, Household, Mix } from '../../model.ts';

/** From this part of the weight on, percent, an amount is known of all of it; less by rounding errors alone. */
const WHOLE = 100 - COMPLETE;

export interface MixAsFood {
  readonly food: Ingredient;
  /** What is known of a part of it only: the known part counts as the least it can be. */
  readonly partly: readonly Tag[];
}

/**
 * A mix, or the ration it is part of, as one food: the blend of its shares. What is known of a part of it only gets
 * bounds and no value; what is known of none of it stays unknown.
 */
export function mixAsFood(
  id: string,
  name: string,
  nutrients: Evaluation['nutrients'],
  on: 'mix' | 'ration',
): MixAsFood {
  const composition: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const partly: Tag[] = [];
  for (const [tag, line] of Object.entries(nutrients) as [Tag, NutrientLine][]) {
    const [value, least, most, coverage] =
      on === 'mix'
        ? [line.mix, line.low_mix, line.high_mix, line.coverage_mix]
        : [line.ration, line.low, line.high, line.coverage];
    if (coverage >= WHOLE) composition[tag] = value;
    else if (least > 0) {
      low[tag] = least;
      high[tag] = most;
      partly.push(tag);
    }
  }
  return { food: { id, name, composition, low, high }, partly };
}

/**
 * A problem as the days of a change count it: fresh food left out, the rest of what is fed beside in its proportions
 * and at the shares chosen for it, and of the rules those on nutrients and ratios.
 * @param chosen shares of what is fed beside, where they were chosen
 */
export function withoutFresh(
  problem: Problem,
  chosen: BesideShares | undefined,
): { problem: Problem; fresh: readonly Beside[] } {
  const fresh = problem.beside.filter((b) => b.counts_as === AIR_DRY);
  const share = (b: Beside) => chosen?.[b.id]?.share ?? writtenShare(b, problem.daily_grams);
  const left = 100 - fresh.reduce((sum, b) => sum + share(b), 0);
  const beside = problem.beside
    .filter((b) => !fresh.includes(b))
    .map((b): Beside => {
      const { share_min: _least, share_max: _most, grams_a_day: _grams, ...food } = b;
      return { ...food, share_of_ration: left > 0 ? (100 * share(b)) / left : share(b) };
    });
  const { aims: _aims, drop_one: _drop, least_grams: _grams, ...rest } = problem;
  return {
    problem: {
      ...rest,
      beside,
      confidence: 0,
      rules: problem.rules.filter((r) => 'nutrient' in r || 'ratio' in r),
    },
    fresh,
  };
}

/** Percent of the ration, also where grams a day are written instead. */
function writtenShare(b: Beside, daily: number | undefined): number {
  if (b.grams_a_day === undefined || !daily || b.counts_as) return b.share_of_ration;
  return (100 * b.grams_a_day) / daily;
}

/** Who may be asked what is fed a day: the problem, or else the animals of the mix. */
export function dailyGramsOf(
  problem: Problem,
  animals: readonly Animal[],
): { grams: number; from: string } | undefined {
  if (problem.daily_grams !== undefined)
    return { grams: problem.daily_grams, from: words().changeOver.fromMix };
  for (const { name, dailyGrams } of animals)
    if (dailyGrams !== undefined) return { grams: dailyGrams, from: words().changeOver.fromAnimal(name) };
  return undefined;
}

/** Whether two foods are one and the same, so that they are weighed together. */
export function isSameFood(a: Ingredient | Beside, b: Ingredient | Beside): boolean {
  return a.id === b.id || (a.ref !== undefined && a.ref === b.ref && !a.composition && !b.composition);
}

/** The other mixes of a household whose shares make a whole. */
export function otherMixes(house: Pick<Household, 'mixes'>, mix: Pick<Mix, 'id'>): Mix[] {
  return house.mixes.filter((m) => {
    const total = m.problem.foods.reduce((sum, f) => sum + (f.refused ? 0 : (m.shares[f.id] ?? 0)), 0);
    return m.id !== mix.id && isWhole(total);
  });
}
