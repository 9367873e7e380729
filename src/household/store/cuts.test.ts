/** A household is cut into pieces that each fit one answer, whatever lies where; the cuts stay while it grows. */
import { join } from 'node:path';
import fc from 'fast-check';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { hasPostgres, startPostgres, type TestPostgres } from '../../../test/household/postgres.ts';
import { openHosted } from '../hosted.ts';
import { type Cuts, SECTIONS, type Section } from '../records.ts';
import { openStore } from '../store.ts';
import { Cutter } from './cuts.ts';
import { bytesSent } from './section.ts';
import { type Db, HOME } from './tables.ts';

const MOST = 4000;

/** A record that is kept, changed or deleted, made with its number: what comes later changes what stood before. */
interface Step {
  readonly kind: 'lots' | 'batches' | 'feedings' | 'weighings';
  /** Of its text; undefined where it is deleted. */
  readonly bytes: number | undefined;
  /** Which of the records it changes, counted from the newest; undefined for a new one. */
  readonly of: number | undefined;
}

const size = fc.oneof(
  { weight: 20, arbitrary: fc.integer({ min: 1, max: 120 }) },
  { weight: 2, arbitrary: fc.integer({ min: 500, max: MOST - 200 }) },
  { weight: 1, arbitrary: fc.integer({ min: MOST, max: 3 * MOST }) },
);
const steps = (kinds: readonly Step['kind'][]) =>
  fc.array(
    fc.record({
      kind: fc.constantFrom(...kinds),
      bytes: fc.oneof({ weight: 8, arbitrary: size }, { weight: 1, arbitrary: fc.constant(undefined) }),
      of: fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: fc.nat(400) }),
    }),
    { maxLength: 400, size: 'max' },
  );
const house = fc.oneof(
  steps(['lots', 'batches', 'feedings', 'weighings']),
  steps(['weighings']),
  steps(['lots']),
);

const folder = folderForEachTest();
let postgres: TestPostgres | undefined;
beforeAll(async () => {
  if (hasPostgres) postgres = await startPostgres();
});
afterAll(() => postgres?.stop());

const OPENERS: [string, () => Promise<{ db: Db; household: string; close(): Promise<void> }>][] = [
  [
    'a file',
    async () => {
      const store = openStore(join(folder(), 'household.sqlite'));
      return { db: store.db, household: HOME, close: () => store.close() };
    },
  ],
];
if (hasPostgres)
  OPENERS.push([
    'PostgreSQL',
    async () => {
      const { db, add, close } = await openHosted((await postgres?.database()) ?? '');
      return { db, household: (await add('Ours')).id, close };
    },
  ]);

describe.each(OPENERS)('in %s', (name, open) => {
  let opened: Awaited<ReturnType<typeof open>>;
  beforeEach(async () => {
    opened = await open();
  });
  afterEach(() => opened.close());

  async function clear(): Promise<void> {
    await opened.db.deleteFrom('records').execute();
  }

  /** Takes steps from a number on. @returns the number of the last */
  async function take(all: readonly Step[], from: number): Promise<number> {
    const { db, household } = opened;
    const ids = (await db.selectFrom('records').select(['kind', 'id', 'place']).orderBy('seq').execute()).map(
      (r) => ({ ...r, version: 2 }),
    );
    const rows = new Map<string, object>();
    all.forEach(({ kind, bytes, of }, k) => {
      const seq = from + k + 1;
      const known = of === undefined ? undefined : ids.at(-1 - (of % Math.max(1, ids.length)));
      const record = known ?? { kind, id: `r${seq}`, place: seq, version: 1 };
      if (!known) ids.push({ ...record, version: 2 });
      const body =
        bytes === undefined
          ? null
          : 'é'
              .repeat(bytes >> 1)
              .padEnd(bytes, 'x')
              .slice(0, bytes - (bytes >> 1));
      rows.set(record.id, { household, ...record, seq, body });
    });
    for (const row of rows.values())
      await db
        .insertInto('records')
        .values(row as never)
        .onConflict((on) => on.columns(['household', 'kind', 'id']).doUpdateSet(row))
        .execute();
    return from + all.length;
  }

  /** What there is now, in its order, with what it takes of a brief answer. */
  async function there() {
    const { rows } = await sql<{ kind: string; seq: number; bytes: number }>`
      SELECT kind, seq, ${bytesSent(true)} AS bytes FROM records WHERE body IS NOT NULL ORDER BY seq`.execute(
      opened.db,
    );
    return rows;
  }

  const cutsOf = (cutter: Cutter, newest: number, epoch = 'one') =>
    opened.db.transaction().execute((tx) => cutter.cutsOf(tx, opened.household, newest, epoch));

  async function expectFit(cuts: Cuts, newest: number): Promise<void> {
    const all = await there();
    for (const of of SECTIONS) {
      const ends = [0, ...cuts[of], newest];
      expect(ends.every((end, k) => k === 0 || end > (ends[k - 1] ?? 0) || newest === 0)).toBe(true);
      const mine = all.filter((r) => sectionOf(r.kind) === of);
      const pieces = ends
        .slice(1)
        .map((end, k) => mine.filter((r) => r.seq > (ends[k] ?? 0) && r.seq <= end));
      expect(pieces.flat()).toEqual(mine);
      for (const piece of pieces)
        if (piece.length > 1) expect(piece.reduce((sum, r) => sum + r.bytes, 0)).toBeLessThanOrEqual(MOST);
    }
  }

  it('every record is in one piece, and every piece fits, in households of any kind, as they grow', async () => {
    await fc.assert(
      fc.asyncProperty(house, house, async (before, since) => {
        await clear();
        const cutter = new Cutter(MOST);
        const half = await take(before, 0);
        const cuts = await cutsOf(cutter, half);
        await expectFit(cuts, half);
        // No more pieces than there have to be: two neighbours never fit into three quarters of one.
        const all = await there();
        for (const of of SECTIONS) {
          const bytes = all.reduce((sum, r) => sum + (sectionOf(r.kind) === of ? r.bytes : 0), 0);
          expect(cuts[of].length).toBeLessThanOrEqual((2 * bytes) / (MOST * 0.75));
        }
        const newest = await take(since, half);
        const more = await cutsOf(cutter, newest);
        await expectFit(more, newest);
        for (const of of SECTIONS) expect(more[of].slice(0, cuts[of].length)).toEqual(cuts[of]);
        expect(await cutsOf(cutter, newest)).toEqual(more);
        // Another household in its place is cut anew.
        await clear();
        const other = await take(before, 0);
        expect(await cutsOf(cutter, other, 'two')).toEqual(cuts);
      }),
      { numRuns: name === 'a file' ? draws(300, 15) : draws(60, 5) },
    );
  });

  it('nothing is cut where there is nothing', async () => {
    expect(await cutsOf(new Cutter(MOST), 0)).toEqual({ rest: [], feedings: [], weighings: [] });
  });
});

const sectionOf = (kind: string): Section => (kind === 'feedings' || kind === 'weighings' ? kind : 'rest');
