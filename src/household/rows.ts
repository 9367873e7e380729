/** Reading, writing and deleting rows, the same for every table whose rows are objects with an id. */
import type { Tables, Tx } from './schema.ts';
import { StoreError } from './store-error.ts';

const NOUNS = {
  foods: 'food of your own',
  profiles: 'target profile of your own',
  animals: 'animal',
  mixes: 'mix',
  mix_versions: 'version of a mix',
  lots: 'lot',
  offers: 'offer',
  drying_runs: 'drying run',
  batches: 'batch',
  kitchen: 'kitchen',
} as const;

/** The tables whose rows are objects with an id. */
type ObjectTable = keyof typeof NOUNS;

/** Kysely cannot type a query over one of several tables; they are alike in what is used here. */
const asOne = (table: ObjectTable) => table as 'kitchen';

/** All rows of a table, in the order in which they were first written. */
export async function allRows<T extends ObjectTable>(tx: Tx, table: T): Promise<Tables[T][]> {
  const rows = await tx
    .selectFrom(asOne(table))
    .selectAll()
    .orderBy('rowid' as 'id')
    .execute();
  return rows as Tables[ObjectTable][] as Tables[T][];
}

export async function hasRow(tx: Tx, table: ObjectTable, id: string): Promise<boolean> {
  const row = await tx.selectFrom(asOne(table)).select('id').where('id', '=', id).executeTakeFirst();
  return row !== undefined;
}

/** Writes a row, new or in the place of the one with its id. */
export async function putRow<T extends ObjectTable>(tx: Tx, table: T, row: Tables[T]): Promise<void> {
  const values = row as Tables[ObjectTable] as Tables['kitchen'];
  await tx
    .insertInto(asOne(table))
    .values(values)
    .onConflict((on) => on.column('id').doUpdateSet(values))
    .execute();
}

/** @throws StoreError when there is none */
export async function deleteRow(tx: Tx, table: ObjectTable, id: string): Promise<void> {
  const { numDeletedRows } = await tx.deleteFrom(asOne(table)).where('id', '=', id).executeTakeFirst();
  if (numDeletedRows > 0n) return;
  throw new StoreError(
    'missing',
    '/id',
    `no ${NOUNS[table]} has the id "${id}"; it may have been deleted already`,
  );
}
