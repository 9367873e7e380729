/** What the store promises, on real files. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { demoHousehold } from './demo.ts';
import { SCHEMA_VERSION } from './migrations.ts';
import type { Mix, OwnFood } from './model.ts';
import { seedOnFirstRun } from './seed.ts';
import { openStore, StoreError } from './store.ts';

let folder: string;
let path: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pouchful-store-'));
  path = join(folder, 'deep', 'household.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const demo = demoHousehold();
const mix = demo.mixes[0]!;

it('makes the file in the newest shape, with nothing in it', async () => {
  const store = openStore(path);
  expect(store.isNew).toBe(true);
  expect(await store.household()).toEqual({ foods: [], profiles: [], animals: [], mixes: [] });
  await store.close();
  const file = new Database(path);
  expect(file.pragma('user_version', { simple: true })).toBe(SCHEMA_VERSION);
  expect(file.pragma('journal_mode', { simple: true })).toBe('wal');
  file.close();
});

it('keeps everything over a reopening', async () => {
  const own = {
    ...demo.foods[0]!,
    id: 'own',
    kind: 'mix' as const,
    group: 'legume' as const,
    pricePerKg: 4.2,
    sd: { PROCNT: 1.2 },
    invented: false,
  };
  const profile = {
    id: 'mine',
    name: 'Mine',
    species: 'golden hamster',
    lifeStage: 'old age',
    fibre: 'none' as const,
    about: 'as the vet said',
    bounds: [
      { nutrient: 'PROCNT' as const, min: 16, basis: 'DM' as const, source: 'the vet' },
      { ratio: ['CA', 'P'] as const, min: 1, max: 2, basis: 'as fed' as const, source: 'the vet' },
    ],
  };
  const whole = { ...demo, foods: [...demo.foods, own], profiles: [profile] };
  const store = openStore(path);
  await store.putAll(whole);
  await store.close();
  const again = openStore(path);
  expect(again.isNew).toBe(false);
  expect(await again.household()).toEqual(whole);
  await again.close();
});

it('puts an item in place of the one with its id, where it stood', async () => {
  const store = openStore(path);
  await store.putAll({ ...demo, mixes: [mix, { ...mix, id: 'second', name: 'Second' }] });
  await store.putMix({ ...mix, name: 'Renamed', held: ['millet'] });
  const { mixes } = await store.household();
  expect(mixes.map((m) => m.name)).toEqual(['Renamed', 'Second']);
  expect(mixes[0]!.held).toEqual(['millet']);
  await store.close();
});

it('leaves nothing of a write that fails', async () => {
  const store = openStore(path);
  const broken: Mix = { ...mix, id: 'broken', animalId: 'nobody' };
  await expect(store.putAll({ ...demo, mixes: [mix, broken] })).rejects.toThrow(
    'no animal has the id "nobody"',
  );
  expect(await store.household()).toEqual({ foods: [], profiles: [], animals: [], mixes: [] });
  const twice = { ...mix, problem: { ...mix.problem, foods: undefined as never } };
  await store.putAll(demo);
  await expect(store.putMix({ ...twice, name: 'Half' })).rejects.toThrow();
  expect((await store.household()).mixes).toEqual([mix]);
  await store.close();
});

it('refuses a mix for a profile that nobody knows', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  await expect(store.putMix({ ...mix, profileId: 'nowhere' })).rejects.toMatchObject({
    kind: 'invalid',
    field: '/profileId',
  });
  await store.close();
});

it('refuses to delete a food that a mix names, and says which mix', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  const refused = store.deleteFood('demo-pellet');
  await expect(refused).rejects.toBeInstanceOf(StoreError);
  await expect(refused).rejects.toThrow(
    '"Invented pellet" is used by the mix "First mix"; take it out there first',
  );
  await store.putMix({ ...mix, problem: { ...mix.problem, beside: [] } });
  await store.deleteFood('demo-pellet');
  expect((await store.household()).foods).toEqual([]);
  await store.close();
});

it('keeps the mixes of an animal that is deleted', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  await store.deleteAnimal('demo-animal');
  const { animalId: _gone, ...rest } = mix;
  expect((await store.household()).mixes).toEqual([rest]);
  await store.close();
});

it('says that there was nothing to delete', async () => {
  const store = openStore(path);
  await expect(store.deleteMix('no-such')).rejects.toMatchObject({
    kind: 'missing',
    message: expect.stringContaining('"no-such"'),
  });
  await store.close();
});

it('fills the first run only, not a household that was emptied', async () => {
  const store = openStore(path);
  expect(await seedOnFirstRun(store)).toBe(true);
  await store.deleteMix('demo-mix');
  await store.deleteFood('demo-pellet');
  await store.deleteAnimal('demo-animal');
  await store.close();
  const again = openStore(path);
  expect(await seedOnFirstRun(again)).toBe(false);
  expect((await again.household()).mixes).toEqual([]);
  await again.close();
});

it('refuses a file of a newer Pouchful and a file that is none', async () => {
  await openStore(path).close();
  const file = new Database(path);
  file.pragma(`user_version = ${SCHEMA_VERSION + 1}`);
  file.close();
  expect(() => openStore(path)).toThrow('use the newer Pouchful');
  const other = join(folder, 'notes.txt');
  writeFileSync(other, 'just some words, many more than a page header would need to look right. '.repeat(20));
  expect(() => openStore(other)).toThrow('is no household file');
});

it('keeps bounds, sources, choices and borrowed amounts of a food', async () => {
  const own: OwnFood = {
    ...demo.foods[0]!,
    id: 'evidenced',
    low: { PROCNT: 14 },
    high: { FAT: 8 },
    evidence: {
      sources: [
        {
          id: 'a',
          name: 'label',
          date: '2026-11-25',
          basis: 'dry matter',
          composition: { ASH: 5 },
          sd: {},
          low: { PROCNT: 14 },
          printed: 'crude protein min. 14 %',
        },
      ],
      choices: { ASH: 'a' },
      borrowed: { CA: { from: 'sr28:20038', name: 'Oats', value: 54, sd: 20, source: 'borrowed' } },
      ingredients: 'oats, peas',
    },
  };
  const store = openStore(path);
  await store.putFood(own);
  await store.close();
  const again = openStore(path);
  expect((await again.household()).foods).toEqual([own]);
  await again.close();
});

it('brings a file of the first shape to the newest, with everything in it', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  await store.close();
  const file = new Database(path);
  for (const column of ['low', 'high', 'evidence']) file.exec(`ALTER TABLE foods DROP COLUMN ${column}`);
  file.exec("UPDATE mixes SET problem = json_remove(problem, '$.variation', '$.cautions')");
  file.pragma('user_version = 1');
  file.close();
  const again = openStore(path);
  expect(again.isNew).toBe(false);
  const household = await again.household();
  expect(household.foods).toEqual(demo.foods);
  expect(household.mixes[0]!.shares).toEqual(mix.shares);
  expect(household.mixes[0]!.problem).toEqual(mix.problem);
  await again.close();
});
