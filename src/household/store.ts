/**
 * The household on disk: one SQLite file the keeper can copy.
 * Every write is one transaction; what was answered is on disk, and nothing is ever half-written.
 */
import { Kysely, SqliteDialect } from 'kysely';
import type { Batch } from '../kitchen/model.ts';
import type { TargetProfile } from '../targets/profile.ts';
import { PROFILES } from '../targets/profiles.ts';
import { addPours, putBatchUnlessOvertaken } from './batch-store.ts';
import { openFile } from './file/open-file.ts';
import { deleteKitchen, KITCHEN_KINDS, type KitchenKind, putKitchen, readKitchen } from './kitchen-store.ts';
import type { Animal, Household, Kept, Mix, MixVersion, OwnFood, PourAnswer, PourEntry } from './model.ts';
import { allRows, deleteRow, hasRow, putRow } from './rows.ts';
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
  type Tx,
  versionFrom,
  versionRow,
} from './schema.ts';
import { StoreError } from './store-error.ts';

export { BatchOvertaken, StoreError } from './store-error.ts';

/** What a household keeps. Each `put` writes a whole object, new or in the place of the one with its id. */
export interface Store {
  /** Everything, as it stood at one moment. */
  household(): Promise<Household>;
  /** Whether this opening made the file, so that nothing was ever kept here. */
  readonly isNew: boolean;
  /** Writes all objects of a household in one transaction. */
  putAll(household: Household): Promise<void>;
  putFood(food: OwnFood): Promise<void>;
  putProfile(profile: TargetProfile): Promise<void>;
  /** @throws StoreError when its profile is not known */
  putAnimal(animal: Animal): Promise<void>;
  /** @throws StoreError when one of its animals or its profile is not known, or an animal is named twice */
  putMix(mix: Mix): Promise<void>;
  /** @throws StoreError when its mix is not known */
  putVersion(version: MixVersion): Promise<void>;
  /** @throws StoreError when there is none, or a mix names it */
  deleteFood(id: string): Promise<void>;
  /** @throws StoreError when there is none, or a mix or an animal keeps to it */
  deleteProfile(id: string): Promise<void>;
  /** Mixes made for the animal stay, without it. @throws StoreError when there is none */
  deleteAnimal(id: string): Promise<void>;
  /** Its versions go with it. @throws StoreError when there is none */
  deleteMix(id: string): Promise<void>;
  /** @throws StoreError when there is none */
  deleteVersion(id: string): Promise<void>;
  /**
   * Writes one object of the kitchen.
   * @throws StoreError when a batch names an animal, or a drying run a lot, that is not there
   */
  putKitchen<K extends KitchenKind>(kind: K, object: Kept<K>): Promise<void>;
  /** @throws StoreError when there is none, or a batch or a drying run took from the lot */
  deleteKitchen(kind: KitchenKind, id: string): Promise<void>;
  /**
   * Adds pours to a batch; those that it has already are not added again, and none where it stands otherwise than the
   * entry says it was seen.
   * @throws StoreError when there is none, it is finished, or it would have too many pours
   */
  addPours(batchId: string, entry: PourEntry): Promise<PourAnswer>;
  /**
   * Writes a batch that still stands as its sender last saw it.
   * @param seen its tag as its sender last saw it (`batchTag`)
   * @throws BatchOvertaken when it stands otherwise; StoreError when there is none
   */
  putBatchUnlessOvertaken(batch: Batch, seen: string): Promise<void>;
  close(): Promise<void>;
}

/**
 * Opens the household file, makes it when it is not there, and brings it to the newest shape.
 * The caller owns the store and closes it.
 * @throws Error when the file is no household file or comes from a newer Pouchful
 */
export function openStore(path: string): Store {
  const opened = openFile(path);
  const { file, isNew } = opened;
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  const write = <T>(work: (tx: Tx) => Promise<T>) => db.transaction().execute(work);
  return {
    household: () => db.transaction().execute(readAll),
    isNew,
    putAll: (household) =>
      write(async (tx) => {
        for (const food of household.foods) await putRow(tx, 'foods', foodRow(food));
        for (const profile of household.profiles) await putRow(tx, 'profiles', profileRow(profile));
        for (const animal of household.animals) await putAnimal(tx, animal);
        for (const mix of household.mixes) await putMix(tx, mix);
        for (const version of household.versions) await putVersion(tx, version);
        for (const kind of KITCHEN_KINDS) {
          for (const object of household[kind]) await putKitchen(tx, kind, object);
        }
      }),
    putFood: (food) => write((tx) => putRow(tx, 'foods', foodRow(food))),
    putProfile: (profile) => write((tx) => putRow(tx, 'profiles', profileRow(profile))),
    putAnimal: (animal) => write((tx) => putAnimal(tx, animal)),
    putMix: (mix) => write((tx) => putMix(tx, mix)),
    putVersion: (version) => write((tx) => putVersion(tx, version)),
    deleteFood: (id) => write((tx) => deleteFood(tx, id)),
    deleteProfile: (id) => write((tx) => deleteProfile(tx, id)),
    deleteAnimal: (id) => write((tx) => deleteRow(tx, 'animals', id)),
    deleteMix: (id) => write((tx) => deleteRow(tx, 'mixes', id)),
    deleteVersion: (id) => write((tx) => deleteRow(tx, 'mix_versions', id)),
    putKitchen: (kind, object) => write((tx) => putKitchen(tx, kind, object)),
    deleteKitchen: (kind, id) => write((tx) => deleteKitchen(tx, kind, id)),
    addPours: (batchId, entry) => write((tx) => addPours(tx, batchId, entry)),
    putBatchUnlessOvertaken: (batch, seen) => write((tx) => putBatchUnlessOvertaken(tx, batch, seen)),
    close: async () => {
      opened.close();
      await db.destroy();
    },
  };
}

