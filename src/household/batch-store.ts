/** Writing a batch while it is weighed, perhaps by two devices: pours once each, and nothing over what was not seen. */
import { batchTag } from '../kitchen/batch/batch-tag.ts';
import type { Batch, Pour } from '../kitchen/model.ts';
import { putKitchen } from './kitchen-store.ts';
import type { PourAnswer, PourEntry } from './model.ts';
import type { Tx } from './schema.ts';
import { BatchOvertaken, StoreError } from './store-error.ts';

/** Most pours of one batch. */
export const MOST_POURS = 1000;

/**
 * Adds pours to a batch. A pour that it has already (same food, grams and time) is not added again, so an entry whose
 * answer was lost may be sent anew. Nothing is added where the batch stands otherwise than its sender saw it.
 * @throws StoreError when there is no such batch, it is finished, or it would have too many pours
 */
export async function addPours(tx: Tx, id: string, { pours, stock, seen }: PourEntry): Promise<PourAnswer> {
  const batch = await batchOf(tx, id);
  const all = [...batch.pours];
  for (const pour of pours) if (!all.some((there) => samePour(there, pour))) all.push(pour);
  if (all.length === batch.pours.length) return { added: true, batch };
  if (seen !== undefined && seen !== batchTag(batch)) return { added: false, batch };
  if (batch.finishedAt !== undefined)
    throw new StoreError('finished', '', 'the batch is finished; nothing is poured into it any more');
  if (all.length > MOST_POURS)
    throw new StoreError('invalid', '/pours', `a batch has at most ${MOST_POURS} pours; finish this one`);
  const next = { ...batch, pours: all, ...(stock && { stock }) };
  await putKitchen(tx, 'batches', next);
  return { added: true, batch: next };
}

/**
 * Writes a batch if it still stands as its sender last saw it, or stands so already.
 * @param seen tag of the batch as its sender last saw it
 * @throws BatchOvertaken when it stands otherwise; StoreError when there is none
 */
export async function putBatchUnlessOvertaken(tx: Tx, next: Batch, seen: string): Promise<void> {
  const batch = await batchOf(tx, next.id);
  const tag = batchTag(batch);
  if (tag !== seen && tag !== batchTag(next)) throw new BatchOvertaken(batch);
  await putKitchen(tx, 'batches', next);
}

async function batchOf(tx: Tx, id: string): Promise<Batch> {
  const row = await tx.selectFrom('batches').select('body').where('id', '=', id).executeTakeFirst();
  if (row) return JSON.parse(row.body) as Batch;
  throw new StoreError('missing', '/id', `no batch has the id "${id}"; it may have been deleted`);
}

const samePour = (a: Pour, b: Pour) => a.food === b.food && a.grams === b.grams && a.at === b.at;
