/** Fresh foods of a dry mix and their dried forms. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { problemOf } from '../../../../test/formulation/problem-of.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../model.ts';
import { loadReference } from '../../reference-file.ts';
import { freshFoods, homeDried, measuredDried, withDriedForms } from './dry-fresh.ts';

const reference = loadReference();
const rows = ['sr28:11124', 'sr28:11683', 'sr28:09003', 'sr28:09009', 'sr28:08120', 'sr28:11205'];
const known = new Map(rows.map((ref) => [ref, reference.get(ref)!]));
const carrot: Ingredient = { id: 'carrot', name: 'Carrot', ref: 'sr28:11124', group: 'vegetable', want: 4 };
const oats: Ingredient = { id: 'oats', name: 'Rolled oats', ref: 'sr28:08120', group: 'seed' };
const apple: Ingredient = { id: 'apple', name: 'Apple', ref: 'sr28:09003', max: 5, price_per_kg: 3 };
const named = (fresh: string) => `${fresh}, dried`;

const mixOf = (...foods: Ingredient[]): Mix => ({
  id: 'm',
  name: 'Mix',
  animalIds: [],
  profileId: 'p',
  problem: problemOf({ foods, rules: [{ food: 'apple', max: 4 }], aims: [{ aim: 'more', food: 'apple' }] }),
  shares: Object.fromEntries(foods.map((f) => [f.id, 100 / foods.length])),
  held: ['apple'],
  updatedAt: '2026-01-01T00:00:00.000Z',
});

test('fresh is what holds more water than dried fruit does; what nobody measured is not', () => {
  const dried = { id: 'dried', ref: 'sr28:09009' };
  const unknown = { id: 'unknown', composition: { PROCNT: 3 } };
  const own = { id: 'own', composition: { WATER: 85 } };
  const out = { ...carrot, id: 'out', refused: true };
  const { problem } = mixOf(carrot, oats, dried, unknown, own, out);
  expect(freshFoods(problem, known).map((f) => f.id)).toEqual(['carrot', 'own']);
});

test('a food measured dried takes its place with all that was asked of it', () => {
  const mix = withDriedForms(mixOf(carrot, oats), known, named);
  expect(measuredDried(mixOf(carrot, oats).problem)).toEqual(['sr28:11683']);
  expect(mix.problem.foods[0]).toMatchObject({ ref: 'sr28:11683', group: 'vegetable', want: 4 });
  expect(mix.problem.foods[0]).not.toHaveProperty('composition');
  expect(mix.shares[mix.problem.foods[0]!.id]).toBe(50);
  expect(freshFoods(mix.problem, known)).toEqual([]);
});

test('any other is worked out from its dry matter; rules, wishes and holds about it go along, its price does not', () => {
  const mix = withDriedForms(mixOf(apple, oats), known, named);
  const [food] = mix.problem.foods;
  expect(food).toMatchObject({ id: 'apple-dried', name: 'Apple, dried', max: 5, composition: { WATER: 10 } });
  expect(food).not.toHaveProperty('price_per_kg');
  expect(food).not.toHaveProperty('ref');
  const fresh = known.get('sr28:09003')!;
  const factor = 90 / (100 - fresh.composition.WATER!);
  expect(food!.composition!.FIBTG).toBeCloseTo(fresh.composition.FIBTG! * factor, 6);
  // The table counts protein with a factor of its own; what is written here counts as crude protein.
  const crude = fresh.composition.PROCNT! * (6.25 / (fresh.proteinFactor ?? 6.25)) * factor;
  expect(food!.composition!.PROCNT).toBeCloseTo(crude, 6);
  expect(mix.problem.rules).toEqual([{ food: 'apple-dried', max: 4 }]);
  expect(mix.problem.aims).toEqual([{ aim: 'more', food: 'apple-dried' }]);
  expect(mix.held).toEqual(['apple-dried']);
});

test('the kitchen learns that each is dried at home, of which fresh food; what it knew stays', () => {
  const knew = { food: 'apple-dried', fresh: 'sr28:09003', moisture: 14 };
  expect(homeDried(mixOf(carrot, apple, oats), known, named, [knew])).toEqual([
    knew,
    { food: 'sr28-11683', fresh: 'sr28:11124', moisture: 10 },
  ]);
  const there = { id: 'there', ref: 'sr28:11683' };
  expect(homeDried(mixOf(carrot, there), known, named, [])[0]?.food).toBe('there');
});

test('where the dried food is in the mix already, the share joins it', () => {
  const dried = { id: 'there', ref: 'sr28:11683' };
  const mix = withDriedForms(mixOf(carrot, dried), known, named);
  expect(mix.problem.foods).toEqual([dried]);
  expect(mix.shares).toEqual({ there: 100 });
});

test('whatever the fresh food holds, drying leaves no fresh food and keeps its dry matter and the sum of the shares', () => {
  const amount = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
  fc.assert(
    fc.property(
      fc.double({ min: 41, max: 98, noNaN: true }),
      amount(1),
      amount(1),
      fc.double({ min: 1, max: 99, noNaN: true }),
      (water, protein, fat, share) => {
        const dry = 100 - water;
        const own = {
          id: 'own',
          composition: { WATER: water, PROCNT: dry * protein * 0.5, FAT: dry * fat * 0.5 },
        };
        const before = { ...mixOf(own, oats), shares: { own: share, oats: 100 - share } };
        const { problem, shares } = withDriedForms(before, known, named);
        const { composition } = problem.foods[0]!;
        expect(freshFoods(problem, known)).toEqual([]);
        expect(composition!.PROCNT! / (100 - composition!.WATER!)).toBeCloseTo(protein * 0.5, 6);
        expect(Object.values(shares).reduce((a, b) => a + b, 0)).toBeCloseTo(100, 9);
      },
    ),
    { numRuns: draws(500, 50) },
  );
});
