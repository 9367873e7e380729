import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { dayOf } from '../days.ts';
import { type StoredFood, safeBelow, shelfKindOf } from './shelf-kind.ts';
import data from './shelf-life.json' with { type: 'json' };
import { storageAdvice } from './storage-advice.ts';
import { dampDays, usableUntil } from './use-by.ts';

const oats: StoredFood = {
  food: 'oats',
  name: 'Oats',
  group: 'seed',
  share: 60,
  fat: 6.9,
  water: 8.2,
  lots: [],
};
const sunflower: StoredFood = {
  food: 'sunflower',
  name: 'Sunflower seed',
  group: 'seed',
  share: 10,
  fat: 51,
  water: 4.7,
  lots: [],
};
const carrot: StoredFood = {
  food: 'carrot',
  name: 'Carrot',
  group: 'vegetable',
  share: 30,
  fat: 1,
  water: 8,
  lots: [],
};
const mix = [oats, sunflower, carrot];

const days = fc.integer({ min: 19000, max: 22000 }).map(dayOf);
const lots = fc.array(
  fc
    .record({ boughtOn: days, bestBefore: fc.option(days, { nil: undefined }), frozen: fc.boolean() })
    .map(({ boughtOn, bestBefore, frozen }) =>
      lotOf({ id: `${boughtOn}${bestBefore}`, boughtOn, frozen, ...(bestBefore && { bestBefore }) }),
    ),
  { maxLength: 3 },
);
const foods: fc.Arbitrary<StoredFood> = fc.record({
  food: fc.constantFrom('a', 'b', 'c'),
  name: fc.constantFrom('Whole', 'Ground', 'Flaked'),
  group: fc.constantFrom('seed', 'nut', 'legume', 'vegetable', 'herb', 'fruit', 'animal', 'odd'),
  share: fc.constantFrom(0, 1, 20),
  fat: fc.double({ min: 0, max: 60, noNaN: true }),
  water: fc.double({ min: 0, max: 30, noNaN: true }),
  lots,
});
const mixes = fc.array(foods, { minLength: 1, maxLength: 6 }).filter((m) => m.some((f) => f.share > 0));

describe('the figures', () => {
  it('know every kind twice: how long it keeps and how dry it must be, each with a source', () => {
    expect(data.dryEnough.map((r) => r.kind).sort()).toEqual(data.kinds.map((r) => r.kind).sort());
    for (const { kind, cupboard, freezer } of data.kinds)
      expect([kind, freezer > cupboard]).toEqual([kind, true]);
    for (const row of [...data.kinds, ...data.dryEnough, ...data.advice, data.mix, data.damp])
      expect(row.source).toMatch(
        /Extension|Agrodok|Beuchat|Sunflower Association|European Spice|common practice, no source|^as for|15-20 %/,
      );
  });

  it('tell a food by its group, its fat and what was done to it', () => {
    expect(shelfKindOf(oats)).toBe('grain');
    expect(shelfKindOf({ ...oats, name: 'Oats, rolled' })).toBe('crushed grain');
    expect(shelfKindOf(sunflower)).toBe('oil seed');
    expect(shelfKindOf({ group: 'seed', name: 'Linseed, ground', fat: 42 })).toBe('crushed oil seed');
    // A seed of unknown fat is taken for the sort that spoils sooner.
    expect(shelfKindOf({ group: 'seed', name: 'Chia' })).toBe('oil seed');
    expect(shelfKindOf({ group: 'nut', name: 'Walnut in the shell' })).toBe('nut in shell');
    expect(shelfKindOf({ group: 'nut', name: 'Walnut' })).toBe('nut');
    expect(shelfKindOf({ name: 'Something' })).toBe('other');
    // "Groundnut" is not ground.
    expect(shelfKindOf({ group: 'nut', name: 'Groundnut' })).toBe('nut');
  });
});

