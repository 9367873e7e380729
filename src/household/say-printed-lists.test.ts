/** Mixes kept before printed lists went along get the lists of their own foods. */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { mix } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { APPLICATION_ID } from './file/side-files.ts';
import { migrate } from './migrations.ts';
import { openStore } from './store.ts';

const folder = folderForEachTest();
const LISTS = 7;

it('puts the lists beside the foods of mixes and versions, and pages learn of it', async () => {
  const path = join(folder(), 'household.sqlite');
  mkdirSync(dirname(path), { recursive: true });
  const file = new Database(path);
  migrate(file, LISTS - 1);
  const bar = { id: 'bar', name: 'Bar', kind: 'mix', composition: {}, sd: {}, source: '', invented: false };
  const food = { ...bar, evidence: { ingredients: 'oats, chocolate' } };
  const problem = { ...mix.problem, foods: [{ id: 'bar', composition: {} }], beside: [], rules: [] };
  const version = { id: 'v', mixId: 'm', name: 'V', problem, shares: {}, keptAt: mix.updatedAt };
  const kept = { ...mix, id: 'm', animalIds: [], profileId: 'hamster-adult', problem, shares: {}, held: [] };
  const add = file.prepare(
    "INSERT INTO records (household, kind, id, version, seq, place, body) VALUES ('home', ?, ?, 1, ?, ?, ?)",
  );
  for (const [i, [kind, body]] of (
    [
      ['foods', food],
      ['mixes', kept],
      ['mixes', { ...kept, id: 'other', problem: { ...problem, foods: [] } }],
      ['versions', version],
    ] as const
  ).entries())
    add.run(kind, body.id, i + 1, i + 1, JSON.stringify(body));
  file.pragma(`application_id = ${APPLICATION_ID}`);
  file.prepare("UPDATE households SET seq = 4, epoch = 'before'").run();
  migrate(file, LISTS);
  expect(file.prepare('SELECT seq, epoch FROM households').get()).toEqual({
    seq: 6,
    epoch: expect.not.stringMatching('before'),
  });
  const versions = file.prepare('SELECT id, version FROM records ORDER BY seq').all();
  expect(versions).toEqual([
    { id: 'bar', version: 1 },
    { id: 'other', version: 1 },
    { id: 'm', version: 2 },
    { id: 'v', version: 2 },
  ]);
  file.close();
  const store = openStore(path);
  const household = await store.household();
  await store.close();
  const lists = [...household.mixes, ...household.versions].map((m) => m.problem.foods[0]?.ingredients);
  expect(lists).toEqual([['oats, chocolate'], undefined, ['oats, chocolate']]);
});
