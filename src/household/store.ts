/**
 * The household on disk: one SQLite file the keeper can copy.
 * Every write is one transaction; what was answered is on disk, and nothing is ever half-written.
 */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect, type Transaction } from 'kysely';
import type { TargetProfile } from '../targets/profile.ts';
import { PROFILES } from '../targets/profiles.ts';
import { migrate } from './migrations.ts';
import type { Animal, Household, Mix, OwnFood } from './model.ts';
import {
  animalFrom,
  animalRow,
  foodFrom,
  foodIdsOf,
  foodRow,
  mixFrom,
  mixRow,
  profileFrom,
  profileRow,
  type Tables,
} from './schema.ts';

/** A write that the household refuses; nothing was changed. */
export class StoreError extends Error {
  readonly kind: 'missing' | 'in use' | 'invalid';
  /** JSON pointer into what was to be written, or "/id" for a deletion. */
  readonly field: string;
  constructor(kind: StoreError['kind'], field: string, message: string) {
    super(message);
    this.name = 'StoreError';
    this.kind = kind;
    this.field = field;
  }
}

/** What a household keeps. Each `put` writes the whole item, new or in place of the one with its id. */
export interface Store {
  /** Everything, as it stood at one moment. */
  household(): Promise<Household>;
  /** Whether this opening made the file, so that nothing was ever kept here. */
  readonly isNew: boolean;
  /** Writes all items of a household in one transaction. */
  putAll(household: Household): Promise<void>;
  putFood(food: OwnFood): Promise<void>;
  putProfile(profile: TargetProfile): Promise<void>;
  putAnimal(animal: Animal): Promise<void>;
  /** @throws StoreError when its animal or its profile is not known */
  putMix(mix: Mix): Promise<void>;
  /** @throws StoreError when there is none, or a mix names it */
  deleteFood(id: string): Promise<void>;
  /** @throws StoreError when there is none, or a mix is made for it */
  deleteProfile(id: string): Promise<void>;
  /** Mixes made for the animal stay, without it. @throws StoreError when there is none */
  deleteAnimal(id: string): Promise<void>;
  /** @throws StoreError when there is none */
  deleteMix(id: string): Promise<void>;
  close(): Promise<void>;
}

type Tx = Transaction<Tables>;

/**
 * Opens the household file, makes it when it is not there, and brings it to the newest shape.
 * The caller owns the store and closes it.
 * @throws Error when the file is no household file or comes from a newer Pouchful
 */
export function openStore(path: string): Store {
  const { file, isNew } = openFile(path);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  const write = (work: (tx: Tx) => Promise<void>) => db.transaction().execute(work);
  return {
    household: () => db.transaction().execute(readAll),
    isNew,
    putAll: (household) =>
      write(async (tx) => {
        for (const food of household.foods) await putFood(tx, food);
        for (const profile of household.profiles) await putProfile(tx, profile);
        for (const animal of household.animals) await putAnimal(tx, animal);
        for (const mix of household.mixes) await putMix(tx, mix);
      }),
    putFood: (food) => write((tx) => putFood(tx, food)),
    putProfile: (profile) => write((tx) => putProfile(tx, profile)),
    putAnimal: (animal) => write((tx) => putAnimal(tx, animal)),
    putMix: (mix) => write((tx) => putMix(tx, mix)),
    deleteFood: (id) => write((tx) => deleteFood(tx, id)),
    deleteProfile: (id) => write((tx) => deleteProfile(tx, id)),
    deleteAnimal: (id) => write((tx) => deleteOne(tx, 'animals', id)),
    deleteMix: (id) => write((tx) => deleteOne(tx, 'mixes', id)),
    close: () => db.destroy(),
  };
}

function openFile(path: string): { file: Database.Database; isNew: boolean } {
  mkdirSync(dirname(path), { recursive: true });
  const file = new Database(path);
  try {
    file.pragma('journal_mode = WAL');
    file.pragma('synchronous = FULL');
    file.pragma('foreign_keys = ON');
    file.pragma('busy_timeout = 5000');
    return { file, isNew: migrate(file) === 0 };
  } catch (error) {
    file.close();
    if ((error as { code?: string }).code !== 'SQLITE_NOTADB') throw error;
    throw new Error(`${path} is no household file; move it away or name another file with --data`);
  }
}

