/** The change-over as it is read and weighed: blends that hide nothing unknown, columns that add up to the day. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../../../formulation/formulation.ts';
import type { Beside, Ingredient } from '../../../../formulation/problem/problem.ts';
import type { NutrientLine } from '../../../../formulation/problem/result.ts';
import { loadHighs } from '../../../../formulation/solve/highs.ts';
import { demoHousehold } from '../../../../household/demo.ts';
import { besideFromOwn, ingredientFromOwn } from '../../../../household/reckon/mix-edits.ts';
import { loadReference } from '../../../../household/reference-file.ts';
import { changeOverTo } from '../../../../kitchen/feeding/change-over.ts';
import {
  blendOf,
  dailyFault,
  dailyGramsOf,
  isSameFood,
  otherMixes,
  planColumns,
  shortDay,
  standingOf,
  withoutFresh,
} from './change-over.ts';

const parts = { reference: loadReference(), highs: await loadHighs() };
const house = demoHousehold();
const demo = house.mixes[0]!;
const pellet = house.foods[0]!;
const name = (f: Ingredient | Beside) => f.name ?? f.id;

const line = (part: Partial<NutrientLine>): NutrientLine => ({
  mix: 0,
  ration: 0,
  low: 0,
  high: 0,
  coverage: 100,
  low_mix: 0,
  high_mix: 0,
  coverage_mix: 100,
  sd_mix: 0,
  sd_ration: 0,
  ...part,
});

describe('a mix as one food', () => {
  const nutrients = {
    PROCNT: line({ mix: 18, ration: 17 }),
    CA: line({ mix: 90, low_mix: 90, high_mix: 400, coverage_mix: 60, ration: 500 }),
    VITE: line({ coverage_mix: 0, coverage: 0, high: 3, high_mix: 3 }),
  };

  test('what is known of a part of it is a bound, what is known of none of it is no figure at all', () => {
    const { food, partly } = blendOf('m', 'Winter mix', nutrients, 'mix');
    expect(food).toEqual({
      id: 'm',
      name: 'Winter mix',
      composition: { PROCNT: 18 },
      low: { CA: 90 },
      high: { CA: 400 },
    });
    expect(partly).toEqual(['CA']);
  });

  test('with what is fed beside it, the figures are those of the ration', () => {
    expect(blendOf('m', 'Winter mix', nutrients, 'ration').food.composition).toEqual({ PROCNT: 17, CA: 500 });
  });

  test('a change from a mix to itself leaves every day as it is', () => {
    const formulation = new Formulation(demo.problem, parts);
    const best = formulation.solve();
    if (best.status !== 'optimal') throw new Error('the demonstration mix has no answer');
    const { food } = blendOf('m', 'Same', best.nutrients, 'ration');
    const plan = changeOverTo(formulation, best.shares, food, { dailyGrams: 12, days: 7 });
    formulation.dispose();
    expect(plan.days_in_range).toBe(7);
    expect(plan.reasons).toEqual([]);
  });
});

describe('fresh food', () => {
  const cucumber: Beside = {
    id: 'cucumber',
    share_of_ration: 20,
    counts_as: 'air dry',
    composition: { WATER: 95, PROCNT: 0.7 },
  };
  const with20 = { ...demo.problem, beside: [{ ...demo.problem.beside[0]!, share_of_ration: 40 }, cucumber] };

  test('is left out, and the rest keeps its proportions', () => {
    const { problem, fresh } = withoutFresh(with20, undefined);
    expect(fresh.map((f) => f.id)).toEqual(['cucumber']);
    // 40 of pellet and 40 of mix: half and half.
    expect(problem.beside.map((b) => [b.id, b.share_of_ration])).toEqual([['demo-pellet', 50]]);
  });

  test('a share that was chosen counts, and its bounds do so no more', () => {
    const open = {
      ...with20,
      beside: with20.beside.map((b, i) => (i === 0 ? { ...b, share_min: 30, share_max: 60 } : b)),
    };
    const [fixed] = withoutFresh(open, { 'demo-pellet': { share: 60, span: [30, 60] } }).problem.beside;
    expect(fixed).toMatchObject({ share_of_ration: 75 });
    expect(fixed).not.toHaveProperty('share_min');
  });

  test('grams a day written instead of a share count as that share', () => {
    const grams = {
      ...demo.problem,
      daily_grams: 12,
      beside: [{ ...demo.problem.beside[0]!, grams_a_day: 3 }],
    };
    expect(withoutFresh(grams, undefined).problem.beside[0]!.share_of_ration).toBe(25);
  });

  test('without any, only wishes and other rules go', () => {
    const { problem, fresh } = withoutFresh({ ...demo.problem, drop_one: true, confidence: 0.9 }, undefined);
    expect(fresh).toEqual([]);
    expect(problem.beside).toEqual(demo.problem.beside);
    expect(problem).not.toHaveProperty('drop_one');
    expect(problem.rules.every((r) => 'nutrient' in r || 'ratio' in r)).toBe(true);
  });
});

describe('the columns', () => {
  const formulation = new Formulation(demo.problem, parts);
  const best = formulation.solve();
  if (best.status !== 'optimal') throw new Error('the demonstration mix has no answer');
  const old = ingredientFromOwn(pellet);

  test('the present food that is also fed beside is one weight, and every day adds up', () => {
    const plan = changeOverTo(formulation, best.shares, old, { dailyGrams: 12, days: 10, stepGrams: 0.5 });
    const columns = planColumns(old, 'First mix', demo.problem.beside, name);
    expect(columns.map((c) => [c.name, c.kind, c.both])).toEqual([
      ['Invented pellet', 'old', true],
      ['First mix', 'mix', false],
    ]);
    for (const day of plan.days) {
      expect(columns.reduce((sum, c) => sum + c.grams(day), 0)).toBeCloseTo(12, 9);
      expect(columns.reduce((sum, c) => sum + c.part(day), 0)).toBeCloseTo(1, 9);
    }
    expect(columns[0]!.grams(plan.days.at(-1)!)).toBe(6);
  });

  test('whatever is fed now, for however long, every day adds up', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 7, max: 21 }),
        fc.constantFrom(0.1, 0.5, 1, 2),
        fc.integer({ min: 2, max: 20 }),
        fc.boolean(),
        (days, step, steps, same) => {
          const from = same ? old : { id: 'oats', name: 'Oats', ref: 'sr28:20038' };
          const daily = Number((step * steps).toPrecision(12));
          const plan = changeOverTo(formulation, best.shares, from, {
            dailyGrams: daily,
            days,
            stepGrams: step,
          });
          const columns = planColumns(from, 'M', demo.problem.beside, name);
          expect(columns).toHaveLength(same ? 2 : 3);
          for (const day of plan.days)
            expect(columns.reduce((sum, c) => sum + c.grams(day), 0)).toBeCloseTo(daily, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('foods are the same by id, or by number where neither has figures of its own', () => {
    expect(isSameFood(old, besideFromOwn(pellet, 50))).toBe(true);
    expect(isSameFood({ id: 'a', ref: 'sr28:20038' }, { id: 'b', ref: 'sr28:20038' })).toBe(true);
    expect(
      isSameFood({ id: 'a', ref: 'sr28:20038' }, { id: 'b', ref: 'sr28:20038', composition: { FAT: 1 } }),
    ).toBe(false);
    expect(isSameFood({ id: 'a' }, { id: 'b' })).toBe(false);
  });
});

test('grams a day come from the mix, else from the first animal that has any, else from nowhere', () => {
  const bramble = house.animals[0]!;
  expect(dailyGramsOf({ ...demo.problem, daily_grams: 9 }, [bramble])).toMatchObject({ grams: 9 });
  expect(dailyGramsOf(demo.problem, [{ ...bramble, dailyGrams: undefined }, bramble])).toEqual({
    grams: 12,
    from: 'what Bramble is fed',
  });
  expect(dailyGramsOf(demo.problem, [])).toBeUndefined();
});

test('grams that the scale cannot show are named with the nearest that it can', () => {
  expect(dailyFault(12, 1)).toBeUndefined();
  expect(dailyFault(0.3, 0.1)).toBeUndefined();
  expect(dailyFault(12.5, 1)).toBe(
    '12.5 g is no whole number of 1 g steps: take 12 g or 13 g, or a finer scale step.',
  );
  expect(dailyFault(0.4, 1)).toContain('take 1 g,');
});

test('other mixes are offered where their shares make a whole', () => {
  const mix = { ...demo, id: 'b' };
  const short = { ...demo, id: 'c', shares: { ...demo.shares, millet: 0 } };
  expect(otherMixes({ mixes: [demo, mix, short] }, demo).map((m) => m.id)).toEqual(['b']);
});

test('a day that only the rounding takes out is told apart', () => {
  expect(standingOf({ in_range: true, in_range_as_weighed: true })).toBe('fine');
  expect(standingOf({ in_range: false, in_range_as_weighed: true })).toBe('fine');
  expect(standingOf({ in_range: true, in_range_as_weighed: false })).toBe('near');
  expect(standingOf({ in_range: false, in_range_as_weighed: false })).toBe('breaks');
});

test('a date is said as on a kitchen calendar', () => {
  expect(shortDay('2026-12-01')).toBe('Tue 1 Dec');
});