async function readAll(tx: Tx): Promise<Household> {
  const animals = await tx.selectFrom('mix_animals').selectAll().orderBy('place').execute();
  const animalsOf = (mix: Tables['mixes']) =>
    animals.filter((a) => a.mix_id === mix.id).map((a) => a.animal_id);
  return {
    foods: (await allRows(tx, 'foods')).map(foodFrom),
    profiles: (await allRows(tx, 'profiles')).map(profileFrom),
    animals: (await allRows(tx, 'animals')).map(animalFrom),
    mixes: (await allRows(tx, 'mixes')).map((row) => mixFrom(row, animalsOf(row))),
    versions: (await allRows(tx, 'mix_versions')).map(versionFrom),
    lots: await readKitchen(tx, 'lots'),
    offers: await readKitchen(tx, 'offers'),
    dryingRuns: await readKitchen(tx, 'dryingRuns'),
    batches: await readKitchen(tx, 'batches'),
    kitchen: await readKitchen(tx, 'kitchen'),
  };
}

async function putAnimal(tx: Tx, animal: Animal): Promise<void> {
  await requireProfile(tx, animal.profileId);
  await putRow(tx, 'animals', animalRow(animal));
}

async function putMix(tx: Tx, mix: Mix): Promise<void> {
  await requireAnimals(tx, mix.animalIds);
  await requireProfile(tx, mix.profileId);
  await putRow(tx, 'mixes', mixRow(mix));
  await tx.deleteFrom('mix_foods').where('mix_id', '=', mix.id).execute();
  const foods = foodIdsOf(mix).map((food_id) => ({ mix_id: mix.id, food_id }));
  if (foods.length > 0) await tx.insertInto('mix_foods').values(foods).execute();
  await tx.deleteFrom('mix_animals').where('mix_id', '=', mix.id).execute();
  const animals = mix.animalIds.map((animal_id, place) => ({ mix_id: mix.id, animal_id, place }));
  if (animals.length > 0) await tx.insertInto('mix_animals').values(animals).execute();
}

async function putVersion(tx: Tx, version: MixVersion): Promise<void> {
  if (!(await hasRow(tx, 'mixes', version.mixId))) {
    throw new StoreError(
      'invalid',
      '/mixId',
      `no mix has the id "${version.mixId}"; keep the mix first, then a version of it`,
    );
  }
  await putRow(tx, 'mix_versions', versionRow(version));
}

/** Refuses animals that are not there or named twice. */
async function requireAnimals(tx: Tx, ids: readonly string[]): Promise<void> {
  for (const [i, id] of ids.entries()) {
    if (ids.indexOf(id) < i) {
      throw new StoreError(
        'invalid',
        `/animalIds/${i}`,
        `the animal "${id}" is named twice; name each animal once`,
      );
    }
    if (!(await hasRow(tx, 'animals', id))) {
      throw new StoreError(
        'invalid',
        `/animalIds/${i}`,
        `no animal has the id "${id}"; add the animal first, or leave it out`,
      );
    }
  }
}

/** Refuses a profile that neither comes with Pouchful nor is the keeper's own. */
async function requireProfile(tx: Tx, id: string): Promise<void> {
  if (isBuiltIn(id) || (await hasRow(tx, 'profiles', id))) return;
  throw new StoreError(
    'invalid',
    '/profileId',
    `no target profile has the id "${id}"; choose one from the list, or add it first`,
  );
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
  await deleteRow(tx, 'foods', id);
}

async function deleteProfile(tx: Tx, id: string): Promise<void> {
  const using = (table: 'mixes' | 'animals') =>
    tx.selectFrom(table).select('name').where('profile_id', '=', id).execute();
  const mixes = isBuiltIn(id) ? [] : await using('mixes');
  const animals = isBuiltIn(id) ? [] : await using('animals');
  if (mixes.length + animals.length > 0) {
    const users = [
      mixes.length > 0 ? named(mixes) : '',
      animals.length > 0 ? named(animals, 'animal', 'animals') : '',
    ];
    throw new StoreError(
      'in use',
      '/id',
      `target profile "${id}" is used by ${users.filter(Boolean).join(' and ')}; choose another profile there first`,
    );
  }
  await deleteRow(tx, 'profiles', id);
}

function isBuiltIn(profileId: string): boolean {
  return PROFILES.some((p) => p.id === profileId);
}

function named(objects: readonly { name: string }[], one = 'mix', several = 'mixes'): string {
  return `the ${objects.length === 1 ? one : several} ${objects.map((o) => `"${o.name}"`).join(', ')}`;
}
