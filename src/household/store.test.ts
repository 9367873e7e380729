/** What the store promises, on real files. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { PROFILES } from '../targets/profiles.ts';
import { demoHousehold } from './demo.ts';
import { migrate, SCHEMA_VERSION } from './migrations.ts';
import type { Animal, Household, Mix, MixVersion, OwnFood } from './model.ts';
import { seedOnFirstRun } from './seed.ts';
import { openStore, StoreError } from './store.ts';

const NO_KITCHEN = { lots: [], offers: [], dryingRuns: [], batches: [], kitchen: [] };
const EMPTY: Household = {
  foods: [],
  profiles: [],
  animals: [],
  mixes: [],
  versions: [],
  ...NO_KITCHEN,
};

let folder: string;
let path: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pouchful-store-'));
  path = join(folder, 'deep', 'household.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const demo = demoHousehold();
const mix = demo.mixes[0]!;
const bramble = demo.animals[0]!;
const version: MixVersion = {
  id: 'v1',
  mixId: mix.id,
  name: 'before the fat came down',
  problem: { ...mix.problem, batch_grams: 250 },
  shares: { millet: 97.5 },
  keptAt: '2026-11-25T08:30:00.000Z',
};

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
    foods: [...demo.foods, own],
    profiles: [profile],
    animals: [bramble, hazel],
    mixes: [mix, { ...mix, id: 'both', animalIds: [bramble.id, hazel.id] }],
    versions: [version, { ...version, id: 'a-later-one', name: 'later' }],
    ...NO_KITCHEN,
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
  await store.putMix({ ...mix, name: 'Renamed', held: ['millet'] });
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
  expect((await store.household()).mixes).toEqual([{ ...mix, animalIds: [] }]);
  await store.close();
});

it('keeps the order of the animals of a mix, and names each once', async () => {
  const store = openStore(path);
  const second: Animal = { ...bramble, id: 'a-second', name: 'Hazel' };
  await store.putAll({ ...demo, animals: [bramble, second] });
  const orders = [[bramble.id, second.id], [second.id, bramble.id], [second.id], []];
  for (const animalIds of orders) {
    await store.putMix({ ...mix, animalIds });
    expect((await store.household()).mixes[0]!.animalIds).toEqual(animalIds);
  }
  await expect(store.putMix({ ...mix, animalIds: [second.id, second.id] })).rejects.toMatchObject({
    kind: 'invalid',
    field: '/animalIds/1',
    message: expect.stringContaining('"a-second" is named twice'),
  });
  await store.close();
});

it('refuses an animal for a profile that nobody knows', async () => {
  const store = openStore(path);
  await expect(store.putAnimal({ ...bramble, profileId: 'nowhere' })).rejects.toMatchObject({
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
  const refused = store.deleteProfile('mine');
  await expect(refused).rejects.toMatchObject({ kind: 'in use', field: '/id' });
  await expect(refused).rejects.toThrow('is used by the mix "First mix" and the animal "Bramble"; choose');
  await store.putMix(mix);
  await expect(store.deleteProfile('mine')).rejects.toThrow('is used by the animal "Bramble"; choose');
  await store.putAnimal(bramble);
  await store.deleteProfile('mine');
  expect((await store.household()).profiles).toEqual([]);
  await store.close();
});

it('keeps versions of a mix that is there, through its changes, and lets them go with it', async () => {
  const store = openStore(path);
  await expect(store.putVersion(version)).rejects.toMatchObject({
    kind: 'invalid',
    field: '/mixId',
    message: expect.stringContaining('no mix has the id "demo-mix"'),
  });
  await store.putAll({ ...demo, versions: [version, { ...version, id: 'v2' }] });
  await store.putMix({ ...mix, name: 'Renamed' });
  await store.putVersion({ ...version, name: 'better named' });
  expect((await store.household()).versions.map((v) => [v.id, v.name])).toEqual([
    ['v1', 'better named'],
    ['v2', version.name],
  ]);
  await store.deleteVersion('v2');
  await expect(store.deleteVersion('v2')).rejects.toThrow('no version of a mix has the id "v2"');
  expect((await store.household()).versions).toHaveLength(1);
  await store.deleteMix(mix.id);
  expect((await store.household()).versions).toEqual([]);
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

/** A file as the first step left it: a food, two animals, and a mix for one of them and one for nobody. */
function firstShape(): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = new Database(path);
  file.pragma('foreign_keys = ON');
  migrate(file, 1);
  const pellet = demo.foods[0]!;
  file
    .prepare('INSERT INTO foods VALUES (?, ?, ?, NULL, NULL, ?, 1, ?, ?)')
    .run(
      pellet.id,
      pellet.name,
      pellet.kind,
      pellet.source,
      JSON.stringify(pellet.composition),
      JSON.stringify(pellet.sd),
    );
  const profile = file.prepare("INSERT INTO profiles VALUES (?, ?, 'hamster', 'old age', 'none', '', '[]')");
  profile.run('mine', 'Mine');
  const animal = file.prepare("INSERT INTO animals VALUES (?, ?, 'golden hamster', 1)");
  animal.run('demo-animal', 'Bramble');
  animal.run('unfed', 'Hazel');
  const { variation: _later, cautions: _too, ...problem } = mix.problem;
  const add = file.prepare("INSERT INTO mixes VALUES (?, ?, ?, ?, ?, ?, ?, '[]')");
  const values = [mix.updatedAt, JSON.stringify(problem), JSON.stringify(mix.shares)];
  add.run('demo-mix', mix.name, 'demo-animal', 'mine', ...values);
  add.run('later', 'Later mix', 'demo-animal', 'hamster-nrc', ...values);
  add.run('nobodys', 'For nobody', null, 'hamster-adult', ...values);
  file.prepare("INSERT INTO mix_foods VALUES ('demo-mix', 'demo-pellet')").run();
  file.close();
}

