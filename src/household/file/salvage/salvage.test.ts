/** Whatever pages of a household are damaged, every row of the others is saved. */
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { folderForEachTest } from '../../../../test/household/folder-for-each-test.ts';
import { migrate } from '../../migrations.ts';
import { openFile } from '../open-file.ts';
import { PAGE, pagesOf } from './pages.ts';
import { pagesAt, readableRows, salvage } from './salvage.ts';

const folder = folderForEachTest();
let path: string;
beforeEach(() => {
  path = join(folder(), 'household.sqlite');
});

const ADD = "INSERT INTO records VALUES ('home', ?, ?, ?, ?, ?, ?)";
const body = (id: string, letters: number) => JSON.stringify({ id, name: 'ü'.repeat(letters) });

/** A household with one record of each length of text. */
function householdOf(lengths: readonly number[], at = path): void {
  const opened = openFile(at);
  const add = opened.file.prepare(ADD);
  lengths.forEach((letters, i) => {
    const id = `lot-${i}`;
    add.run('lots', id, 1, i + 1, i + 1, body(id, letters));
  });
  opened.file.prepare('UPDATE households SET seq = ?').run(lengths.length);
  opened.close();
}

const recordsOf = (at: string) => {
  const db = new Database(at, { readonly: true });
  try {
    return db.prepare('SELECT * FROM records ORDER BY seq').raw().all();
  } finally {
    db.close();
  }
};

describe('what is read without SQLite', () => {
  it('is what SQLite reads, short rows, long rows and numbers of every size', () => {
    const opened = openFile(path);
    const add = opened.file.prepare(ADD);
    const numbers = [
      0,
      1,
      2,
      127,
      128,
      32767,
      32768,
      8388608,
      2 ** 31,
      2 ** 40,
      2 ** 47,
      Number.MAX_SAFE_INTEGER,
    ];
    numbers.forEach((n, i) => {
      add.run('foods', `f${i}`, n, i + 1, n, i % 3 === 0 ? null : body(`f${i}`, i * 700));
    });
    opened.close();
    const rows = readableRows(pagesOf(readFileSync(path))).get('records') ?? [];
    expect(rows.map((r) => r.values).sort((a, b) => Number(a[4]) - Number(b[4]))).toEqual(recordsOf(path));
  });

  it('counts what is only in the log, and a change there before the row it replaced', () => {
    householdOf([10, 20, 3000]);
    const opened = openFile(path);
    opened.file
      .prepare("UPDATE records SET body = ?, version = 2, seq = 4 WHERE id = 'lot-1'")
      .run(body('new', 5));
    opened.file.prepare(ADD).run('lots', 'lot-9', 1, 5, 5, body('lot-9', 9000));
    const copy = join(folder(), 'copy.sqlite');
    for (const end of ['', '-wal']) copyFileSync(path + end, copy + end);
    const expected = recordsOf(path);
    opened.close();
    const saved = salvage(copy, join(folder(), 'saved.sqlite'));
    expect(saved?.records).toEqual({ lots: 4 });
    expect(recordsOf(join(folder(), 'saved.sqlite'))).toEqual(expected);
  });

  it('knows nothing of what was deleted', () => {
    householdOf([10, 5000, 20]);
    const opened = openFile(path);
    opened.file.exec("DELETE FROM records WHERE id = 'lot-1'");
    opened.close();
    const saved = salvage(path, join(folder(), 'saved.sqlite'));
    expect(saved?.records).toEqual({ lots: 2 });
  });
});

it('saves every row that lies on whole pages, and opens as a household', () => {
  let round = 0;
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.nat(300), fc.nat(6000)), { minLength: 1, maxLength: 60 }),
      fc.array(fc.tuple(fc.nat(), fc.nat(PAGE - 1), fc.integer({ min: 1, max: PAGE }), fc.nat(255)), {
        minLength: 1,
        maxLength: 8,
      }),
      (lengths, damages) => {
        round += 1;
        const at = join(folder(), `${round}.sqlite`);
        householdOf(lengths, at);
        const bytes = readFileSync(at);
        const rows = readableRows(pagesOf(bytes)).get('records') ?? [];
        expect(rows).toHaveLength(lengths.length);
        const damaged = new Set<number>();
        for (const [page, offset, length, byte] of damages) {
          const number = page % (bytes.length / PAGE);
          damaged.add(number + 1);
          const from = number * PAGE + offset;
          bytes.fill(byte, from, Math.min(from + length, (number + 1) * PAGE));
        }
        writeFileSync(at, bytes);
        const whole = rows.filter((r) => r.pages.every((p) => !damaged.has(p))).map((r) => r.values);
        const to = join(folder(), `${round}.saved.sqlite`);
        const saved = salvage(at, to);
        if (whole.length === 0) return;
        expect(saved).toBeDefined();
        const kept = new Set(recordsOf(to).map((row) => JSON.stringify(row)));
        expect(whole.filter((row) => !kept.has(JSON.stringify(row)))).toEqual([]);
        openFile(to).close();
      },
    ),
    { numRuns: draws(300, 25) },
  );
});

it('says which records the history names and that are lost', () => {
  householdOf([10]);
  const opened = openFile(path);
  opened.file.exec("INSERT INTO changes VALUES ('home', 2, 'foods', 'oats', 1, NULL, '', '', 2)");
  opened.close();
  expect(salvage(path, join(folder(), 'saved.sqlite'))?.lost).toEqual(['foods oats']);
});

it('makes no file of nothing', () => {
  writeFileSync(path, Buffer.alloc(3 * PAGE, 7));
  expect(salvage(path, join(folder(), 'saved.sqlite'))).toBeUndefined();
  expect(pagesAt(path).count).toBe(3);
});

it('saves what SQLite can read of an older shape, and brings it up', () => {
  const db = new Database(path);
  migrate(db, 5);
  const add = db.prepare('INSERT INTO lots VALUES (?, ?)');
  db.transaction(() => {
    for (let i = 0; i < 300; i++) add.run(`l${i}`, JSON.stringify({ id: `l${i}`, note: 'x'.repeat(200) }));
  })();
  db.exec(`INSERT INTO batches VALUES ('b1', '{"id":"b1"}')`);
  db.close();
  const bytes = readFileSync(path);
  const page = Math.floor(bytes.indexOf('"l150"') / PAGE) * PAGE;
  writeFileSync(path, bytes.fill(0xff, page, page + PAGE));
  expect(() => openFile(path)).toThrow('is damaged');
  const to = join(folder(), 'saved.sqlite');
  const saved = salvage(path, to);
  expect(saved?.records.batches).toBe(1);
  // A page holds some 16 of these rows; one is lost.
  expect(saved?.records.lots).toBeGreaterThan(250);
  expect(saved?.records.lots).toBeLessThan(300);
  const opened = openFile(to);
  const kept = opened.file.prepare("SELECT id FROM records WHERE kind = 'lots' ORDER BY place").pluck().all();
  expect(kept).toEqual([...kept].sort((a, b) => Number(String(a).slice(1)) - Number(String(b).slice(1))));
  opened.close();
});
