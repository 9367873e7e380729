/** The problem that a batch is weighed out by, while some of it is still to come. */

import type { Problem } from '../../../formulation/problem/problem.ts';
import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import { pouredFoods, type WeighedFood, weighedProblem } from '../../../kitchen/batch/weighed-problem.ts';
import type { CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { contentsOfBatch, contentsOfFoods, fedIn } from '../cupboard/contents.ts';
import { lotsFor } from '../cupboard/take-from-lots.ts';
import { groupsOfFoods } from './problem-groups.ts';

/** What of a household says which packs a batch is made of and which it would still take. */
export function contentsForWeighing(house: Household, batch: Batch): CupboardContents {
  const left = contentsOfFoods(
    house,
    batch.problem.foods.map((f) => f.id),
  );
  const there = contentsOfBatch(house, batch);
  // A pack that stands under another id of its food is in both, under the batch's own in the first.
  const lots = [...new Map([...there.lots, ...left.lots].map((l) => [l.id, l])).values()];
  const ids = new Set(lots.map((l) => l.id));
  const fed = fedIn(house.feedings).filter((f) => ids.has(f.lot));
  return {
    lots,
    runs: [...new Map([...left.runs, ...there.runs].map((r) => [r.id, r])).values()],
    batches: house.batches.filter((b) => b.pours.some((p) => p.lots.some((l) => ids.has(l.lot)))),
    ...(fed.length > 0 && { fed }),
  };
}

/**
 * The problem of a batch with its foods as the packs are: those that were poured, and of foods still to come those that
 * they come from today. Once all is poured it is the problem of the record.
 * @param p.ended nothing more is to come
 */
export function judgedProblem(
  batch: Batch,
  p: {
    readonly kept: CupboardContents;
    readonly day: Day;
    readonly parts: FormulationOptions;
    readonly ended: boolean;
  },
): Problem {
  const known = new Set(p.kept.lots.map((l) => l.id));
  const pours = batch.pours.map((pour) => ({ ...pour, lots: pour.lots.filter((l) => known.has(l.lot)) }));
  const poured = pouredFoods({ ...batch, pours }, p.kept);
  const touched = new Set(poured.map((f) => f.food));
  const groupOf = groupsOfFoods(batch.problem, p.parts);
  const coming = batch.problem.foods.flatMap(({ id: food }): WeighedFood[] => {
    const grams = ((batch.shares[food] ?? 0) * batch.grams) / 100;
    if (p.ended || touched.has(food) || !(grams > 0)) return [];
    return [{ food, grams, lots: lotsFor(p.kept, food, grams, { day: p.day, groupOf })?.takes ?? [] }];
  });
  return weighedProblem(batch.problem, [...poured, ...coming], p.parts.reference);
}
