/**
 * From one table for each kind of object to records of one shape, each with a version. The rows below are those of the
 * tables as they were.
 */
import { randomUUID } from 'node:crypto';
import type Database from 'better-sqlite3';
import type { FoodGroup } from '../foods/food.ts';
import type { TargetProfile } from '../targets/profile.ts';
import type { Animal, Kind, Mix, MixVersion, OwnFood } from './model.ts';
import { CREATE_TABLES, HOME } from './store/tables.ts';

interface FoodsRow {
  id: string;
  name: string;
  kind: OwnFood['kind'];
  food_group: FoodGroup | null;
  price_per_kg: number | null;
  source: string;
  invented: 0 | 1;
  composition: string;
  sd: string;
  low: string;
  high: string;
  evidence: string;
}

interface ProfilesRow {
  id: string;
  name: string;
  species: string;
  life_stage: string;
  fibre: TargetProfile['fibre'];
  about: string;
  bounds: string;
}

interface AnimalsRow {
  id: string;
  name: string;
  species: string;
  life_stage: Animal['lifeStage'];
  profile_id: string;
  refuses: string;
  daily_grams: number | null;
  invented: 0 | 1;
}

interface MixesRow {
  id: string;
  name: string;
  profile_id: string;
  updated_at: string;
  problem: string;
  shares: string;
  held: string;
}

interface MixAnimalsRow {
  mix_id: string;
  animal_id: string;
  /** Place in the mix's list, from 0. */
  place: number;
}

interface MixVersionsRow {
  id: string;
  mix_id: string;
  name: string;
  problem: string;
  shares: string;
  kept_at: string;
}

/** An object of the kitchen as JSON. */
interface JsonRow {
  id: string;
  body: string;
}

/** One step of the migrations. */
export function toRecords(db: Database.Database): void {
  for (const statement of CREATE_TABLES) db.exec(statement);
  const all = <Row>(table: string) => db.prepare(`SELECT * FROM ${table} ORDER BY rowid`).all() as Row[];
  const animals = db.prepare('SELECT * FROM mix_animals ORDER BY place').all() as MixAnimalsRow[];
  const animalsOf = (mix: MixesRow) => animals.filter((a) => a.mix_id === mix.id).map((a) => a.animal_id);
  const kitchen = (table: string) => all<JsonRow>(table).map(({ id, body }) => ({ id, body }));
  const object = <T extends { id: string }>(o: T) => ({ id: o.id, body: JSON.stringify(o) });
  const kept: Partial<Record<Kind, { id: string; body: string }[]>> = {
    foods: all<FoodsRow>('foods').map(foodFrom).map(object),
    profiles: all<ProfilesRow>('profiles').map(profileFrom).map(object),
    animals: all<AnimalsRow>('animals').map(animalFrom).map(object),
    mixes: all<MixesRow>('mixes').map((row) => object(mixFrom(row, animalsOf(row)))),
    versions: all<MixVersionsRow>('mix_versions').map(versionFrom).map(object),
    lots: kitchen('lots'),
    offers: kitchen('offers'),
    dryingRuns: kitchen('drying_runs'),
    batches: kitchen('batches'),
    kitchen: kitchen('kitchen'),
  };
  const add = db.prepare(
    'INSERT INTO records (household, kind, id, version, seq, place, body) VALUES (?, ?, ?, 1, ?, ?, ?)',
  );
  db.prepare('INSERT INTO households (id, name, epoch, seq) VALUES (?, ?, ?, 0)').run(HOME, '', randomUUID());
  let seq = 0;
  for (const [kind, objects] of Object.entries(kept))
    for (const { id, body } of objects) {
      seq += 1;
      add.run(HOME, kind, id, seq, seq, body);
    }
  db.prepare('UPDATE households SET seq = ?').run(seq);
  // What names another table goes before it.
  for (const table of ['mix_versions', 'mix_animals', 'mix_foods', 'mixes', 'animals', 'profiles', 'foods'])
    db.exec(`DROP TABLE ${table}`);
  for (const table of ['lots', 'offers', 'drying_runs', 'batches', 'kitchen']) db.exec(`DROP TABLE ${table}`);
}

function foodFrom(row: FoodsRow): OwnFood {
  return {
    id: row.id,
    name: row.name,
    kind: row.kind,
    ...(row.food_group === null ? {} : { group: row.food_group }),
    composition: JSON.parse(row.composition),
    sd: JSON.parse(row.sd),
    ...filled('low', row.low),
    ...filled('high', row.high),
    ...filled('evidence', row.evidence),
    ...(row.price_per_kg === null ? {} : { pricePerKg: row.price_per_kg }),
    source: row.source,
    invented: row.invented === 1,
  };
}

/** A field that is left out where the column holds nothing. */
function filled<K extends string>(field: K, json: string): Partial<Record<K, never>> {
  return json === '{}' ? {} : ({ [field]: JSON.parse(json) } as Record<K, never>);
}

function profileFrom(row: ProfilesRow): TargetProfile {
  const { life_stage, bounds, ...rest } = row;
  return { ...rest, lifeStage: life_stage, bounds: JSON.parse(bounds) };
}

function animalFrom(row: AnimalsRow): Animal {
  return {
    id: row.id,
    name: row.name,
    species: row.species,
    lifeStage: row.life_stage,
    profileId: row.profile_id,
    refuses: JSON.parse(row.refuses),
    ...(row.daily_grams === null ? {} : { dailyGrams: row.daily_grams }),
    invented: row.invented === 1,
  };
}

/** @param animalIds the animals it is made for, in their order */
function mixFrom(row: MixesRow, animalIds: readonly string[]): Mix {
  return {
    id: row.id,
    name: row.name,
    animalIds,
    profileId: row.profile_id,
    problem: JSON.parse(row.problem),
    shares: JSON.parse(row.shares),
    held: JSON.parse(row.held),
    updatedAt: row.updated_at,
  };
}

function versionFrom(row: MixVersionsRow): MixVersion {
  return {
    id: row.id,
    mixId: row.mix_id,
    name: row.name,
    problem: JSON.parse(row.problem),
    shares: JSON.parse(row.shares),
    keptAt: row.kept_at,
  };
}
