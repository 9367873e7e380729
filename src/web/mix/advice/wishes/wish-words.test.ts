/** Wishes and counting rules in words, and what is wrong with one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIMS, least, mix, most, read, wished } from '../../../../../test/mix/wishes.ts';
import type { CountRule } from '../../../../formulation/problem/problem.ts';
import { patchFood, refuse, withProblem } from '../../../../household/reckon/mix/mix-edits.ts';
import { addCount, measurable } from '../../../../household/reckon/mix/wishes.ts';
import { countFault, countWords } from './count-words.ts';
import { aimFault, aimLacks, aimWords, gapWords, measuredFrom, valueWords } from './wish-words.ts';

const nameOf = (id: string) => mix.problem.foods.find((f) => f.id === id)?.name ?? id;

describe('wishes', () => {
  it('are said in plain words', () => {
    expect(AIMS.map((a) => aimWords(a, nameOf))).toEqual([
      'As much of the liked foods as possible',
      'Use what is at home',
      'Few foods',
      'Few foods to buy',
      'Less fat in the whole ration',
      'Less fat in the mix',
      'A greater share of vegetables',
      'A smaller share of Linseed',
    ]);
    expect(valueWords({ aim: 'liked' }, 34.21)).toBe('34.2 % of the mix');
    expect(valueWords({ aim: 'few' }, 1)).toBe('1 food');
    expect(valueWords({ aim: 'few to buy' }, 3)).toBe('3 foods to buy');
    expect(valueWords({ aim: 'cheap' }, 4.2)).toBe('€4.20 per kg');
    expect(valueWords({ aim: 'less', nutrient: 'CA', on: 'ration' }, 640.4)).toBe(
      '640 mg in 100 g of the whole ration',
    );
    expect(valueWords({ aim: 'more', group: 'vegetable' }, 30)).toBe('30 % of the mix');
  });

  it('are refused where they stand already, contradict one another or cannot be worked out', () => {
    const { problem } = wished(AIMS.slice(0, 5));
    expect(aimFault(problem, { aim: 'liked' }, nameOf)).toContain('is wished already');
    expect(aimFault(problem, { aim: 'more', nutrient: 'FAT', on: 'ration' }, nameOf)).toContain('opposite');
    expect(aimFault(problem, { aim: 'more', nutrient: 'FAT' }, nameOf)).toBeUndefined();
    expect(aimFault(problem, { aim: 'cheap' }, nameOf)).toContain('price of every food');
    const priced = withProblem(mix, { foods: mix.problem.foods.map((f) => ({ ...f, price_per_kg: 3 })) });
    expect(aimFault(priced.problem, { aim: 'cheap' }, nameOf)).toBeUndefined();
    const full = { ...problem, aims: Array.from({ length: 20 }, () => ({ aim: 'few' }) as const) };
    expect(aimFault(full, { aim: 'liked' }, nameOf)).toContain('20 wishes are the most');
  });

  it('say what they lack until something is liked, or in the cupboard', () => {
    expect(aimLacks(mix.problem, { aim: 'liked' }, nameOf)).toContain('Tick “Liked”');
    const liked = patchFood(mix, 'maize', { liked: true });
    expect(aimLacks(liked.problem, { aim: 'liked' }, nameOf)).toBeUndefined();
    expect(aimLacks(refuse(liked, 'maize', true).problem, { aim: 'liked' }, nameOf)).toBeDefined();
    expect(aimLacks(mix.problem, { aim: 'few to buy' }, nameOf)).toContain('at home');
    const stocked = patchFood(mix, 'maize', { on_hand_grams: 80 });
    expect(aimLacks(stocked.problem, { aim: 'cupboard' }, nameOf)).toBeUndefined();
  });

  it('may be of the nutrients that rules name, of all others, of groups and of foods', () => {
    const { ruled, other, groups } = measurable(mix.problem);
    expect(ruled).toEqual(['PROCNT', 'FAT', 'FIBC']);
    expect(other).toContain('CA');
    expect(other).not.toContain('FAT');
    expect(groups).toEqual(['seed', 'vegetable', 'legume', 'animal']);
    expect(measuredFrom('n FAT', 'mix')).toEqual({ nutrient: 'FAT', on: 'mix' });
    expect(measuredFrom('g seed', 'mix')).toEqual({ group: 'seed' });
    expect(measuredFrom('f maize', 'mix')).toEqual({ food: 'maize' });
  });
});

describe('rules that count', () => {
  it('whatever is not faulted can be read by the formulation', () => {
    const whole = fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined });
    // A share as it is typed: what nobody can tell from 0 is 0.
    const share = fc.double({ min: 0, max: 100, noNaN: true }).map((v) => (v < 1e-9 ? 0 : v));
    const at_least = fc.option(share, { nil: undefined });
    const group = fc.constantFrom(undefined, 'seed', 'animal');
    fc.assert(
      fc.property(whole, whole, at_least, group, (min, max, each, g) => {
        const rule: CountRule = { count: { group: g, at_least: each }, min, max };
        fc.pre(countFault(mix.problem, rule) === undefined);
        expect(() => read(addCount(mix, rule).problem)).not.toThrow();
      }),
    );
  });

  it('that no mix can keep are refused with the numbers in words', () => {
    const fault = (rule: CountRule) => countFault(mix.problem, rule);
    expect(fault(least)).toBeUndefined();
    expect(fault(most)).toBeUndefined();
    expect(fault({ count: { at_least: 6 }, min: 18 })).toContain('108 %');
    expect(fault({ count: { at_least: 1 }, min: 21 })).toContain('has 20 foods');
    expect(fault({ count: { at_least: 1, group: 'animal' }, min: 3 })).toContain('2 foods of animal protein');
    expect(fault({ count: {}, min: 3 })).toContain('above 0 %');
    expect(fault({ count: { at_least: 1 } })).toContain('how many');
    expect(fault({ count: { at_least: 1 }, min: 4, max: 3 })).toContain('cannot both');
    expect(fault({ count: {}, max: 0 })).toContain('1 or more');
    expect(fault({ count: { group: 'seed' }, max: 0 })).toBeUndefined();
  });

  it('are said in plain words', () => {
    expect(countWords(least)).toBe('At least 18 foods with 3 % each');
    expect(countWords(most)).toBe('At most 4 of seeds and grains');
    expect(countWords({ ...least, max: 20 })).toBe('At least 18 foods with 3 % each and at most 20 foods');
  });
});

describe('what is not proven', () => {
  it('is said only where a gap is left', () => {
    expect(gapWords('nearest', 80, undefined)).toBeUndefined();
    expect(gapWords('nearest', 80, 0)).toBeUndefined();
    expect(gapWords('nearest', 80, 2)).toContain('up to 2.5 % away');
    expect(gapWords('cheapest', 420, 12)).toContain('up to €0.12 per kg less');
  });
});