async function readAll(tx: Tx): Promise<Household> {
  const all = <T extends 'foods' | 'profiles' | 'animals' | 'mixes'>(table: T) =>
    tx
      .selectFrom(table as 'foods')
      .selectAll()
      .orderBy('rowid' as 'id')
      .execute() as Promise<unknown[]>;
  return {
    foods: ((await all('foods')) as Tables['foods'][]).map(foodFrom),
    profiles: ((await all('profiles')) as Tables['profiles'][]).map(profileFrom),
    animals: ((await all('animals')) as Tables['animals'][]).map(animalFrom),
    mixes: ((await all('mixes')) as Tables['mixes'][]).map(mixFrom),
  };
}

async function putFood(tx: Tx, food: OwnFood): Promise<void> {
  const row = foodRow(food);
  await tx
    .insertInto('foods')
    .values(row)
    .onConflict((on) => on.column('id').doUpdateSet(row))
    .execute();
}

async function putProfile(tx: Tx, profile: TargetProfile): Promise<void> {
  const row = profileRow(profile);
  await tx
    .insertInto('profiles')
    .values(row)
    .onConflict((on) => on.column('id').doUpdateSet(row))
    .execute();
}

async function putAnimal(tx: Tx, animal: Animal): Promise<void> {
  const row = animalRow(animal);
  await tx
    .insertInto('animals')
    .values(row)
    .onConflict((on) => on.column('id').doUpdateSet(row))
    .execute();
}

async function putMix(tx: Tx, mix: Mix): Promise<void> {
  await known(tx, mix);
  const row = mixRow(mix);
  await tx
    .insertInto('mixes')
    .values(row)
    .onConflict((on) => on.column('id').doUpdateSet(row))
    .execute();
  await tx.deleteFrom('mix_foods').where('mix_id', '=', mix.id).execute();
  const foods = foodIdsOf(mix).map((food_id) => ({ mix_id: mix.id, food_id }));
  if (foods.length > 0) await tx.insertInto('mix_foods').values(foods).execute();
}

/** Whether the animal and the profile that a mix names are there. */
async function known(tx: Tx, mix: Mix): Promise<void> {
  if (mix.animalId !== undefined) {
    const animal = await tx
      .selectFrom('animals')
      .select('id')
      .where('id', '=', mix.animalId)
      .executeTakeFirst();
    if (!animal) {
      throw new StoreError(
        'invalid',
        '/animalId',
        `no animal has the id "${mix.animalId}"; add the animal first, or leave it out`,
      );
    }
  }
  if (isBuiltIn(mix.profileId)) return;
  const profile = await tx
    .selectFrom('profiles')
    .select('id')
    .where('id', '=', mix.profileId)
    .executeTakeFirst();
  if (!profile) {
    throw new StoreError(
      'invalid',
      '/profileId',
      `no target profile has the id "${mix.profileId}"; choose one from the list, or add it first`,
    );
  }
}

async function deleteFood(tx: Tx, id: string): Promise<void> {
  const users = await tx
    .selectFrom('mix_foods')
    .innerJoin('mixes', 'mixes.id', 'mix_foods.mix_id')
    .select('mixes.name')
    .where('mix_foods.food_id', '=', id)
    .execute();
  const food = await tx.selectFrom('foods').select('name').where('id', '=', id).executeTakeFirst();
  if (food && users.length > 0) {
    throw new StoreError(
      'in use',
      '/id',
      `"${food.name}" is used by ${named(users)}; take it out there first`,
    );
  }
  await deleteOne(tx, 'foods', id);
}

async function deleteProfile(tx: Tx, id: string): Promise<void> {
  const users = isBuiltIn(id)
    ? []
    : await tx.selectFrom('mixes').select('name').where('profile_id', '=', id).execute();
  if (users.length > 0) {
    throw new StoreError(
      'in use',
      '/id',
      `target profile "${id}" is used by ${named(users)}; choose another profile there first`,
    );
  }
  await deleteOne(tx, 'profiles', id);
}

const NOUN = {
  foods: 'food of your own',
  profiles: 'target profile of your own',
  animals: 'animal',
  mixes: 'mix',
} as const;

async function deleteOne(tx: Tx, table: keyof typeof NOUN, id: string): Promise<void> {
  const { numDeletedRows } = await tx.deleteFrom(table).where('id', '=', id).executeTakeFirst();
  if (numDeletedRows === 0n) {
    throw new StoreError(
      'missing',
      '/id',
      `no ${NOUN[table]} has the id "${id}"; it may have been deleted already`,
    );
  }
}

function isBuiltIn(profileId: string): boolean {
  return PROFILES.some((p) => p.id === profileId);
}

function named(mixes: readonly { name: string }[]): string {
  return `the ${mixes.length === 1 ? 'mix' : 'mixes'} ${mixes.map((m) => `"${m.name}"`).join(', ')}`;
}
