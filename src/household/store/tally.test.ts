/** What is known of all records without reading them again is what reading them says, whatever was written before. */
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { demo, mix } from '../../../test/household/demo-version.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import type { DryingRun, Lot } from '../../kitchen/model.ts';
import type { Kind } from '../model.ts';
import type { Write } from '../records.ts';
import { type FileStore, openStore } from '../store.ts';
import { RowReader } from './stored.ts';
import { HOME } from './tables.ts';
import { Tally } from './tally.ts';

const folder = folderForEachTest();
const by = { device: 'test', at: '2026-03-01T08:00:00.000Z' };
const lotOf = (id: string, name: string): Lot => ({
  ...{ id, food: 'millet', name, grams: 500, form: 'dry', boughtOn: '2026-03-01' },
  ...{ frozen: false, cold: [] },
});
let store: FileStore;
beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demo);
});
afterEach(() => store.close());

const caughtUp = (tally: Tally) =>
  store.db.transaction().execute(async (tx) => {
    await tally.catchUp(tx, HOME, new RowReader());
    return tally;
  });

/** All that can be asked of it. */
function told(tally: Tally, names: readonly string[]) {
  const { of, bytes } = tally.room();
  return {
    of: Object.fromEntries([...of].filter(([, n]) => n > 0).sort(([a], [b]) => (a < b ? -1 : 1))),
    bytes,
    named: names.map((id) => [
      tally.isNamed('lots', id),
      tally.usersOf('lots', id, ['batches', 'dryingRuns']),
    ]),
  };
}

const step = fc.record({
  what: fc.constantFrom('lot', 'run', 'no lot', 'no run', 'again', 'refused'),
  lot: fc.integer({ min: 0, max: 3 }),
  run: fc.integer({ min: 0, max: 3 }),
});

it('kept up from write to write it says what one says that reads all anew', async () => {
  const lots = [0, 1, 2, 3].map((n) => `l${n}`);
  const kept = new Tally();
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
      for (const { what, lot, run } of steps) {
        const { records } = await store.records({ after: 0 });
        const at = (kind: string, id: string) => records.find((r) => r.kind === kind && r.id === id);
        const [l, r] = [`l${lot}`, `r${run}`];
        const writes: Record<typeof what, () => Omit<Write, 'basedOn'>> = {
          lot: () => ({ kind: 'lots', id: l, body: lotOf(l, `${what} ${run}`) }),
          run: () => ({ kind: 'dryingRuns', id: r, body: runOf(r, l) }),
          'no lot': () => ({ kind: 'lots', id: l, body: null }),
          'no run': () => ({ kind: 'dryingRuns', id: r, body: null }),
          again: () => ({ kind: 'mixes', id: mix.id, body: { ...mix, name: `${lot} ${run}` } }),
          refused: () => ({ kind: 'dryingRuns', id: r, body: runOf(r, 'nowhere') }),
        };
        const { kind, id, body } = writes[what]();
        const basedOn = at(kind, id)?.version ?? (await versionOf(kind, id));
        await store.write({ kind, id, body, basedOn }, by).catch(() => undefined);
        if (lot === 0) await caughtUp(kept);
      }
      const anew = told(await caughtUp(new Tally()), lots);
      expect(told(await caughtUp(kept), lots)).toEqual(anew);
      const house = await store.household();
      expect(anew.of.lots ?? 0).toBe(house.lots.length);
      expect(anew.named.map(([is]) => is)).toEqual(
        lots.map((id) => house.dryingRuns.some((d) => d.lot === id)),
      );
    }),
    { numRuns: draws(200, 15) },
  );
});

const versionOf = async (kind: Kind, id: string) =>
  (await store.history({ kind, id })).changes[0]?.version ?? 0;

function runOf(id: string, lot: string): DryingRun {
  return {
    ...{ id, lot, device: 'dehydrator', celsius: 55, startedAt: '2026-03-01T08:00:00.000Z', trays: 5 },
    ...{ gramsTaken: 100, gramsBefore: 90, checks: [], kind: 'vegetable', hours: 10 },
  };
}

it('a copy goes its own way, and another household is counted from its beginning', async () => {
  const tally = await caughtUp(new Tally());
  const before = tally.room();
  const copy = tally.copy();
  await store.write({ kind: 'lots', id: 'l', body: lotOf('l', 'Millet'), basedOn: 0 }, by);
  await caughtUp(copy);
  expect(copy.room().of.get('lots')).toBe(1);
  expect(tally.room()).toEqual(before);
  await store.db.updateTable('households').set({ epoch: 'another' }).execute();
  await store.db.deleteFrom('records').where('kind', '=', 'lots').execute();
  await caughtUp(copy);
  expect(copy.room()).toEqual(before);
});

it('what is written together counts together, and for nothing where it fails', async () => {
  const { seq } = await store.newest();
  const many = ['a', 'b', 'c'].map((id) => ({ kind: 'lots' as const, id, body: lotOf(id, id) }));
  const bad = { kind: 'lots' as const, id: 'd', body: { ...lotOf('d', 'd'), grams: 'many' as never } };
  await expect(store.bringIn({ put: [...many, bad], remove: [], seen: seq }, by)).rejects.toThrow();
  const run = { kind: 'dryingRuns', id: 'r', body: runOf('r', 'a'), basedOn: 0 } as const;
  await expect(store.write(run, by)).rejects.toThrow();
  await store.bringIn({ put: many, remove: [], seen: seq }, by);
  await store.write(run, by);
  await expect(store.write({ kind: 'lots', id: 'a', body: null, basedOn: 1 }, by)).rejects.toThrow();
  await store.write({ kind: 'lots', id: 'b', body: null, basedOn: 1 }, by);
});
