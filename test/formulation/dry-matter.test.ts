/** Rules on dry matter where the moisture of a food is not known: the end that is worse for the keeper counts. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { draws } from '../draws.ts';

const reference = loadReference();
const highs = await loadHighs();

function posed(json: object) {
  return new Formulation(parseProblem(json, reference).problem, { reference, highs });
}
const OATS = { id: 'oats', ref: 'sr28:20038' };
/** Parts of 60 g, printed rounded: between 0 and 40.5 g of water, so 59.5 to 100 g of dry matter. */
const PARCHED = { id: 'own', composition: { PROCNT: 12, FAT: 5, ASH: 3, CHOCDF: 40 } };
const rule = (bounds: object) => ({ nutrient: 'FAT', basis: 'DM', ...bounds });

test('a ceiling counts unknown moisture as the greatest: what is kept on paper alone is not kept', () => {
  const only = (max: number) => posed({ foods: [PARCHED], rules: [rule({ max })] }).solve().status;
  // 5 g of fat in 59.5 g of dry matter are 8.40 %; with no water it would be 5 %.
  expect(only(5.1)).toBe('infeasible');
  expect(only(8.3)).toBe('infeasible');
  expect(only(8.5)).toBe('optimal');
});

test('a floor counts it as the least', () => {
  const only = (min: number) => posed({ foods: [PARCHED], rules: [rule({ min })] }).solve().status;
  expect(only(8.3)).toBe('infeasible');
  expect(only(5.1)).toBe('infeasible');
  expect(only(4.9)).toBe('optimal');
});

test('a most that the label prints for moisture bounds it; a least too', () => {
  const damp = { ...PARCHED, low: { WATER: 4 }, high: { WATER: 20 } };
  const only = (bounds: object) => posed({ foods: [damp], rules: [rule(bounds)] }).solve().status;
  expect(only({ max: 6.3 })).toBe('optimal');
  expect(only({ max: 6.2 })).toBe('infeasible');
  expect(only({ min: 5.2 })).toBe('optimal');
  expect(only({ min: 5.3 })).toBe('infeasible');
});

test('the rule is listed as unsure with its moisture, in the mix and beside it', () => {
  const problem = {
    foods: [OATS, PARCHED],
    beside: [{ id: 'pellet', share_of_ration: 50, composition: { FAT: 4.5 } }],
    rules: [rule({ max: 90, on: 'ration' }), rule({ max: 90 }), { nutrient: 'FAT', max: 90 }],
  };
  const { unsure } = posed(problem).solve();
  expect(unsure.map((u) => [u.pointer, u.nutrient, u.foods])).toEqual([
    ['/rules/0', 'WATER', ['own', 'pellet']],
    ['/rules/1', 'WATER', ['own']],
  ]);
  expect(unsure[0]!.sentence).toMatch(/^Moisture of own and pellet is not known/);
});

test('moisture that is an estimate counts at its middle and is listed as one', () => {
  const ranged = { ...PARCHED, low: { WATER: 8 }, high: { WATER: 12 } };
  const { estimated, unsure } = posed({ foods: [ranged], rules: [rule({ max: 90 })] }).solve();
  expect(estimated.map((e) => [e.nutrient, e.foods])).toEqual([['WATER', ['own']]]);
  expect(unsure).toEqual([]);
  const lent = {
    ...PARCHED,
    composition: { ...PARCHED.composition, WATER: 10 },
    borrowed: { WATER: 'Oats' },
  };
  expect(posed({ foods: [lent], rules: [rule({ max: 90 })] }).solve().estimated).toHaveLength(1);
});

test('known moisture is in no list', () => {
  const { estimated, unsure } = posed({ foods: [OATS], rules: [rule({ max: 90 })] }).solve();
  expect([...estimated, ...unsure]).toEqual([]);
});

test('a chosen share beside, and what is left when a food is left, count it the same', () => {
  const loose = {
    id: 'pellet',
    share_of_ration: 50,
    share_min: 0,
    share_max: 90,
    composition: { FAT: 4.5, WATER: 10 },
  };
  const chosen = posed({
    foods: [PARCHED],
    beside: [loose],
    rules: [rule({ max: 6, on: 'ration' })],
  }).solve();
  if (chosen.status !== 'optimal') throw new Error('expected a mix');
  // (1 - b) x 5 + b x 4.5 <= 0.06 ((1 - b) x 59.5 + b x 90) holds from b = 1.43 / 2.33 on.
  expect(chosen.beside!.pellet!.share).toBeCloseTo((100 * 1.43) / 2.33, 6);
  const left = posed({ foods: [{ ...OATS, max: 99 }, PARCHED], rules: [rule({ max: 8 })], drop_one: true });
  expect(left.solve().status).toBe('infeasible');
});

test('whatever the moisture really is, a mix that is found keeps the rule', () => {
  // Figures as they are written: what nobody can tell from 0 is 0.
  const upTo = (max: number) => fc.double({ min: 0, max, noNaN: true }).map((v) => (v < 1e-9 ? 0 : v));
  const own = fc.record({ PROCNT: upTo(30), FAT: upTo(30), ASH: upTo(10) });
  let found = 0;
  fc.assert(
    fc.property(
      fc.array(own, { minLength: 2, maxLength: 4 }),
      fc.double({ min: 2, max: 60, noNaN: true }),
      fc.constantFrom('min', 'max'),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 }),
      (foods, bound, side, at) => {
        const problem = {
          foods: foods.map((composition, i) => ({ id: `f${i}`, composition })),
          rules: [rule({ [side]: bound })],
        };
        const formulation = posed(problem);
        const best = formulation.best();
        formulation.dispose();
        if (!best) return;
        found++;
        let [fat, dry] = [0, 0];
        foods.forEach((c, i) => {
          const share = best.shares[`f${i}`]!;
          const water = at[i]! * (100 - c.PROCNT - c.FAT - c.ASH);
          fat += share * c.FAT;
          dry += (share * (100 - water)) / 100;
        });
        const content = fat / dry;
        if (side === 'min') expect(content).toBeGreaterThanOrEqual(bound - 1e-6);
        else expect(content).toBeLessThanOrEqual(bound + 1e-6);
      },
    ),
    { numRuns: draws(2000, 200) },
  );
  expect(found).toBeGreaterThan(draws(2000, 200) / 10);
});
