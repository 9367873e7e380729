/** The batch that the kitchen prepares: which mix, how much of it, and how that follows from what the animals eat. */

import type { ChosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import { mixPartOf } from '../../../kitchen/feeding/runs-out.ts';
import type { NextBatch } from '../../../kitchen/model.ts';
import { type BatchSize, batchGrams } from '../../../kitchen/shopping/batch-grams.ts';
import type { Household, Mix } from '../../model.ts';
import { hereAmong } from '../care/here.ts';

interface NextBatchSize {
  readonly size: BatchSize;
  /** g of the mix; absent where it cannot be worked out. */
  readonly grams?: number;
  /** Why not, and what to enter. */
  readonly fault?: string;
}

/** What the kitchen is preparing of this mix; another mix's plan does not count. */
export function nextBatchOf(house: Household, mix: Mix): NextBatch {
  const next = house.kitchen[0]?.next;
  return next?.mixId === mix.id ? next : { mixId: mix.id, pins: [] };
}

/** What is kept for the batch after one that was weighed out: its size stays, the days that were chosen are over. */
export function afterBatch({ from: _from, until: _until, ...rest }: NextBatch): NextBatch {
  return { ...rest, pins: [] };
}

/**
 * Size of the next batch of a mix: the grams or days that were said, else the mix's own batch weight.
 * @param chosen shares of what is fed beside it, where they are chosen
 */
export function sizeOfNext(house: Household, mix: Mix, chosen?: ChosenShares): NextBatchSize {
  const { grams, days } = nextBatchOf(house, mix);
  const size: BatchSize =
    days === undefined
      ? { grams: grams ?? mix.problem.batch_grams }
      : {
          days,
          animals: hereAmong(house.animals, mix.animalIds),
          mixPart: mixPartOf(mix.problem, chosen),
        };
  try {
    return { size, grams: batchGrams(size) };
  } catch (error) {
    if (error instanceof RangeError) return { size, fault: error.message };
    throw error;
  }
}

/** The plan with its size said another way, in g or in days; what else it says stays. */
export function resized(
  before: NextBatch,
  size: { readonly grams: number } | { readonly days: number },
): NextBatch {
  const { grams: _g, days: _d, ...rest } = before;
  return { ...rest, ...size };
}
