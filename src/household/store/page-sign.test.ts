/** A part that bears the sign it bore is the part that it was, whatever was written since and by whom. */
import { join } from 'node:path';
import SqliteFile from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { demo, mix } from '../../../test/household/demo-version.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { put, recordIn, remove } from '../../../test/household/put.ts';
import type { Lot } from '../../kitchen/model.ts';
import { copyBack } from '../backup/go-back.ts';
import { SECTIONS } from '../records.ts';
import { type FileStore, openStore, type PageText } from '../store.ts';
import { storeOver } from './record-store.ts';
import type { Asked } from './section.ts';
import { HOME } from './tables.ts';

const folder = folderForEachTest();
const by = { device: 'test', at: '2026-03-01T08:00:00.000Z' };
const lotOf = (n: number, grams: number): Lot => ({
  ...{ id: `l${n}`, food: 'millet', name: 'Millet', grams, form: 'dry', boughtOn: '2026-03-01' },
  ...{ frozen: false, cold: [] },
});
const weighing = (n: number, grams: number) => ({
  ...{ id: `w${n}`, animalId: demo.animals[0]!.id, at: `2026-03-01T08:00:0${n}.000Z`, grams },
});
/** So many of each stand at the beginning. */
const MANY = 6;

let path: string;
let store: FileStore;
beforeEach(async () => {
  path = join(folder(), 'household.sqlite');
  store = openStore(path);
  const each = Array.from({ length: MANY }, (_, n) => n);
  await store.putAll({ ...demo, lots: each.map((n) => lotOf(n, 100)) });
  await store.putAll({ ...demo, weighings: each.map((n) => weighing(n, 100)) });
});
afterEach(() => store.close());

/** Another program, that leaves the numbers of changes as they are. */
function fromOutside(work: (file: SqliteFile.Database) => void): void {
  const file = new SqliteFile(path);
  work(file);
  file.close();
}

const RANGES: readonly Asked[] = [undefined, ...SECTIONS].flatMap((of) =>
  [
    [0, 3],
    [0, 9],
    [3, 9],
    [9, 15],
    [12, 15],
    [0, 15],
  ].map(([after = 0, upTo]) => ({ after, upTo, of })),
);
const told = () => Promise.all(RANGES.map((asked) => store.recordsText({ ...asked, brief: true })));

const WRITES = {
  'a new one': (n: number, grams: number) => put(store, 'lots', lotOf(MANY + n, grams)),
  'a changed one': (n: number, grams: number) => put(store, 'weighings', weighing(n, grams)),
  'a changed lot': (n: number, grams: number) => put(store, 'lots', lotOf(n, grams)),
  'a deleted one': (n: number) => remove(store, 'lots', `l${n}`),
  'what goes along': () => remove(store, 'animals', demo.animals[0]!.id),
  'a mix': (_n: number, grams: number) => put(store, 'mixes', { ...mix, name: `Mix of ${grams}` }),
  'taken back': async (n: number) => store.takeBack((await store.newest()).seq - n, by),
  async 'brought in, in another order'(n: number) {
    const { lots } = await store.household();
    const order = [...lots.slice(n), ...lots.slice(0, n)].map(({ id }) => ({ kind: 'lots' as const, id }));
    const { seq: seen } = await store.newest();
    await store.bringIn({ put: [], remove: [], order, seen }, by);
  },
  'everything anew': () => store.putAll(demo),
  async 'history let go of'() {
    await store.forgetOld('2028-03-01T08:00:00.000Z');
  },
  async 'another program'(n: number, grams: number) {
    fromOutside((file) =>
      file
        .prepare("UPDATE records SET body = json_set(body, '$.grams', ?) WHERE id IN (?, ?)")
        .run(grams, `l${n}`, `w${n}`),
    );
  },
  async 'a backup put back'() {
    await copyBack(store.opened.file, join(folder(), 'backup.sqlite'), crypto.randomUUID());
    await store.stirred();
  },
} as const;

describe('the sign of a part', () => {
  it('is another one where the part is another', async () => {
    store.opened.file.prepare('VACUUM INTO ?').run(join(folder(), 'backup.sqlite'));
    let same = 0;
    let other = 0;
    const known = new Map<Asked, Map<string, string>>(RANGES.map((asked) => [asked, new Map()]));
    const write = fc.record({
      what: fc.constantFrom(...(Object.keys(WRITES) as (keyof typeof WRITES)[])),
      n: fc.nat(MANY - 1),
      grams: fc.integer({ min: 100, max: 104 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(write, { minLength: 1, maxLength: 8 }), async (writes) => {
        for (const { what, n, grams } of writes) {
          await WRITES[what](n, grams).catch(() => undefined);
          const parts = await told();
          for (const [k, asked] of RANGES.entries()) {
            const { text, sign = '' } = parts[k] as PageText;
            const texts = known.get(asked);
            const before = texts?.get(sign);
            if (before === undefined) other += 1;
            else {
              same += 1;
              expect(text).toBe(before);
            }
            if (sign !== '') texts?.set(sign, text ?? '');
          }
        }
      }),
      { numRuns: draws(400, 25) },
    );
    // Both are met: a sign that is always another would be of no use.
    expect(Math.min(same, other)).toBeGreaterThan(500);
  });

  it('stays where others were written, and leaves the text to who knows it', async () => {
    const early = { after: 0, upTo: 9 };
    const first = await store.recordsText(early);
    expect(JSON.parse(first.text ?? '').records).toHaveLength(9);
    await put(store, 'lots', lotOf(50, 1));
    await put(store, 'weighings', weighing(1, 120));
    expect(await store.recordsText(early, first.sign)).toEqual({ sign: first.sign });
    expect(await store.recordsText(early)).toEqual(first);
    await put(store, 'lots', lotOf(1, 120));
    const now = await store.recordsText(early, first.sign);
    expect(now.sign).not.toBe(first.sign);
    expect(JSON.parse(now.text ?? '').records).toHaveLength(8);
  });

  it('is not there where it cannot be told: of what has no end, is still to come or cannot be read, or in a database of several', async () => {
    const { seq } = await store.newest();
    const signOf = async (asked: Asked) => (await store.recordsText(asked)).sign;
    expect(await signOf({ after: 3 })).toBeUndefined();
    expect(await signOf({ after: 0, of: 'weighings' })).toBeUndefined();
    expect(await signOf({ after: 0, upTo: seq + 1 })).toBeUndefined();
    expect(await signOf({ after: 0, upTo: seq })).toBeDefined();
    const hosted = storeOver({ db: store.db, household: HOME });
    const part = await hosted.recordsText({ after: 0, upTo: seq });
    expect([part.sign, part.text?.length]).toEqual([undefined, expect.any(Number)]);
    const { version } = await recordIn(store, 'lots', 'l1');
    expect(version).toBe(1);
    fromOutside((file) => file.prepare("UPDATE records SET body = '{' WHERE id = 'l1'").run());
    const odd = await store.recordsText({ after: 0, upTo: seq });
    expect(JSON.parse(odd.text ?? '').records.some((r: { unreadable?: unknown }) => r.unreadable)).toBe(true);
    expect(odd.sign).toBeUndefined();
  });
});
