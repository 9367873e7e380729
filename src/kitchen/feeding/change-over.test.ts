/** Plans for a change of food: parts never fall, grams add up, and no plan within the steps is longer in range. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodAmounts } from '../../formulation/amounts/food-amounts.ts';
import { parseProblem } from '../../formulation/problem/parse.ts';
import { Ration } from '../../formulation/solve/bounds.ts';
import { loadReference } from '../../household/reference-file.ts';
import { changeCautions } from './change-cautions.ts';
import { type ChangeOverPlan, changeOver } from './change-over.ts';

const reference = loadReference();

type Composition = Record<string, number>;

/** A ration of two foods at even shares, with or without a pellet, and the old food. */
function posed(old: Composition, mix: Composition, rules: object[], pellet?: Composition, part = 50) {
  const json = {
    foods: [
      { id: 'a', composition: mix },
      { id: 'b', composition: mix },
    ],
    rules,
    beside: pellet ? [{ id: 'pellet', composition: pellet, share_of_ration: part }] : [],
  };
  const { problem } = parseProblem(json, reference);
  const ration = new Ration(
    problem.foods.map((f) => foodAmounts(f, reference)),
    problem.beside.map((b) => ({ food: foodAmounts(b, reference), part: b.share_of_ration / 100 })),
  );
  const was = foodAmounts({ id: 'old', name: 'Old mix', composition: old }, reference);
  return (plan: ChangeOverPlan = {}) =>
    changeOver(problem, ration, [50, 50], was, { dailyGrams: 12, ...plan });
}

describe('a day', () => {
  const content = fc.record({
    PROCNT: fc.double({ min: 8, max: 30, noNaN: true }),
    FAT: fc.double({ min: 2, max: 20, noNaN: true }),
    CA: fc.double({ min: 50, max: 1200, noNaN: true }),
    P: fc.double({ min: 100, max: 900, noNaN: true }),
    WATER: fc.double({ min: 5, max: 14, noNaN: true }),
  });
  const around = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  const setting = fc.record({
    old: content,
    mix: content,
    pellet: content,
    share: around(5, 90),
    protein: around(10, 20),
    fat: around(5, 15),
    ratio: around(0.2, 1.5),
    days: fc.integer({ min: 7, max: 21 }),
    tenths: fc.integer({ min: 20, max: 400 }),
  });

  test('is in range when it says so, by weighing everything up; grams add up to the day', () => {
    let [inside, outside, unlike] = [0, 0, 0];
    fc.assert(
      fc.property(setting, ({ old, mix, pellet, share, protein, fat, ratio, days, tenths }) => {
        const rules = [
          { nutrient: 'PROCNT', min: protein, max: protein + 6, on: 'ration' },
          { nutrient: 'FAT', max: fat, on: 'ration', basis: 'DM' },
          { ratio: ['CA', 'P'], min: ratio, on: 'ration' },
          // Rules on the mix alone do not bind what else is fed.
          { nutrient: 'PROCNT', max: 1, on: 'mix' },
        ];
        const answer = posed(old, mix, rules, pellet, share)({ days, dailyGrams: tenths / 10 });
        const keeps = (fed: { old: number; mix: number; beside: Readonly<Record<string, number>> }) => {
          const sum = (tag: keyof typeof old) =>
            fed.old * old[tag] + fed.mix * mix[tag] + fed.beside.pellet! * pellet[tag];
          const all = fed.old + fed.mix + fed.beside.pellet!;
          const [p, f, r] = [
            sum('PROCNT') / all,
            (100 * sum('FAT')) / (100 * all - sum('WATER')),
            sum('CA') / sum('P'),
          ];
          return [p - protein, protein + 6 - p, fat - f, r - ratio].every((room) => room >= -1e-5);
        };
        let kept = 0;
        let before = Number.POSITIVE_INFINITY;
        for (const day of answer.days) {
          const { parts, grams } = day;
          expect(parts.old + parts.mix + parts.beside.pellet!).toBeCloseTo(1, 12);
          expect(parts.old).toBeCloseTo(1 - day.part, 12);
          expect(parts.beside.pellet!).toBeCloseTo((day.part * share) / 100, 12);
          const steps = [grams.old, grams.mix, grams.beside.pellet!].map((g) => Math.round(g * 10));
          expect(steps.reduce((a, b) => a + b, 0)).toBe(tenths);
          [grams.old, grams.mix, grams.beside.pellet!].forEach((g, k) => {
            expect(g).toBe(steps[k]! / 10);
            expect(steps[k]!).toBeGreaterThanOrEqual(0);
          });
          [parts.old, parts.mix, parts.beside.pellet!].forEach((p, k) => {
            expect(Math.abs(steps[k]! - p * tenths)).toBeLessThan(1.5);
          });
          expect(grams.old).toBeLessThanOrEqual(before);
          before = grams.old;
          if (day.in_range) {
            kept++;
            expect(keeps(parts)).toBe(true);
          } else expect(day.breaches.length).toBeGreaterThan(0);
          if (day.in_range_as_weighed) expect(keeps(grams)).toBe(true);
          if (day.in_range !== day.in_range_as_weighed) unlike++;
        }
        expect(answer.days_in_range).toBe(kept);
        expect(answer.days.at(-1)!.grams.old).toBe(0);
        inside += kept;
        outside += days - kept;
        for (const { pointer, from, to, sentence } of answer.reasons) {
          expect(sentence.startsWith(from === to ? `Day ${from}: ` : `Day ${from} to ${to}: `)).toBe(true);
          for (const day of answer.days)
            expect(day.breaches.some((b) => b.pointer === pointer)).toBe(day.day >= from && day.day <= to);
        }
      }),
      { numRuns: 400 },
    );
    expect(Math.min(inside, outside)).toBeGreaterThan(500);
    expect(unlike).toBeGreaterThan(0);
  });
});

