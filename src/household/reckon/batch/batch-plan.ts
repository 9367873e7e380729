/** What must be known before the first food of a batch is poured. */

import { isFit, type Verdict, verdictOf } from '../../../formulation/explain/verdict.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import { evaluateWith } from '../../../kitchen/batch/batch.ts';
import { type Allocation, type CupboardContents, totals } from '../../../kitchen/cupboard/cupboard.ts';
import type { Day } from '../../../kitchen/model.ts';
import { type PourPlace, pourOrder } from '../../../kitchen/weighing/pour-order.ts';
import { lotsFor } from '../cupboard/take-from-lots.ts';
import { isWeighableOn } from '../cupboard/weighable.ts';
import { groupsOfFoods } from './problem-groups.ts';

/** What must be known before the first food of a batch is poured. */
export interface BatchPlan {
  readonly inRange: boolean;
  /** Whether it keeps the rules, and how sure that is. */
  readonly verdict: Verdict;
  /** Foods in the order to pour them, with reasons. */
  readonly order: readonly PourPlace[];
  /** g that the lots hold ready of each food of which there is a lot; the others are not on record. */
  readonly stock: Readonly<Record<string, number>>;
  /** Lots of its foods that hold some and may not be weighed out today, where the others do not hold enough. */
  readonly passed: Allocation['passed'];
}

export function planOf(
  problem: Problem,
  shares: Readonly<Record<string, number>>,
  p: { readonly kept: CupboardContents; readonly day: Day; readonly parts: FormulationOptions },
): BatchPlan {
  const evaluation = evaluateWith(p.parts)(problem, shares);
  const groupOf = groupsOfFoods(problem, p.parts);
  const ready = totals(p.kept, isWeighableOn(p.day, groupOf));
  const named = new Set(problem.foods.map((f) => f.id));
  const needed = (food: string) => ((shares[food] ?? 0) * problem.batch_grams) / 100;
  return {
    inRange: isFit(evaluation),
    verdict: verdictOf(evaluation),
    order: pourOrder(problem, shares, p.parts),
    stock: Object.fromEntries(ready.filter((t) => named.has(t.food)).map((t) => [t.food, t.ready])),
    passed: problem.foods.flatMap(({ id }) => {
      const found = needed(id) > 0 ? lotsFor(p.kept, id, needed(id), { day: p.day, groupOf }) : undefined;
      return found && found.short > 0 ? found.passed : [];
    }),
  };
}