it('brings a file of the first shape to the newest, with everything in it', async () => {
  firstShape();
  const store = openStore(path);
  expect(store.isNew).toBe(false);
  const household = await store.household();
  expect(household.foods).toEqual(demo.foods);
  expect(household.profiles.map((p) => p.id)).toEqual(['mine']);
  const asBefore = { species: 'golden hamster', lifeStage: 'adult', refuses: [], invented: true };
  expect(household.animals).toEqual([
    { ...asBefore, id: 'demo-animal', name: 'Bramble', profileId: 'mine' },
    { ...asBefore, id: 'unfed', name: 'Hazel', profileId: 'hamster-adult' },
  ]);
  expect(household.mixes.map((m) => [m.id, m.animalIds, m.profileId])).toEqual([
    ['demo-mix', ['demo-animal'], 'mine'],
    ['later', ['demo-animal'], 'hamster-nrc'],
    ['nobodys', [], 'hamster-adult'],
  ]);
  expect(household.mixes[0]).toEqual({ ...mix, profileId: 'mine' });
  expect(household.versions).toEqual([]);
  await expect(store.deleteFood('demo-pellet')).rejects.toThrow('"First mix"');
  await store.putVersion(version);
  await store.deleteAnimal('demo-animal');
  expect((await store.household()).mixes.map((m) => m.animalIds)).toEqual([[], [], []]);
  await store.close();
  const file = new Database(path);
  expect(file.pragma('foreign_key_check')).toEqual([]);
  expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
  file.close();
});

it.each([1, 2])('gives a file brought up from step %i the shape of a new one', async (step) => {
  const shape = (at: string) => {
    const file = new Database(at);
    const tables = file.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all();
    const columns = (tables as { name: string }[]).map(({ name }) => [
      name,
      file.pragma(`table_info(${name})`),
      file.pragma(`foreign_key_list(${name})`),
    ]);
    file.close();
    return columns;
  };
  const newest = join(folder, 'newest.sqlite');
  await openStore(newest).close();
  const old = join(folder, 'old.sqlite');
  const file = new Database(old);
  migrate(file, step);
  file.close();
  const store = openStore(old);
  expect(store.isNew).toBe(false);
  await store.close();
  expect(shape(old)).toEqual(shape(newest));
});
