/** A mix as one food that hides nothing unknown, and a problem as the days of a change count it. */
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../../formulation/formulation.ts';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { NutrientLine } from '../../../formulation/problem/result.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { changeOverTo } from '../../../kitchen/feeding/change-over.ts';
import { demoHousehold } from '../../demo.ts';
import { loadReference } from '../../reference-file.ts';
import { dailyGramsOf, isSameFood, mixAsFood, otherMixes, withoutFresh } from './change-over.ts';
import { besideFromOwn, ingredientFromOwn } from './mix-edits.ts';

const parts = { reference: loadReference(), highs: await loadHighs() };
const house = demoHousehold();
const demo = house.mixes[0]!;
const pellet = house.foods[0]!;

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
    const { food, partly } = mixAsFood('m', 'Winter mix', nutrients, 'mix');
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
    expect(mixAsFood('m', 'Winter mix', nutrients, 'ration').food.composition).toEqual({
      PROCNT: 17,
      CA: 500,
    });
  });

  test('a change from a mix to itself leaves every day as it is', () => {
    const formulation = new Formulation(demo.problem, parts);
    const best = formulation.solve();
    if (best.status !== 'optimal') throw new Error('the demonstration mix has no answer');
    const { food } = mixAsFood('m', 'Same', best.nutrients, 'ration');
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

test('other mixes are offered where their shares make a whole', () => {
  const mix = { ...demo, id: 'b' };
  const short = { ...demo, id: 'c', shares: { ...demo.shares, millet: 0 } };
  expect(otherMixes({ mixes: [demo, mix, short] }, demo).map((m) => m.id)).toEqual(['b']);
});
