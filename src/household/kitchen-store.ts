/** The kitchen's things on disk: lots, offers, drying runs and batches, each kept whole. */
import type { Transaction } from 'kysely';
import { batchTag } from '../kitchen/batch/batch-tag.ts';
import type { Batch, DryingRun, Kitchen, Lot, Offer, Pour } from '../kitchen/model.ts';
import type { PourEntry } from './model.ts';
import type { Tables } from './schema.ts';
import { BatchOvertaken, StoreError } from './store-error.ts';

type Tx = Transaction<Tables>;

/** The kitchen's kinds of things, by the name of their list in a household. */
export interface KitchenThings {
  lots: Lot;
  offers: Offer;
  dryingRuns: DryingRun;
  batches: Batch;
  kitchen: Kitchen;
}

/** All five are of one shape, so one stands for the others where a query is typed. */
type WholeName = 'lots';

const TABLES = {
  lots: 'lots',
  offers: 'offers',
  dryingRuns: 'drying_runs',
  batches: 'batches',
  kitchen: 'kitchen',
} as unknown as Record<keyof KitchenThings, WholeName>;

export const KITCHEN_KINDS = Object.keys(TABLES) as readonly (keyof KitchenThings)[];

const NOUNS = {
  lots: 'lot',
  offers: 'offer',
  dryingRuns: 'drying run',
  batches: 'batch',
  kitchen: 'kitchen',
} as const;

/** The list of one kind, in the order in which its things were first kept. */
export async function readKitchen<K extends keyof KitchenThings>(
  tx: Tx,
  kind: K,
): Promise<KitchenThings[K][]> {
  const rows = await tx
    .selectFrom(TABLES[kind] as WholeName)
    .select('body')
    .orderBy('rowid' as 'id')
    .execute();
  return rows.map(({ body }) => JSON.parse(body) as KitchenThings[K]);
}

export async function putKitchen<K extends keyof KitchenThings>(
  tx: Tx,
  kind: K,
  thing: KitchenThings[K],
): Promise<void> {
  if (kind === 'batches') await knownAnimals(tx, thing as Batch);
  if (kind === 'dryingRuns') await knownLot(tx, thing as DryingRun);
  const row = { id: thing.id, body: JSON.stringify(thing) };
  await tx
    .insertInto(TABLES[kind] as WholeName)
    .values(row)
    .onConflict((on) => on.column('id').doUpdateSet(row))
    .execute();
}

/** Most pours of one batch. */
export const MOST_POURS = 1000;

/**
 * Adds pours to a batch. A pour that it has already (same food, grams and time) is not added again, so an entry whose
 * answer was lost may be sent anew.
 * @param seen tag of the batch as its sender last saw it; without it, the pours go onto whatever stands there
 * @returns the batch as it stands
 */
export async function addPours(
  tx: Tx,
  id: string,
  { pours, stock }: PourEntry,
  seen: string | undefined,
): Promise<Batch> {
  const batch = await readBatch(tx, id);
  if (!batch) throw new StoreError('missing', '/id', `no batch has the id "${id}"; keep the batch first`);
  const all = [...batch.pours];
  for (const pour of pours) if (!all.some((there) => samePour(there, pour))) all.push(pour);
  if (all.length === batch.pours.length) return batch;
  refuseOvertaken(batch, seen);
  if (batch.finishedAt !== undefined) {
    throw new BatchOvertaken('finished', batch, 'the batch is finished; nothing is poured into it any more');
  }
  if (all.length > MOST_POURS)
    throw new StoreError('invalid', '/pours', `a batch has at most ${MOST_POURS} pours; finish this one`);
  const next = { ...batch, pours: all, ...(stock && { stock }) };
  await putKitchen(tx, 'batches', next);
  return next;
}

/**
 * Writes a batch if it still stands as its sender last saw it, or stands so already.
 * @param seen tag of the batch as its sender last saw it
 */
export async function putBatchUnlessOvertaken(tx: Tx, next: Batch, seen: string): Promise<void> {
  const batch = await readBatch(tx, next.id);
  if (!batch)
    throw new StoreError('missing', '/id', `no batch has the id "${next.id}"; it may have been deleted`);
  if (batchTag(batch) !== batchTag(next)) refuseOvertaken(batch, seen);
  await putKitchen(tx, 'batches', next);
}

async function readBatch(tx: Tx, id: string): Promise<Batch | undefined> {
  const row = await tx.selectFrom('batches').select('body').where('id', '=', id).executeTakeFirst();
  return row && (JSON.parse(row.body) as Batch);
}

const samePour = (a: Pour, b: Pour) => a.food === b.food && a.grams === b.grams && a.at === b.at;

function refuseOvertaken(batch: Batch, seen: string | undefined): void {
  if (seen === undefined || seen === batchTag(batch)) return;
  throw new BatchOvertaken(
    'changed',
    batch,
    'another device went on with this batch; look at how it stands now',
  );
}

export async function deleteKitchen(tx: Tx, kind: keyof KitchenThings, id: string): Promise<void> {
  if (kind === 'lots') await unusedLot(tx, id);
  const { numDeletedRows } = await tx
    .deleteFrom(TABLES[kind] as WholeName)
    .where('id', '=', id)
    .executeTakeFirst();
  if (numDeletedRows === 0n) {
    throw new StoreError(
      'missing',
      '/id',
      `no ${NOUNS[kind]} has the id "${id}"; it may have been deleted already`,
    );
  }
}

/** A batch just begun must name animals that are there; one that was fed keeps its animals after they are gone. */
async function knownAnimals(tx: Tx, batch: Batch): Promise<void> {
  const before = await tx.selectFrom('batches').select('id').where('id', '=', batch.id).executeTakeFirst();
  if (before) return;
  for (const [i, id] of batch.animalIds.entries()) {
    const animal = await tx.selectFrom('animals').select('id').where('id', '=', id).executeTakeFirst();
    if (!animal) {
      throw new StoreError(
        'invalid',
        `/animalIds/${i}`,
        `no animal has the id "${id}"; add it first, or leave it out`,
      );
    }
  }
}

async function knownLot(tx: Tx, run: DryingRun): Promise<void> {
  const lot = await tx.selectFrom('lots').select('id').where('id', '=', run.lot).executeTakeFirst();
  if (!lot)
    throw new StoreError('invalid', '/lot', `no lot has the id "${run.lot}"; add the fresh food first`);
}

/** What went into a batch or a drying run must stay traceable: a lot that is used up is empty, not deleted. */
async function unusedLot(tx: Tx, id: string): Promise<void> {
  const batches = (await readKitchen(tx, 'batches')).filter((b) =>
    b.pours.some((p) => p.lots.some((l) => l.lot === id)),
  );
  const runs = (await readKitchen(tx, 'dryingRuns')).filter((r) => r.lot === id);
  if (batches.length + runs.length === 0) return;
  const where = batches.length > 0 ? `the batch "${batches[0]!.name}"` : 'a drying run';
  throw new StoreError(
    'in use',
    '/id',
    `${where} took from this lot; bar it instead, so that it stays traceable`,
  );
}
