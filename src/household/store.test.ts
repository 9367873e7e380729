/** What the store promises, on real files. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { beforeEach, expect, it } from 'vitest';
import { demo, mix, version } from '../../test/household/demo-version.ts';
import { EMPTY } from '../../test/household/empty-household.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { put, remove } from '../../test/household/put.ts';
import { PROFILES } from '../targets/profiles.ts';
import { SCHEMA_VERSION } from './migrations.ts';
import type { Animal, Household, Mix, OwnFood } from './model.ts';
import { seedOnFirstRun } from './seed.ts';
import { openStore, StoreError } from './store.ts';

const folder = folderForEachTest();
let path: string;

beforeEach(() => {
  path = join(folder(), 'deep', 'household.sqlite');
});

const bramble = demo.animals[0]!;

it('makes the file in the newest shape, with nothing in it', async () => {
  const store = openStore(path);
  expect(store.isNew).toBe(true);
  expect(await store.household()).toEqual(EMPTY);
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
  const { dailyGrams: _unsaid, ...unweighed } = bramble;
  const hazel: Animal = {
    ...unweighed,
    id: 'a-first-by-name',
    name: 'Hazel',
    lifeStage: 'old',
    profileId: 'mine',
    refuses: ['nettle-leaf-dried', 'own'],
  };
  const whole: Household = {
    ...EMPTY,
    foods: [...demo.foods, own],
    profiles: [profile],
    animals: [bramble, hazel],
    mixes: [mix, { ...mix, id: 'both', animalIds: [bramble.id, hazel.id] }],
    versions: [version, { ...version, id: 'a-later-one', name: 'later' }],
  };
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
  await put(store, 'mixes', { ...mix, name: 'Renamed', held: ['millet'] });
  const { mixes } = await store.household();
  expect(mixes.map((m) => m.name)).toEqual(['Renamed', 'Second']);
  expect(mixes[0]!.held).toEqual(['millet']);
  await store.close();
});

it('leaves nothing of a write that fails', async () => {
  const store = openStore(path);
  const broken: Mix = { ...mix, id: 'broken', animalIds: [bramble.id, 'nobody'] };
  await expect(store.putAll({ ...demo, mixes: [mix, broken] })).rejects.toThrow(
    'no animal has the id "nobody"',
  );
  expect(await store.household()).toEqual(EMPTY);
  const twice = { ...mix, problem: { ...mix.problem, foods: undefined as never } };
  await store.putAll(demo);
  await expect(put(store, 'mixes', { ...twice, name: 'Half' })).rejects.toThrow();
  expect((await store.household()).mixes).toEqual([mix]);
  await store.close();
});

it('refuses a mix for a profile that nobody knows', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  await expect(put(store, 'mixes', { ...mix, profileId: 'nowhere' })).rejects.toMatchObject({
    kind: 'invalid',
    field: '/profileId',
  });
  await store.close();
});

it('refuses to delete a food that a mix names, and says which mix', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  const refused = remove(store, 'foods', 'demo-pellet');
  await expect(refused).rejects.toBeInstanceOf(StoreError);
  await expect(refused).rejects.toThrow(
    '“Invented pellet” is used by the mix “First mix”; take it out there first',
  );
  await put(store, 'mixes', { ...mix, problem: { ...mix.problem, beside: [] } });
  await remove(store, 'foods', 'demo-pellet');
  expect((await store.household()).foods).toEqual([]);
  await store.close();
});

it('keeps the mixes of an animal that is deleted', async () => {
  const store = openStore(path);
  await store.putAll(demo);
  await remove(store, 'animals', 'demo-animal');
  expect((await store.household()).mixes).toEqual([{ ...mix, animalIds: [] }]);
  await store.close();
});

it('keeps the order of the animals of a mix, and names each once', async () => {
  const store = openStore(path);
  const second: Animal = { ...bramble, id: 'a-second', name: 'Hazel' };
  await store.putAll({ ...demo, animals: [bramble, second] });
  const orders = [[bramble.id, second.id], [second.id, bramble.id], [second.id], []];
  for (const animalIds of orders) {
    await put(store, 'mixes', { ...mix, animalIds });
    expect((await store.household()).mixes[0]!.animalIds).toEqual(animalIds);
  }
  await expect(put(store, 'mixes', { ...mix, animalIds: [second.id, second.id] })).rejects.toMatchObject({
    kind: 'invalid',
    field: '/animalIds/1',
    message: expect.stringContaining('name each once'),
  });
  await store.close();
});

it('refuses an animal for a profile that nobody knows', async () => {
  const store = openStore(path);
  await expect(put(store, 'animals', { ...bramble, profileId: 'nowhere' })).rejects.toMatchObject({
    kind: 'invalid',
    field: '/profileId',
    message: expect.stringContaining('"nowhere"'),
  });
  expect(await store.household()).toEqual(EMPTY);
  await store.close();
});

it('refuses to delete a profile that a mix or an animal keeps to, and says which', async () => {
  const store = openStore(path);
  const own = { ...PROFILES[0]!, id: 'mine', name: 'Mine' };
  await store.putAll({
    ...demo,
    profiles: [own],
    animals: [{ ...bramble, profileId: 'mine' }],
    mixes: [{ ...mix, profileId: 'mine' }],
  });
  const refused = remove(store, 'profiles', 'mine');
  await expect(refused).rejects.toMatchObject({ kind: 'in-use', field: '/id' });
  await expect(refused).rejects.toThrow('is used by the mix “First mix” and the animal “Bramble”; choose');
  await put(store, 'mixes', mix);
  await expect(remove(store, 'profiles', 'mine')).rejects.toThrow('is used by the animal “Bramble”; choose');
  await put(store, 'animals', bramble);
  await remove(store, 'profiles', 'mine');
  expect((await store.household()).profiles).toEqual([]);
  await store.close();
});

it('keeps versions of a mix that is there, through its changes, and lets them go with it', async () => {
  const store = openStore(path);
  await expect(put(store, 'versions', version)).rejects.toMatchObject({
    kind: 'invalid',
    field: '/mixId',
    message: expect.stringContaining('no mix has the id "demo-mix"'),
  });
  await store.putAll({ ...demo, versions: [version, { ...version, id: 'v2' }] });
  await put(store, 'mixes', { ...mix, name: 'Renamed' });
  await put(store, 'versions', { ...version, name: 'better named' });
  expect((await store.household()).versions.map((v) => [v.id, v.name])).toEqual([
    ['v1', 'better named'],
    ['v2', version.name],
  ]);
  await remove(store, 'versions', 'v2');
  await expect(remove(store, 'versions', 'v2')).rejects.toThrow('no version of a mix has the id "v2"');
  expect((await store.household()).versions).toHaveLength(1);
  await remove(store, 'mixes', mix.id);
  expect((await store.household()).versions).toEqual([]);
  await store.close();
});

it('says that there was nothing to delete', async () => {
  const store = openStore(path);
  await expect(remove(store, 'mixes', 'no-such')).rejects.toMatchObject({
    kind: 'missing',
    message: expect.stringContaining('"no-such"'),
  });
  await store.close();
});

it('fills the first run only, not a household that was emptied', async () => {
  const store = openStore(path);
  expect(await seedOnFirstRun(store)).toBe(true);
  await remove(store, 'mixes', 'demo-mix');
  await remove(store, 'foods', 'demo-pellet');
  await remove(store, 'animals', 'demo-animal');
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
  const other = join(folder(), 'notes.txt');
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
  await put(store, 'foods', own);
  await store.close();
  const again = openStore(path);
  expect((await again.household()).foods).toEqual([own]);
  await again.close();
});
