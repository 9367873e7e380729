import { expect, it } from 'vitest';
import { contentsOf } from '../../src/household/reckon/cupboard/contents.ts';
import { householdSchema } from '../../src/household/shape/household-schema.ts';
import { leftOver } from '../../src/kitchen/cupboard/cupboard.ts';
import { tenYears } from './ten-years.ts';

const house = tenYears();

it('makes a household of ten years that the server accepts', () => {
  expect(Object.fromEntries(Object.entries(house).map(([kind, list]) => [kind, list.length]))).toEqual({
    foods: 300,
    profiles: 0,
    animals: 5,
    mixes: 100,
    versions: 200,
    lots: 2000,
    offers: 300,
    dryingRuns: 150,
    batches: 500,
    kitchen: 1,
    weighings: 20_859,
    feedings: 18_250,
    trials: 60,
    notes: 400,
    photos: 5,
    keeper: 1,
  });
  expect(householdSchema.parse(house)).toEqual(house);
});

it('refers only to what is there, each thing with an id of its own', () => {
  const lists: [string, readonly { id: string }[]][] = Object.entries(house);
  for (const [, list] of lists) expect(new Set(list.map((o) => o.id)).size).toBe(list.length);
  const ids = new Map(lists.map(([kind, list]) => [kind, new Set(list.map((o) => o.id))]));
  const there = (kind: string, id: string) => ids.get(kind)?.has(id) === true;
  for (const mix of house.mixes) expect(mix.animalIds.every((id) => there('animals', id))).toBe(true);
  for (const version of house.versions) expect(there('mixes', version.mixId)).toBe(true);
  for (const run of house.dryingRuns) expect(there('lots', run.lot)).toBe(true);
  for (const of of [house.weighings, house.feedings, house.trials, house.notes])
    expect(of.every(({ animalId }) => there('animals', animalId))).toBe(true);
  for (const { mix } of house.feedings)
    expect(mix?.batchId === undefined || there('batches', mix.batchId)).toBe(true);
  expect(house.feedings.filter((f) => f.mix?.batchId !== undefined).length).toBeGreaterThan(17_000);
  expect(house.photos.every(({ id }) => there('animals', id))).toBe(true);
  for (const batch of house.batches) {
    expect(batch.animalIds.every((id) => there('animals', id))).toBe(true);
    const foods = new Set(batch.problem.foods.map((f) => f.id));
    for (const pour of batch.pours) {
      expect(foods.has(pour.food)).toBe(true);
      expect(pour.lots.every((l) => there('lots', l.lot))).toBe(true);
    }
  }
});

it('pours no more than its lots held, and has used up most of them', () => {
  const left = leftOver(contentsOf(house));
  expect(left.filter((l) => l.over > 0)).toEqual([]);
  expect(left.filter((l) => l.grams === 0).length).toBeGreaterThan(1500);
  expect(left.filter((l) => l.grams > 0).length).toBeGreaterThan(100);
});

it('is the same each time, and smaller where that is asked for', () => {
  expect(tenYears()).toEqual(house);
  const small = tenYears({ size: 0.05 });
  expect(small.batches).toHaveLength(25);
  expect(householdSchema.safeParse(small).success).toBe(true);
});
