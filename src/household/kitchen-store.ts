/** The kitchen's objects on disk: lots, offers, drying runs, batches and the kitchen itself, each a row of JSON. */
import type { Batch, DryingRun } from '../kitchen/model.ts';
import type { Kept } from './model.ts';
import { allRows, deleteRow, hasRow, putRow } from './rows.ts';
import type { Tx } from './schema.ts';
import { StoreError } from './store-error.ts';

const TABLES = {
  lots: 'lots',
  offers: 'offers',
  dryingRuns: 'drying_runs',
  batches: 'batches',
  kitchen: 'kitchen',
} as const;

/** The kinds of the kitchen's objects, by the name of their list in a household. */
export type KitchenKind = keyof typeof TABLES;

export const KITCHEN_KINDS = Object.keys(TABLES) as readonly KitchenKind[];

/** The list of one kind, in the order in which its objects were first kept. */
export async function readKitchen<K extends KitchenKind>(tx: Tx, kind: K): Promise<Kept<K>[]> {
  const rows = await allRows(tx, TABLES[kind]);
  return rows.map(({ body }) => JSON.parse(body) as Kept<K>);
}

/** @throws StoreError when a new batch names an animal, or a drying run a lot, that is not there */
export async function putKitchen<K extends KitchenKind>(tx: Tx, kind: K, object: Kept<K>): Promise<void> {
  if (kind === 'batches') await requireAnimals(tx, object as Batch);
  if (kind === 'dryingRuns') await requireLot(tx, object as DryingRun);
  await putRow(tx, TABLES[kind], { id: object.id, body: JSON.stringify(object) });
}

/** @throws StoreError when there is none, or something was taken from the lot */
export async function deleteKitchen(tx: Tx, kind: KitchenKind, id: string): Promise<void> {
  if (kind === 'lots') await refuseUsedLot(tx, id);
  await deleteRow(tx, TABLES[kind], id);
}

/** A batch just begun must name animals that are there; one that was fed keeps its animals after they are gone. */
async function requireAnimals(tx: Tx, batch: Batch): Promise<void> {
  if (await hasRow(tx, 'batches', batch.id)) return;
  for (const [i, id] of batch.animalIds.entries()) {
    if (await hasRow(tx, 'animals', id)) continue;
    throw new StoreError(
      'invalid',
      `/animalIds/${i}`,
      `no animal has the id "${id}"; add it first, or leave it out`,
    );
  }
}

async function requireLot(tx: Tx, run: DryingRun): Promise<void> {
  if (await hasRow(tx, 'lots', run.lot)) return;
  throw new StoreError('invalid', '/lot', `no lot has the id "${run.lot}"; add the fresh food first`);
}

/** What went into a batch or a drying run must stay traceable: a lot that is used up is empty, not deleted. */
async function refuseUsedLot(tx: Tx, id: string): Promise<void> {
  const batches = await readKitchen(tx, 'batches');
  const batch = batches.find((b) => b.pours.some((p) => p.lots.some((l) => l.lot === id)));
  const runs = await readKitchen(tx, 'dryingRuns');
  if (!batch && !runs.some((r) => r.lot === id)) return;
  const where = batch ? `the batch "${batch.name}"` : 'a drying run';
  throw new StoreError(
    'in use',
    '/id',
    `${where} took from this lot; bar it instead, so that it stays traceable`,
  );
}
