/** What each request of a page touches in the database: found by an index, and of the records only those that it is about. */
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { tenYears } from '../../../test/household/ten-years.ts';
import type { Kept, Kind } from '../model.ts';
import { type FileStore, openStore } from '../store.ts';

const house = tenYears({ size: 0.03 });
const folder = folderForEachTest();
const by = { device: 'test', at: '2026-03-10T10:00:00.000Z' };
let store: FileStore;
/** Every statement that was prepared since the store was opened with all that it holds. */
let said: Set<string>;

beforeEach(async () => {
  const path = join(folder(), 'household.sqlite');
  store = openStore(path);
  await store.putAll(house);
  await store.close();
  // A statement is prepared once: what filled the store is not of interest.
  store = openStore(path);
  const { file } = store.opened;
  const prepare = file.prepare.bind(file);
  said = new Set();
  file.prepare = ((sql: string) => {
    said.add(sql);
    return prepare(sql);
  }) as typeof file.prepare;
  await store.lookThrough();
});
afterEach(() => store.close());

const first = <K extends Kind>(kind: K) => house[kind][0] as Kept<K>;
const write = (kind: Kind, body: Kept<Kind>, basedOn: number, writeId?: string) =>
  store.write({ kind, id: body.id, body, basedOn, ...(writeId !== undefined && { writeId }) }, by);

/** How the database goes about what was said, statement by statement. */
function plans(): string[] {
  const { file } = store.opened;
  return [...said]
    .filter((sql) => /^\s*(select|update|insert|delete)/i.test(sql))
    .flatMap((sql) => {
      const values = Array.from(sql.matchAll(/\?/g), () => null);
      const steps = file.prepare(`explain query plan ${sql}`).all(...values) as { detail: string }[];
      return steps.map(({ detail }) => detail);
    });
}

/**
 * Whether a step goes to what it looks for; a list that an index gives in order already, the newest first, is left once
 * there is enough of it.
 */
function isFound(step: string): boolean {
  // The numbers between which a household is cut are no table.
  if (/^SCAN (?!blocks$|CONSTANT ROW$)|TEMP B-TREE/.test(step)) return false;
  const newest = /(autoindex_changes_1|records_deleted) \(household=\?\)/.test(step);
  return newest || !/\(household=\?( AND kind=\?)?\)/.test(step);
}

const batch = house.batches.at(-1)!;
const { finishedAt: _end, left: _left, ...begun } = batch;
const open = { ...begun, id: 'open', pours: [] };

const REQUESTS: Readonly<Record<string, () => Promise<unknown>>> = {
  'a new weighing': () => write('weighings', { ...first('weighings'), id: 'new' }, 0, 'w1'),
  'a weighing changed': () => write('weighings', { ...first('weighings'), grams: 99 }, 1, 'w1'),
  'a feeding changed': () => write('feedings', { ...first('feedings'), beside: [] }, 1),
  'a mix changed': () => write('mixes', { ...first('mixes'), shares: {} }, 1),
  'a lot changed': () => write('lots', { ...first('lots'), grams: 1 }, 1),
  'a lot that is used deleted': () =>
    store
      .write({ kind: 'lots', id: first('lots').id, body: null, basedOn: 1 }, by)
      .catch((error: Error) => expect(error.message).toContain('is used by')),
  'a new lot of a food that only a mix names': () =>
    write('lots', { ...first('lots'), food: 'millet', id: 'new' }, 0),
  'a pour': async () => {
    await write('batches', open, 0);
    await store.addPours(open.id, { pours: [batch.pours[0]!] }, by, 'w2');
  },
  'the first part, with where to cut the others': async () => {
    const { text = '' } = await store.recordsText({ after: 0 });
    expect(JSON.parse(text).cuts.weighings).toBeDefined();
  },
  'a part of a range': () => store.recordsText({ after: 100, upTo: 200 }),
  'weighings of a range': () => store.recordsText({ after: 100, upTo: 200, of: 'weighings' }),
  'the rest of a range': () => store.recordsText({ after: 100, upTo: 200, of: 'rest' }),
  'what is new': () => store.recordsText({ after: 1000 }),
  'the history': () => store.history({}),
  'earlier history': () => store.history({ before: 50 }),
  'the history of a record': () => store.history({ kind: 'mixes', id: first('mixes').id, before: 500 }),
  'the history of a kind': () => store.history({ kind: 'mixes', before: 500 }),
  'what is deleted': () => store.history({ deleted: true, before: 500 }),
  'what is deleted of a kind': () => store.history({ deleted: true, kind: 'foods' }),
  'one change': () => store.change(3),
};

describe('no table is read from end to end', () => {
  for (const [name, request] of Object.entries(REQUESTS))
    it(name, async () => {
      await request();
      const all = plans();
      expect(all.length).toBeGreaterThan(0);
      expect(all.filter((step) => !isFound(step))).toEqual([]);
    });
});

it('a save changes one record, its line of the history, and the number of the newest change', async () => {
  const rows = () =>
    store.opened.file.prepare('select kind, id, version, seq, body from records').all() as {
      kind: Kind;
      id: string;
      seq: number;
    }[];
  const before = rows();
  const count = () => (store.opened.file.prepare('select total_changes() as n').get() as { n: number }).n;
  const from = count();
  await write('weighings', { ...first('weighings'), grams: 99 }, 1);
  // The lock on the household, the number, the record, its line.
  expect(count() - from).toBe(4);
  const stood = new Set(before.map((r) => JSON.stringify(r)));
  const touched = rows().filter((r) => !stood.has(JSON.stringify(r)));
  expect(touched.map((r) => [r.kind, r.id])).toEqual([['weighings', first('weighings').id]]);
});
