import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { SPECIES_KINDS } from '../animal/species.ts';
import type { Condition } from '../model.ts';
import { type AmountQuestion, dailyAmount, standingOf } from './daily-amount.ts';
import { type RationEnergy, rationEnergy } from './ration-energy.ts';

const energy: RationEnergy = { kcal: { low: 3, high: 3.2 }, dry: { low: 0.9, high: 0.92 }, missing: [] };
const asked: AmountQuestion = {
  kind: 'golden',
  lifeStage: 'adult',
  conditions: [],
  weight: 150,
  energy,
};
const amount = (about: Partial<AmountQuestion> = {}) => dailyAmount({ ...asked, ...about });
const is = (what: Condition['what'], more: Partial<Condition> = {}): Condition => ({
  what,
  since: '2026-03-01',
  ...more,
});

const kinds = fc.constantFrom(...SPECIES_KINDS);
const stages = fc.constantFrom('adult', 'growing', 'breeding', 'old' as const);
const weights = fc.double({ min: 5, max: 800, noNaN: true });
const energies = fc
  .record({
    low: fc.double({ min: 1, max: 5, noNaN: true }),
    wider: fc.double({ min: 1, max: 1.49, noNaN: true }),
    dry: fc.double({ min: 0.3, max: 1, noNaN: true }),
    less: fc.double({ min: 0.5, max: 1, noNaN: true }),
  })
  .map(
    ({ low, wider, dry, less }): RationEnergy => ({
      kcal: { low, high: low * wider },
      dry: { low: dry * less, high: dry },
      missing: [],
    }),
  );
const runs = { numRuns: draws(2_000, 100) };

describe('the range by energy', () => {
  test('rises with body weight, whatever the kind and the stage', () => {
    fc.assert(
      fc.property(kinds, stages, weights, weights, energies, (kind, lifeStage, a, b, e) => {
        fc.pre(Math.abs(a - b) > 0.001);
        const [light, heavy] = [Math.min(a, b), Math.max(a, b)].map(
          (weight) => amount({ kind, lifeStage, weight, energy: e }).equation!,
        );
        expect(heavy!.fed.low).toBeGreaterThan(light!.fed.low);
        expect(heavy!.fed.high).toBeGreaterThan(light!.fed.high);
      }),
      runs,
    );
  });

  test('is a range, holds no more dry matter than food, and narrows as more of the food is known', () => {
    fc.assert(
      fc.property(kinds, stages, weights, energies, (kind, lifeStage, weight, e) => {
        const { fed, dry, energy: kJ } = amount({ kind, lifeStage, weight, energy: e }).equation!;
        expect(fed.low).toBeLessThan(fed.high);
        expect(dry.low).toBeLessThanOrEqual(fed.low);
        expect(dry.high).toBeLessThanOrEqual(fed.high);
        expect(kJ.low).toBeLessThan(kJ.high);
        const middle = (e.kcal.low + e.kcal.high) / 2;
        const sure = { ...e, kcal: { low: middle, high: middle } };
        const narrower = amount({ kind, lifeStage, weight, energy: sure }).equation!.fed;
        expect(narrower.low).toBeGreaterThanOrEqual(fed.low - 1e-9);
        expect(narrower.high).toBeLessThanOrEqual(fed.high + 1e-9);
      }),
      runs,
    );
  });

  test('halves where the food holds twice the energy', () => {
    const twice = { ...energy, kcal: { low: 6, high: 6.4 } };
    const [once, half] = [amount(), amount({ energy: twice })].map((a) => a.equation!.fed);
    expect(half!.low).toBeCloseTo(once!.low / 2, 9);
    expect(half!.high).toBeCloseTo(once!.high / 2, 9);
  });

  test('is an estimate, and wider, for kinds it was carried over to; no weight changes which', () => {
    const width = (kind: AmountQuestion['kind'], weight: number) => {
      const { fed, estimate } = amount({ kind, weight }).equation!;
      return { estimate, factor: fed.high / fed.low };
    };
    expect(width('golden', 40)).toMatchObject({ estimate: false });
    expect(width('campbells', 40)).toMatchObject({ estimate: true });
    expect(width('campbells', 40).factor).toBeGreaterThan(width('golden', 40).factor);
    // Where it was carried over from, nothing is added.
    expect(width('other', 150).factor).toBeCloseTo(width('golden', 150).factor, 9);
  });

  test('is as large for the young, and larger while pregnant and nursing; what is over no longer counts', () => {
    const high = (about: Partial<AmountQuestion>) => amount(about).equation!.fed.high;
    const plain = high({});
    expect(high({ lifeStage: 'growing' })).toBeCloseTo(2 * plain, 9);
    expect(high({ conditions: [is('pregnant')] })).toBeCloseTo(1.3 * plain, 9);
    expect(high({ conditions: [is('nursing', { young: 6 })] })).toBeCloseTo(4 * plain, 9);
    expect(high({ lifeStage: 'breeding' })).toBeCloseTo(4 * plain, 9);
    expect(high({ conditions: [is('nursing', { until: '2026-03-09' })] })).toBe(plain);
    expect(high({ lifeStage: 'old' })).toBe(plain);
  });
});

