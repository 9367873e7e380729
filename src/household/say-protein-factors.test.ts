/** Foods that were taken from a table before figures named their nitrogen factor are brought to crude protein. */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { demo, mix } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { migrate } from './migrations.ts';
import { openStore } from './store.ts';

const folder = folderForEachTest();

const KERNEL = 'sr28:12036';
/** What USDA SR28 prints for sunflower kernels, nitrogen x 5.30. */
const PRINTED = 20.78;
const CRUDE = (PRINTED * 6.25) / 5.3;

/** A file as it was before: one food from the table, one typed from a label, both in a mix. */
function before(path: string): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = new Database(path);
  migrate(file, 4);
  const put = file.prepare(
    "INSERT INTO foods (id, name, kind, food_group, source, invented, composition, sd, low, high, evidence) VALUES (?, ?, 'mix', 'seed', 'table', 0, ?, ?, '{}', '{}', ?)",
  );
  const composition = { PROCNT: PRINTED, FAT: 51.46 };
  const source = { id: 's', name: 'USDA SR28', basis: 'as fed', composition, sd: { PROCNT: 0.4 } };
  const food = (id: string, ref?: string) =>
    put.run(
      id,
      id,
      JSON.stringify(composition),
      JSON.stringify({ PROCNT: 0.4 }),
      JSON.stringify({ sources: [{ ...source, ...(ref && { ref }) }] }),
    );
  food('kernel', KERNEL);
  food('typed');
  const foods = ['kernel', 'typed'].map((id) => ({ id, composition, sd: { PROCNT: 0.4 } }));
  const problem = JSON.stringify({ ...mix.problem, foods });
  file
    .prepare(
      "INSERT INTO mixes (id, name, profile_id, updated_at, problem, shares, held) VALUES ('m', 'M', 'hamster-adult', ?, ?, '{}', '[]')",
    )
    .run(demo.mixes[0]?.updatedAt, problem);
  file.close();
}

it('gives a food from a table its factor, and its mix the crude protein; a label stays as it is', async () => {
  const path = join(folder(), 'household.sqlite');
  before(path);
  const store = openStore(path);
  const { foods, mixes } = await store.household();
  await store.close();
  const [kernel, typed] = foods;
  expect(kernel?.evidence?.sources).toMatchObject([{ composition: { PROCNT: PRINTED }, proteinFactor: 5.3 }]);
  expect(kernel?.composition.PROCNT).toBeCloseTo(CRUDE, 9);
  expect(kernel?.composition.FAT).toBe(51.46);
  expect(kernel?.sd.PROCNT).toBeCloseTo((0.4 * 6.25) / 5.3, 9);
  expect(typed?.composition.PROCNT).toBe(PRINTED);
  expect(mixes[0]?.problem.foods.map((f) => f.composition?.PROCNT)).toEqual([
    expect.closeTo(CRUDE, 9),
    PRINTED,
  ]);
});
