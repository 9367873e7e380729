/** What a swap of foods is reckoned with: the problem's own foods, those of the tables, and the rows of all rules. */
import { foodName } from '../../foods/food-name.ts';
import type { Reference } from '../../foods/reference.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { applyCautions, NO_CAUTIONS } from '../amounts/apply-cautions.ts';
import { type FoodAmounts, foodAmounts } from '../amounts/food-amounts.ts';
import type { Ingredient, Problem } from '../problem/problem.ts';
import { type HalfSpace, type LinearBound, linearBounds, Ration } from '../solve/bounds.ts';
import { sdsFromMean } from '../solve/build-ration.ts';
import { boundsWithout } from '../solve/drop-one.ts';
import { type DryFood, mayBeOffered, usualDryFoods } from './dry-foods.ts';

/** All foods that take part: those of the problem that may be fed, then the candidates of the tables. */
export interface SwapModel {
  readonly foods: readonly FoodAmounts[];
  /** By column; undefined for the problem's own foods. */
  readonly refs: readonly (string | undefined)[];
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Least share where the food is used at all. */
  readonly used: Float64Array;
  /** Most that a caution allows; advice keeps to it even where the problem only reports cautions. */
  readonly advised: Float64Array;
  readonly spaces: readonly HalfSpace[];
  /** Rows that must also be kept when any one food of the mix is left. */
  readonly leaving: readonly HalfSpace[];
}

/** @param beside what is fed beside the mix */
export function swapModelOf(problem: Problem, reference: Reference, beside: Ration['beside']): SwapModel {
  const advice = applyCautions({ ...problem, cautions: 'apply' }, reference);
  const { blocked, caps } = problem.cautions === 'apply' ? advice : NO_CAUTIONS;
  const open = problem.foods.flatMap((food, row) =>
    food.refused || blocked.has(row) ? [] : [{ food, row }],
  );
  const own = open.map(({ food }) => foodAmounts(food, reference, problem.variation));
  const tables = candidates(problem, reference);
  const foods = [...own, ...tables.map((t) => t.amounts)];
  const ration = new Ration(foods, beside);
  const byColumn = (of: (one: { food: Ingredient; row: number }) => number, further: number) =>
    Float64Array.from([...open.map(of), ...tables.map(() => further)]);
  const weighable = (100 * (problem.least_grams ?? 0)) / problem.batch_grams;
  const rows = (bounds: readonly LinearBound[]) => bounds.map((s) => s.halfSpace(s.bound));
  return {
    foods,
    refs: [...own.map(() => undefined), ...tables.map((t) => t.food.ref)],
    lower: byColumn(({ food }) => food.min ?? 0, 0),
    upper: byColumn(({ food, row }) => Math.min(food.max ?? 100, caps.each.get(row)?.max ?? 100), 100),
    used: byColumn(({ food }) => Math.max(food.if_used ?? 0, weighable), weighable),
    advised: byColumn(
      ({ row }) => (advice.blocked.has(row) ? 0 : (advice.caps.each.get(row)?.max ?? 100)),
      100,
    ),
    // Bounds of single foods stand in `lower` and `upper`.
    spaces: rows(
      linearBounds(
        problem,
        ration,
        open.map(({ row }) => row),
        sdsFromMean(problem),
        { each: new Map(), together: caps.together },
      ).filter((b) => !b.pointer.startsWith('/foods/')),
    ),
    leaving: problem.drop_one ? rows(boundsWithout(problem, ration)) : [],
  };
}

/** Nutrients that a rule is about. */
export function ruledTags(problem: Problem): Tag[] {
  return [
    ...new Set(
      problem.rules.flatMap((r) => ('nutrient' in r ? [r.nutrient] : 'ratio' in r ? [...r.ratio] : [])),
    ),
  ];
}

/** Foods of the tables that the problem does not name yet, refused ones included, and that no missing figure blurs. */
function candidates(problem: Problem, reference: Reference): DryFood[] {
  const refs = new Set(problem.foods.map((f) => f.ref));
  const names = new Set(problem.foods.map((f) => f.name?.toLowerCase()));
  const ruled = ruledTags(problem);
  const offered = mayBeOffered(problem);
  return usualDryFoods(problem, reference).filter(
    ({ food, amounts }) =>
      !refs.has(food.ref) &&
      offered(food) &&
      !names.has(food.name.toLowerCase()) &&
      !names.has(foodName(food).toLowerCase()) &&
      ruled.every((tag) => amounts.amount(tag).status !== 'unknown'),
  );
}