describe('what is not known', () => {
  test('is said, and the common rule stands alone', () => {
    const { weight: _, ...unweighed } = asked;
    expect(dailyAmount(unweighed)).toMatchObject({ missing: ['weight'] });
    const { energy: __, ...unknown } = unweighed;
    const told = dailyAmount(unknown);
    expect(told.missing).toEqual(['weight', 'energy']);
    expect(told.equation).toBeUndefined();
    expect(told.intake).toBeUndefined();
    expect(told.common.map((c) => c.source)).toEqual(['handouts', 'practice']);
  });

  test('energy known only between bounds far apart is not known', () => {
    expect(amount({ energy: { ...energy, kcal: { low: 2, high: 3.1 } } }).missing).toEqual(['energy']);
    expect(amount({ energy: { ...energy, kcal: { low: 0, high: 3.1 } } }).missing).toEqual(['energy']);
    expect(amount({ energy: { ...energy, kcal: { low: 2, high: 3 } } }).missing).toEqual([]);
  });

  test('dry matter eaten becomes no grams of food while its water is not known', () => {
    const { intake } = amount({ energy: { ...energy, missing: ['WATER'] } });
    expect(intake).toMatchObject({ dry: 8.55 });
    expect(intake!.fed).toBeUndefined();
  });

  test('rules and intake are of grown animals; none is made up for other kinds', () => {
    for (const about of [{ lifeStage: 'growing' as const }, { conditions: [is('nursing')] }]) {
      expect(amount(about).common).toEqual([]);
      expect(amount(about).intake).toBeUndefined();
    }
    expect(amount({ kind: 'chinese', weight: 35 })).toMatchObject({ common: [] });
    expect(amount({ kind: 'chinese', weight: 35 }).intake).toBeUndefined();
  });

  test('no weight is refused, not reckoned with', () => {
    for (const weight of [0, -5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => amount({ weight })).toThrow(/^weight: /);
  });
});

describe('what raises it', () => {
  test('is told with figures where there are any, in words where there are none', () => {
    expect(amount().raises).toEqual([]);
    expect(amount({ wheel: false }).raises).toEqual([]);
    const [wheel, cold] = amount({ wheel: true, room: 12 }).raises;
    expect(wheel).toMatchObject({ what: 'wheel', times: { low: 1, high: 2 } });
    expect(cold).toEqual({ what: 'cold', sources: [] });
    const nursing = amount({ room: 12, conditions: [is('nursing', { young: 5 })] }).raises;
    expect(nursing).toMatchObject([
      { what: 'nursing', young: 5, times: { high: 4 } },
      { what: 'cold', times: { low: 1 } },
    ]);
    expect(nursing[1]!.times!.high).toBeCloseTo(1.117, 3);
    expect(amount({ kind: 'winter-white', weight: 35, room: 5 }).raises[0]!.sources.join()).toContain(
      'Weiner',
    );
    const winter = amount({ kind: 'winter-white', weight: 35, conditions: [is('nursing')] }).raises[0]!;
    expect(winter.sources.join()).toContain('538 % more');
    expect(amount({ lifeStage: 'breeding' }).raises.map((r) => r.what)).toEqual(['pregnant', 'nursing']);
  });
});

test('where the fed grams lie against the range', () => {
  const told = amount();
  const { low, high } = told.equation!.fed;
  expect(standingOf(low - 0.01, told)).toBe('under');
  expect(standingOf(low, told)).toBe('within');
  expect(standingOf(high, told)).toBe('within');
  expect(standingOf(high + 0.01, told)).toBe('over');
  expect(standingOf(9, {})).toBeUndefined();
  // A wheel may take it to twice as much.
  const runs = amount({ wheel: true });
  expect(told.equation!.raisedTo).toBeUndefined();
  expect(runs.equation!.raisedTo).toBeCloseTo(2 * high, 9);
  expect(standingOf(2 * high - 0.01, runs)).toBe('within');
  expect(standingOf(2 * high + 0.01, runs)).toBe('over');
  expect(standingOf(low - 0.01, runs)).toBe('under');
});

describe('energy of what is fed', () => {
  const part = fc.double({ min: 0, max: 25, noNaN: true });
  const spans = fc.tuple(part, part).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));

  test('lies between its bounds, whatever the unknown amounts turn out to be', () => {
    fc.assert(
      fc.property(
        fc.array(spans, { minLength: 4, maxLength: 4 }),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (bounds, at) => {
          const [WATER, FAT, FIBC, ASH] = bounds.map((b) => ({ ...b, coverage: 50 }));
          const told = rationEnergy({ WATER, FAT, FIBC, ASH })!;
          const [water, fat, fibre, ash] = bounds.map(({ low, high }, i) => low + (high - low) * at[i]!);
          fc.pre(water! + fat! + fibre! + ash! <= 100);
          const kcal = (3.5 * (100 - water! - fat! - fibre! - ash!) + 8.5 * fat!) / 100;
          expect(kcal).toBeGreaterThanOrEqual(told.kcal.low - 1e-9);
          expect(kcal).toBeLessThanOrEqual(told.kcal.high + 1e-9);
          expect(1 - water! / 100).toBeGreaterThanOrEqual(told.dry.low - 1e-9);
          expect(1 - water! / 100).toBeLessThanOrEqual(told.dry.high + 1e-9);
        },
      ),
      runs,
    );
  });

  test('names what is not known of all of it, and is none where nothing is', () => {
    const line = (coverage: number) => ({ low: 5, high: 6, coverage });
    expect(
      rationEnergy({ WATER: line(100), FAT: line(99.6), FIBC: line(40), ASH: line(0) })!.missing,
    ).toEqual(['FIBC', 'ASH']);
    expect(rationEnergy({ WATER: line(100), FAT: line(100), FIBC: line(100) })).toBeUndefined();
  });
});
