/**
 * Bytes of a household's file changed at random, as a failing disk does. Where SQLite finds the file damaged it is never
 * written to, there is a way on, and all that lies on whole pages is saved.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { Backups } from '../../src/household/backup/backups.ts';
import { openBytes } from '../../src/household/file/image.ts';
import { OpeningError } from '../../src/household/file/opening-error.ts';
import { putBack, putSalvaged } from '../../src/household/file/rescue.ts';
import { PAGE, pagesOf } from '../../src/household/file/salvage/pages.ts';
import { readableRows } from '../../src/household/file/salvage/salvage.ts';
import { openStore } from '../../src/household/store.ts';
import { waysFrom } from '../../src/server/rescue.ts';
import { draws } from '../draws.ts';
import { demo } from './demo-version.ts';
import { EMPTY } from './empty-household.ts';
import { folderForEachTest } from './folder-for-each-test.ts';

const folder = folderForEachTest();
const FILES = draws(50, 8);
const FLIPS = 20;
const AT = '2026-11-28T12:00:00.000Z';

/** A moment for each time that something is set aside. */
const timeOf = (n: number) => new Date(Date.parse(AT) + n * 1000).toISOString();

let state = 5;
const random = (below: number) => {
  state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
  return Math.floor((state / 2 ** 31) * below);
};

/** A household with a few hundred records and their history, and a backup of it. @returns name of the backup */
async function household(path: string): Promise<string> {
  const store = openStore(path);
  await store.putAll(demo);
  const foods = Array.from(
    { length: 150 },
    (_, i) => ({ ...demo.foods[0], id: `food-${i}`, source: 'invented '.repeat(1 + random(20)) }) as never,
  );
  await store.putAll({ ...EMPTY, foods }, { device: 'test', at: AT });
  const backups = new Backups({
    opened: store.opened,
    clock: () => new Date(AT),
    tell: () => {},
    onGoneBack: () => {},
  });
  const { name } = await backups.saveNow();
  await store.close();
  return name;
}

/** What SQLite itself says of a file's bytes. */
function soundBySqlite(bytes: Buffer): boolean {
  try {
    const db = openBytes(Buffer.from(bytes));
    try {
      return db.pragma('integrity_check', { simple: true }) === 'ok';
    } finally {
      db.close();
    }
  } catch {
    return false;
  }
}

it(`${FLIPS} flips in each of ${FILES} files: no damaged file is written to, and what is whole is saved`, async () => {
  const met = { refused: 0, opened: 0, saved: 0 };
  const first = join(folder(), 'household.sqlite');
  const backup = await household(first);
  const sound = readFileSync(first);
  const rows = readableRows(pagesOf(sound)).get('records') ?? [];
  for (let n = 0; n < FILES; n++) {
    // Backups are found by the name of the file.
    const path = join(folder(), 'household.sqlite');
    const bytes = Buffer.from(sound);
    const flipped = new Set<number>();
    for (let flip = 0; flip < FLIPS; flip++) {
      const at = random(bytes.length);
      bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << random(8)), at);
      flipped.add(Math.floor(at / PAGE) + 1);
    }
    writeFileSync(path, bytes);
    let refused: unknown;
    try {
      await openStore(path).close();
    } catch (error) {
      refused = error;
    }
    if (refused === undefined) {
      // The flips fell into text or free room: SQLite finds nothing wrong.
      expect(soundBySqlite(bytes)).toBe(true);
      met.opened += 1;
      continue;
    }
    expect(refused).toBeInstanceOf(OpeningError);
    expect(readFileSync(path)).toEqual(bytes);
    expect(waysFrom(refused as OpeningError)).toEqual(expect.arrayContaining(['go-back', 'save-readable']));
    met.refused += 1;
    const whole = rows.filter((row) => row.pages.every((page) => !flipped.has(page)));
    const saved = putSalvaged(path, timeOf(2 * n));
    expect(saved).toBeDefined();
    const db = new Database(path, { readonly: true });
    const kept = new Set(
      db
        .prepare('SELECT * FROM records')
        .raw()
        .all()
        .map((row) => JSON.stringify(row)),
    );
    db.close();
    expect(whole.filter((row) => !kept.has(JSON.stringify(row.values)))).toEqual([]);
    met.saved += whole.length;
    expect(readFileSync(saved?.aside as string)).toEqual(bytes);
    await openStore(path).close();
    putBack(path, backup, timeOf(2 * n + 1));
    const back = openStore(path);
    expect((await back.household()).foods).toHaveLength(151);
    await back.close();
  }
  expect(met.refused).toBeGreaterThan(FILES / 4);
  expect(met.saved).toBeGreaterThan(met.refused);
});
