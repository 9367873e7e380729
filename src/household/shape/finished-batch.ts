/**
 * A finished batch is a record of what was fed: what went into it, for whom and when stays as it was, so that it can be
 * traced for as long as anybody asks.
 */

import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { same } from '../merge/merge-record.ts';
import type { Fault } from './fault-words.ts';

/** What says how it went on with it. */
const STILL_OPEN: readonly (keyof Batch)[] = ['left', 'name'];

/**
 * Why a finished batch may not become another; undefined where it may. One that is still weighed may become anything.
 * @param after null where it is to be deleted
 */
export function finishedBatchChange(before: Batch, after: Batch | null): Fault | undefined {
  if (before.finishedAt === undefined) return undefined;
  if (after === null)
    return {
      field: '/id',
      message: words().household.refusal.finishedStays(before.name),
    };
  const fields = [...new Set([...Object.keys(before), ...Object.keys(after)])] as (keyof Batch)[];
  const field = fields.find((f) => !STILL_OPEN.includes(f) && !same(before[f], after[f]));
  if (field === undefined) return undefined;
  return {
    field: `/${field}`,
    message: words().household.refusal.finishedFixed(before.name),
  };
}
