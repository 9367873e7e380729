import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { demo, mix } from '../../../test/household/demo-version.ts';
import type { Batch, Lot, Pour } from '../../kitchen/model.ts';
import type { Animal, Mix } from '../model.ts';
import { mergeRecord, same } from './merge-record.ts';

const lot: Lot = {
  id: 'l',
  food: 'millet',
  name: 'Millet',
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-01',
  frozen: false,
  seller: 'Corner shop',
  cold: [],
};
const pour = (grams: number, minute: number): Pour => ({
  food: 'millet',
  lots: [],
  target: 15,
  grams,
  at: new Date(Date.UTC(2026, 2, 20, 10, minute)).toISOString(),
});
const batch: Batch = {
  id: 'b',
  name: 'Batch',
  problem: mix.problem,
  shares: mix.shares,
  order: ['millet', 'rolled-oats'],
  grams: 300,
  pours: [pour(15, 0)],
  animalIds: [],
  startedAt: '2026-03-20T09:59:00Z',
};

describe('two changes of one record', () => {
  it('takes different fields from both: a recalled lot keeps its bar when its seller is changed elsewhere', () => {
    const barred = { why: 'recalled', on: '2026-04-01' };
    const { merged, conflicts } = mergeRecord('lots', lot, { ...lot, seller: 'Mill' }, { ...lot, barred });
    expect(conflicts).toEqual([]);
    expect(merged).toEqual({ ...lot, seller: 'Mill', barred });
  });

  it('says which field both changed, and takes the preferred side there alone', () => {
    const mine = { ...lot, seller: 'Mill', grams: 400 };
    const theirs = { ...lot, seller: 'Market', openedOn: '2026-03-05' };
    const first = mergeRecord('lots', lot, mine, theirs);
    expect(first.conflicts).toEqual(['/seller']);
    expect(first.merged).toEqual({ ...lot, seller: 'Mill', grams: 400, openedOn: '2026-03-05' });
    expect(mergeRecord('lots', lot, mine, theirs, 'theirs').merged?.seller).toBe('Market');
  });

  it('adds the pours of two phones, each once', () => {
    const mine = { ...batch, pours: [...batch.pours, pour(3, 1), pour(4, 3)] };
    const theirs = { ...batch, pours: [...batch.pours, pour(3, 1), pour(5, 2)] };
    const { merged, conflicts } = mergeRecord('batches', batch, mine, theirs);
    expect(conflicts).toEqual([]);
    expect(merged?.pours.map((p) => p.grams).sort()).toEqual([15, 3, 4, 5]);
  });

  it('takes a pour back that the other side left alone, and keeps the one that was added', () => {
    const mine = { ...batch, pours: [] };
    const theirs = { ...batch, pours: [...batch.pours, pour(5, 2)] };
    expect(mergeRecord('batches', batch, mine, theirs).merged?.pours).toEqual([pour(5, 2)]);
  });

  it('merges what an animal refuses as a set', () => {
    const animal: Animal = { ...demo.animals[0]!, refuses: ['millet', 'dill-dried'] };
    const mine = { ...animal, refuses: ['millet'] };
    const theirs = { ...animal, refuses: ['millet', 'dill-dried', 'maize'] };
    expect(mergeRecord('animals', animal, mine, theirs).merged?.refuses).toEqual(['millet', 'maize']);
  });

  it('merges foods and rules of a mix by what they are, and takes its shares whole from one side', () => {
    const changed = (m: Mix, id: string, change: object): Mix => ({
      ...m,
      problem: { ...m.problem, foods: m.problem.foods.map((f) => (f.id === id ? { ...f, ...change } : f)) },
    });
    const mine = { ...changed(mix, 'millet', { refused: true }), updatedAt: '2026-02-01T00:00:00.000Z' };
    const theirs = { ...changed(mix, 'maize', { max: 10 }), updatedAt: '2026-02-02T00:00:00.000Z' };
    const { merged, conflicts } = mergeRecord('mixes', mix, mine, theirs);
    expect(conflicts).toEqual([]);
    expect(merged?.problem.foods.find((f) => f.id === 'millet')?.refused).toBe(true);
    expect(merged?.problem.foods.find((f) => f.id === 'maize')?.max).toBe(10);
    expect(merged?.updatedAt).toBe(theirs.updatedAt);
    const shares = (oats: number) => ({ ...mix, shares: { ...mix.shares, 'rolled-oats': oats } });
    const other = { ...mix, shares: { ...mix.shares, millet: 7 } };
    expect(mergeRecord('mixes', mix, shares(6), other).conflicts).toEqual(['/shares']);
  });

  it('asks where one side deleted what the other changed', () => {
    const changed = { ...lot, grams: 1 };
    expect(mergeRecord('lots', lot, null, changed)).toEqual({ merged: null, conflicts: [''] });
    expect(mergeRecord('lots', lot, changed, null)).toEqual({ merged: changed, conflicts: [''] });
    expect(mergeRecord('lots', lot, null, lot)).toEqual({ merged: null, conflicts: [] });
    expect(mergeRecord('lots', lot, lot, null)).toEqual({ merged: null, conflicts: [] });
  });
});

describe('laws', () => {
  const json = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: 'small' },
      fc.integer({ min: 0, max: 3 }),
      fc.constantFrom('a', 'b'),
      fc.dictionary(fc.constantFrom('x', 'y', 'id'), tie('value')),
      fc.array(tie('value'), { maxLength: 3 }),
    ),
  })).value;
  const record = fc.dictionary(
    fc.constantFrom('name', 'foods', 'rules', 'pours', 'on'),
    json,
  ) as fc.Arbitrary<
    // Any JSON object does: nothing of the merge looks at what a lot is.
    never
  >;

  it('a change by one side alone is taken as it is', () => {
    fc.assert(
      fc.property(record, record, (base, changed) => {
        for (const merged of [
          mergeRecord('lots', base, changed, base),
          mergeRecord('lots', base, base, changed),
          mergeRecord('lots', base, changed, changed),
        ])
          expect(merged.conflicts.length === 0 && same(merged.merged, changed)).toBe(true);
      }),
      { numRuns: draws(5000, 500) },
    );
  });

  it('conflicts are the same from both sides; without one, so is what comes out, but for the order of lists', () => {
    const unordered = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map((v) => JSON.stringify(unordered(v))).sort()
        : value !== null && typeof value === 'object'
          ? Object.fromEntries(
              Object.entries(value)
                .map(([k, v]) => [k, unordered(v)] as const)
                .sort(([a], [b]) => (a < b ? -1 : 1)),
            )
          : value;
    fc.assert(
      fc.property(record, record, record, (base, a, b) => {
        const one = mergeRecord('lots', base, a, b);
        const other = mergeRecord('lots', base, b, a);
        expect(one.conflicts.length > 0).toBe(other.conflicts.length > 0);
        if (one.conflicts.length === 0) expect(unordered(one.merged)).toEqual(unordered(other.merged));
      }),
      { numRuns: draws(5000, 500) },
    );
  });
});
