/** The tables as Kysely sees them, and the way from a row to the household's types and back. */
import type { Selectable } from 'kysely';
import type { FoodGroup } from '../foods/food.ts';
import type { TargetProfile } from '../targets/profile.ts';
import type { Animal, Mix, OwnFood } from './model.ts';

export interface FoodsTable {
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

export interface ProfilesTable {
  id: string;
  name: string;
  species: string;
  life_stage: string;
  fibre: TargetProfile['fibre'];
  about: string;
  bounds: string;
}

export interface AnimalsTable {
  id: string;
  name: string;
  species: string;
  invented: 0 | 1;
}

export interface MixesTable {
  id: string;
  name: string;
  animal_id: string | null;
  profile_id: string;
  updated_at: string;
  problem: string;
  shares: string;
  held: string;
}

export interface MixFoodsTable {
  mix_id: string;
  food_id: string;
}

export interface Tables {
  foods: FoodsTable;
  profiles: ProfilesTable;
  animals: AnimalsTable;
  mixes: MixesTable;
  mix_foods: MixFoodsTable;
}

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
  const { id, name, species, invented } = animal;
  return { id, name, species, invented: invented ? 1 : 0 };
}

export function animalFrom(row: Selectable<AnimalsTable>): Animal {
  return { ...row, invented: row.invented === 1 };
}

export function mixRow(mix: Mix): MixesTable {
  return {
    id: mix.id,
    name: mix.name,
    animal_id: mix.animalId ?? null,
    profile_id: mix.profileId,
    updated_at: mix.updatedAt,
    problem: JSON.stringify(mix.problem),
    shares: JSON.stringify(mix.shares),
    held: JSON.stringify(mix.held),
  };
}

export function mixFrom(row: Selectable<MixesTable>): Mix {
  return {
    id: row.id,
    name: row.name,
    ...(row.animal_id === null ? {} : { animalId: row.animal_id }),
    profileId: row.profile_id,
    problem: JSON.parse(row.problem),
    shares: JSON.parse(row.shares),
    held: JSON.parse(row.held),
    updatedAt: row.updated_at,
  };
}

/** Ids of every food a mix names, in the mix or beside it, each once. */
export function foodIdsOf(mix: Mix): string[] {
  return [...new Set([...mix.problem.foods, ...mix.problem.beside].map((f) => f.id))];
}
