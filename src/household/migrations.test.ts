/** A file of an earlier shape is brought to the newest when it is opened. */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { beforeEach, expect, it } from 'vitest';
import { demo, mix, version } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { put, remove } from '../../test/household/put.ts';
import { migrate } from './migrations.ts';
import { openStore } from './store.ts';

const folder = folderForEachTest();
let path: string;
beforeEach(() => {
  path = join(folder(), 'deep', 'household.sqlite');
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
  await expect(remove(store, 'foods', 'demo-pellet')).rejects.toThrow('“First mix”');
  await put(store, 'versions', version);
  await remove(store, 'animals', 'demo-animal');
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
  const newest = join(folder(), 'newest.sqlite');
  await openStore(newest).close();
  const old = join(folder(), 'old.sqlite');
  const file = new Database(old);
  migrate(file, step);
  file.close();
  const store = openStore(old);
  expect(store.isNew).toBe(false);
  await store.close();
  expect(shape(old)).toEqual(shape(newest));
});
