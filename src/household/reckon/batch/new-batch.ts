/** A batch as its weighing begins. */

import type { Problem } from '../../../formulation/problem/problem.ts';
import type { Batch, Moment } from '../../../kitchen/model.ts';
import { withoutFloatNoise } from '../../../kitchen/rounding.ts';
import type { Animal, Mix } from '../../model.ts';
import { isHere } from '../care/here.ts';

/**
 * @param mix with what its animals bring
 * @param p.problem with the batch's weight and the scale's step @param p.animals of the household
 * @param p.stock g that the lots hold of each food; left out where they are not counted
 */
export function newBatch(
  mix: Mix,
  p: {
    readonly id: string;
    readonly startedAt: Moment;
    readonly problem: Problem;
    readonly shares: Readonly<Record<string, number>>;
    readonly order: readonly string[];
    readonly animals: readonly Animal[];
    readonly stock?: Readonly<Record<string, number>>;
  },
): Batch {
  return {
    id: p.id,
    mixId: mix.id,
    name: mix.name,
    problem: withoutAdvice(p.problem),
    shares: p.shares,
    order: p.order,
    grams: p.problem.batch_grams,
    pours: [],
    // One that was deleted or is gone eats of it no more.
    animalIds: mix.animalIds.filter((id) => p.animals.some((a) => a.id === id && isHere(a))),
    ...(p.stock && Object.keys(p.stock).length > 0 && { stock: p.stock }),
    startedAt: p.startedAt,
  };
}

/** What advice leaves out is a matter of the mix as it is made: nothing is advised of a batch. */
function withoutAdvice({ not_offered: _, ...problem }: Problem): Problem {
  return problem;
}

/** A weight in whole steps of a scale, at least one. @param step g */
export function inScaleSteps(grams: number, step: number): number {
  return withoutFloatNoise(Math.max(1, Math.round(grams / step)) * step);
}
