/** The tables as Kysely sees them, and the way from a row to the household's types and back. */
import type { Selectable, Transaction } from 'kysely';
import type { FoodGroup } from '../foods/food.ts';
import type { TargetProfile } from '../targets/profile.ts';
import type { Animal, Mix, MixVersion, OwnFood } from './model.ts';

interface FoodsTable {
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

interface ProfilesTable {
  id: string;
  name: string;
  species: string;
  life_stage: string;
  fibre: TargetProfile['fibre'];
  about: string;
  bounds: string;
}

interface AnimalsTable {
  id: string;
  name: string;
  species: string;
  life_stage: Animal['lifeStage'];
  profile_id: string;
  refuses: string;
  daily_grams: number | null;
  invented: 0 | 1;
}

interface MixesTable {
  id: string;
  name: string;
  profile_id: string;
  updated_at: string;
  problem: string;
  shares: string;
  held: string;
}

interface MixFoodsTable {
  mix_id: string;
  food_id: string;
}

interface MixAnimalsTable {
  mix_id: string;
  animal_id: string;
  /** Place in the mix's list, from 0. */
  place: number;
}

interface MixVersionsTable {
  id: string;
  mix_id: string;
  name: string;
  problem: string;
  shares: string;
  kept_at: string;
}

/** An object of the kitchen as JSON. */
interface JsonTable {
  id: string;
  body: string;
}

export interface Tables {
  lots: JsonTable;
  offers: JsonTable;
  drying_runs: JsonTable;
  batches: JsonTable;
  kitchen: JsonTable;
  foods: FoodsTable;
  profiles: ProfilesTable;
  animals: AnimalsTable;
  mixes: MixesTable;
  mix_foods: MixFoodsTable;
  mix_animals: MixAnimalsTable;
  mix_versions: MixVersionsTable;
}

export type Tx = Transaction<Tables>;

export function foodRow(food: OwnFood): FoodsTable {
  return {
    id: food.id,
    name: food.name,
    kind: food.kind,
    food_group: food.group ?? null,
    price_per_kg: food.pricePerKg ?? null,
    source: food.source,
    invented: food.invented ? 1 : 0,
    composition: JSON.stringify(food.composition),
    sd: JSON.stringify(food.sd),
    low: JSON.stringify(food.low ?? {}),
    high: JSON.stringify(food.high ?? {}),
    evidence: JSON.stringify(food.evidence ?? {}),
  };
}

export function foodFrom(row: Selectable<FoodsTable>): OwnFood {
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

export function profileRow(profile: TargetProfile): ProfilesTable {
  const { lifeStage, bounds, id, name, species, fibre, about } = profile;
  return { id, name, species, life_stage: lifeStage, fibre, about, bounds: JSON.stringify(bounds) };
}

export function profileFrom(row: Selectable<ProfilesTable>): TargetProfile {
  const { life_stage, bounds, ...rest } = row;
  return { ...rest, lifeStage: life_stage, bounds: JSON.parse(bounds) };
}

export function animalRow(animal: Animal): AnimalsTable {
  return {
    id: animal.id,
    name: animal.name,
    species: animal.species,
    life_stage: animal.lifeStage,
    profile_id: animal.profileId,
    refuses: JSON.stringify(animal.refuses),
    daily_grams: animal.dailyGrams ?? null,
    invented: animal.invented ? 1 : 0,
  };
}

export function animalFrom(row: Selectable<AnimalsTable>): Animal {
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

export function mixRow(mix: Mix): MixesTable {
  return {
    id: mix.id,
    name: mix.name,
    profile_id: mix.profileId,
    updated_at: mix.updatedAt,
    problem: JSON.stringify(mix.problem),
    shares: JSON.stringify(mix.shares),
    held: JSON.stringify(mix.held),
  };
}

/** @param animalIds the animals it is made for, in their order */
export function mixFrom(row: Selectable<MixesTable>, animalIds: readonly string[]): Mix {
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

export function versionRow(version: MixVersion): MixVersionsTable {
  return {
    id: version.id,
    mix_id: version.mixId,
    name: version.name,
    problem: JSON.stringify(version.problem),
    shares: JSON.stringify(version.shares),
    kept_at: version.keptAt,
  };
}

export function versionFrom(row: Selectable<MixVersionsTable>): MixVersion {
  return {
    id: row.id,
    mixId: row.mix_id,
    name: row.name,
    problem: JSON.parse(row.problem),
    shares: JSON.parse(row.shares),
    keptAt: row.kept_at,
  };
}

/** Ids of every food a mix names, in the mix or beside it, each once. */
export function foodIdsOf(mix: Mix): string[] {
  return [...new Set([...mix.problem.foods, ...mix.problem.beside].map((f) => f.id))];
}
