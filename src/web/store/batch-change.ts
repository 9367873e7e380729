/** One change of a batch being weighed, as the request that brings it to the server. */
import type { PourEntry } from '../../household/model.ts';
import { batchTag } from '../../kitchen/batch/batch-tag.ts';
import type { Batch } from '../../kitchen/model.ts';
import { ApiError, postPours, put, putUnlessOvertaken } from './api.ts';

export interface BatchChange {
  /** The batch as the page saw it. */
  readonly base: Batch;
  readonly next: Batch;
}

export interface ChangeOutcome {
  /** The batch as it stands on the server. */
  readonly batch: Batch;
  /** Another device went on with the batch, so the change was not made. */
  readonly overtaken: boolean;
}

/**
 * Makes a change on the server, in one request. Sent again after its answer was lost, it is not made twice.
 * @throws ApiError when it was not made, or nobody knows whether it was
 */
export async function sendChange({ base, next }: BatchChange): Promise<ChangeOutcome> {
  const seen = batchTag(base);
  const added = addedPours(base, next);
  try {
    if (added) {
      const answer = await postPours(next.id, { ...added, seen });
      return { batch: answer.batch, overtaken: !answer.added };
    }
    await putUnlessOvertaken(next, seen);
  } catch (error) {
    if (!(error instanceof ApiError)) throw error;
    if (error.batch) return { batch: error.batch, overtaken: true };
    if (error.status !== 404) throw error;
    // Another device deleted it while it was empty; what is in the bowl now is kept.
    await put('batches', next);
  }
  return { batch: next, overtaken: false };
}

/** The pours that `next` has beyond `base`, and the stock said with them; undefined where anything else differs. */
export function addedPours(base: Batch, next: Batch): PourEntry | undefined {
  const { pours: before, stock: stockBefore, ...rest } = base;
  const { pours: after, stock, ...restNow } = next;
  const pours = after.slice(before.length);
  const onlyAdded = pours.length > 0 && same(after.slice(0, before.length), before) && same(rest, restNow);
  if (!onlyAdded) return undefined;
  if (same(stock, stockBefore)) return { pours };
  return stock && { pours, stock };
}

/** Equal as JSON; the order of fields counts, so equal things may be told apart, never the other way round. */
function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