describe('usableUntil', () => {
  it('is that of the fattiest here, with the reason', () => {
    const use = usableUntil(mix, '2026-03-14');
    expect(use.day).toBe('2026-05-14');
    expect(use.reason).toBe('Sunflower seed keeps about 2 months from mixing, as whole oil seeds do.');
    expect([use.fattiest, use.dampest]).toEqual(['sunflower', 'oats']);
    expect(use.notes).toEqual([]);
  });

  it('is never after the earliest best before of what went in, and the earliest of all limits', () => {
    fc.assert(
      fc.property(
        mixes,
        days,
        fc.constantFrom('cupboard' as const, 'freezer' as const),
        (all, madeOn, place) => {
          const use = usableUntil(all, madeOn, place);
          const used = all.filter((f) => f.share > 0);
          for (const { bestBefore } of used.flatMap((f) => f.lots))
            if (bestBefore !== undefined) expect(use.day <= bestBefore).toBe(true);
          for (const limit of use.limits) expect(use.day <= limit.until).toBe(true);
          expect(use.limits[0]).toMatchObject({ until: use.day, why: use.reason, source: use.source });
          for (const limit of use.limits) expect(used.some((f) => f.food === limit.food)).toBe(true);
          expect(use.notes.some((n) => /before it was made/.test(n))).toBe(use.day < madeOn);
        },
      ),
    );
  });

  it('never grows with another ingredient, nor with a lot or with damp', () => {
    fc.assert(
      fc.property(mixes, foods, days, (all, more, madeOn) => {
        const day = usableUntil(all, madeOn).day;
        expect(usableUntil([...all, more], madeOn).day <= day).toBe(true);
        const damper = all.map((f) => ({ ...f, water: f.water! + 5 }));
        expect(usableUntil(damper, madeOn).day <= day).toBe(true);
        const withoutLots = all.map((f) => ({ ...f, lots: [] }));
        expect(day <= usableUntil(withoutLots, madeOn).day).toBe(true);
      }),
    );
  });

  it('counts what stood a while, and the freezer', () => {
    const old = { ...carrot, lots: [lotOf({ id: 'l', boughtOn: '2025-10-01' })] };
    expect(usableUntil([old], '2026-03-14').day).toBe('2026-04-01');
    const frozen = { ...carrot, lots: [lotOf({ id: 'l', boughtOn: '2025-10-01', frozen: true })] };
    expect(usableUntil([frozen], '2026-03-14').day).toBe('2026-09-14');
    expect(usableUntil([sunflower], '2026-03-14', 'freezer').day).toBe('2026-09-14');
    const printed = { ...carrot, lots: [lotOf({ id: 'l', bestBefore: '2026-03-20' })] };
    expect(usableUntil([printed], '2026-03-14')).toMatchObject({
      day: '2026-03-20',
      source: 'printed on the pack',
    });
  });

  it('lasts days where an ingredient is damp', () => {
    const use = usableUntil([oats, { ...carrot, water: 14 }], '2026-03-14');
    expect(use.day).toBe('2026-04-28');
    expect(use.reason).toMatch(/Carrot holds 14 % water, above the 10 % at which it keeps: about 45 days/);
  });

  it('names what is not known, and refuses an empty mix', () => {
    const { water: _, ...unknown } = oats;
    expect(usableUntil([unknown], '2026-03-14').notes).toEqual([
      'The moisture of Oats is not known and was not counted.',
    ]);
    expect(() => usableUntil([{ ...oats, share: 0 }], '2026-03-14')).toThrow(/nothing is in the mix/);
  });
});

describe('damp food', () => {
  it('lasts the shorter the damper it is, from its limit on', () => {
    fc.assert(
      fc.property(foods, fc.double({ min: 0, max: 10, noNaN: true }), (food, more) => {
        const drier = dampDays(food);
        const damper = dampDays({ ...food, water: food.water! + more });
        expect(drier === undefined).toBe(food.water! <= safeBelow(food).most);
        if (drier) expect(damper!.days).toBeLessThanOrEqual(drier.days);
      }),
    );
  });
});

it('advises the freezer only for what goes there, and against rancid fat only where there is some', () => {
  const words = (foodsIn: StoredFood[], place?: 'freezer') =>
    storageAdvice(foodsIn, place)
      .map((a) => a.sentence)
      .join(' ');
  expect(words([carrot])).not.toMatch(/rancid|frozen jar/);
  expect(words(mix)).toMatch(/rancid/);
  expect(words([{ ...sunflower, share: 0 }, oats])).not.toMatch(/rancid/);
  expect(words(mix, 'freezer')).toMatch(/frozen jar/);
});