describe('in words', () => {
  const protein = [{ nutrient: 'PROCNT', min: 17, max: 19, on: 'ration' }];

  test('what is out, on which days, and why; then from when on it is in range', () => {
    // In range from a new part of 0.8 on; even steps would reach it on day 8 of 10, steps of twice that on day 4.
    const answer = posed({ PROCNT: 13 }, { PROCNT: 18 }, protein)({ days: 10 });
    expect(answer.days.map((d) => d.in_range)).toEqual([...Array(3).fill(false), ...Array(7).fill(true)]);
    expect(answer.reasons.map((r) => r.sentence)).toEqual([
      'Day 1 to 3: crude protein is below 17 %, since the old food holds 13 %.',
    ]);
    expect(answer.sentence).toBe('In range from day 4 on.');
    expect(answer.days[0]!.breaches[0]!.sentence).toMatch(
      /^Crude protein of the day's food is 14[.\d]* %, below the least allowed, 17 %\.$/,
    );
  });

  test('a new ration that is out, and both', () => {
    const leaving = posed({ PROCNT: 18 }, { PROCNT: 21 }, protein)({ days: 10, mostStep: 0.2 });
    expect(leaving.sentence).toBe('In range from day 1 to day 6 only.');
    expect(leaving.reasons[0]!.sentence).toBe(
      'Day 7 to 10: crude protein is above 19 %, since the new ration holds 21 %.',
    );
    const never = posed({ PROCNT: 21 }, { PROCNT: 22 }, protein)();
    expect(never.sentence).toBe('Out of range on every day.');
    expect(never.reasons[0]!.sentence).toBe(
      'Day 1 to 14: crude protein is above 19 %, since the old food holds 21 % and the new ration holds 22 %.',
    );
    expect(posed({ PROCNT: 17.5 }, { PROCNT: 18 }, protein)().sentence).toBe('In range on every day.');
  });

  test('an amount of the old food that nobody knows is not taken for none', () => {
    const rules = [...protein, { ratio: ['CA', 'P'], min: 1, on: 'ration' }];
    const answer = posed({ PROCNT: 18 }, { PROCNT: 18, CA: 800, P: 500 }, rules)();
    expect(answer.unchecked).toEqual([
      {
        pointer: '/rules/1',
        sentence:
          'Calcium to phosphorus is not checked while the food changes: nobody knows the calcium and phosphorus of the old food.',
      },
    ]);
    expect(answer.sentence).toBe('In range on every day. One rule cannot be checked meanwhile.');
    expect(posed({}, { PROCNT: 18 }, protein)().sentence).toBe(
      'No rule can be asked of these days. One rule cannot be checked meanwhile.',
    );
  });

  test('grams too coarse for the range are told', () => {
    const narrow = [{ nutrient: 'PROCNT', min: 17.7, max: 18.3, on: 'ration' }];
    const make = posed({ PROCNT: 18 }, { PROCNT: 14 }, narrow, { PROCNT: 22 });
    expect(make({ days: 7, stepGrams: 0.1 }).days_in_range).toBe(7);
    const coarse = make({ days: 7, stepGrams: 4 });
    expect(coarse.days.some((d) => !d.in_range_as_weighed)).toBe(true);
    expect(coarse.sentence).toMatch(
      /^In range on every day\. Weighed in steps of 4 g, days? .+ just outside\.$/,
    );
  });

  test('dates go on by the calendar', () => {
    const dates = posed(
      { PROCNT: 18 },
      { PROCNT: 18 },
      protein,
    )({ days: 7, start: '2028-02-26' }).days.map((d) => d.date);
    expect(dates).toEqual([
      '2028-02-26',
      '2028-02-27',
      '2028-02-28',
      '2028-02-29',
      '2028-03-01',
      '2028-03-02',
      '2028-03-03',
    ]);
    expect(posed({ PROCNT: 18 }, { PROCNT: 18 }, protein)().days[0]).not.toHaveProperty('date');
  });

  test('the cautions come along, each with its standing', () => {
    const { cautions } = posed({ PROCNT: 18 }, { PROCNT: 18 }, protein)();
    expect(cautions).toEqual(changeCautions());
    expect(cautions.map((c) => c.sentence).join(' ')).toMatch(/slowly.*droppings.*Weigh.*go back.*vet/);
    for (const c of cautions) expect(c.source).toMatch(/common practice, no source; not veterinary advice/);
  });
});

describe('bad input', () => {
  const make = posed({ PROCNT: 18 }, { PROCNT: 18 }, []);
  test.each([
    [{ days: 3 }, /^days: 3 .*7 to 21/],
    [{ days: 8.5 }, /^days: 8.5/],
    [{ firstMost: 0 }, /^firstMost: 0/],
    [{ days: 10, mostStep: 0.05 }, /^mostStep: 0.05/],
    [{ days: 10, firstMost: 0.05, mostStep: 0.1 }, /^mostStep: .*more than 10 days/],
    [{ dailyGrams: Number.NaN }, /^dailyGrams: NaN/],
    [{ dailyGrams: 11.3, stepGrams: 0.5 }, /^dailyGrams: 11.3 g is no whole number of 0.5 g steps/],
    [{ stepGrams: 0 }, /^stepGrams: 0/],
    [{ start: '2026-02-30' }, /^start: "2026-02-30"/],
    [{ start: 'soon' }, /^start: "soon"/],
  ] satisfies [ChangeOverPlan, RegExp][])('%j is told by field, value and way out', (plan, message) => {
    expect(() => make(plan)).toThrow(message);
  });
});
