/** The kitchen's things on disk: lots, offers, drying runs and batches, each kept whole. */
import type { Transaction } from 'kysely';
import type { Batch, DryingRun, Kitchen, Lot, Offer } from '../kitchen/model.ts';
import type { Tables } from './schema.ts';
import { StoreError } from './store-error.ts';

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
