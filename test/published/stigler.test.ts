/**
 * The diet problem of Stigler 1945 (J. Farm Econ. 27:303-314, Table A): 77 foods, 9 nutrients, one variable per food,
 * the dollars spent on it each day. Figures and their carriers: stigler.json.
 */
import { expect, test } from 'vitest';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { solveLinearWith } from '../../src/formulation/solve/linear-program.ts';
import table from './stigler.json' with { type: 'json' };

const highs = await loadHighs();
const solve = () =>
  solveLinearWith(highs, {
    cost: table.foods.map(() => 1),
    rows: table.nutrients.map((nutrient, i) => ({
      coefficients: table.foods.map((food) => food.perDollar[i]!),
      min: nutrient.dailyMinimum,
    })),
  });

test('the table is whole: 77 foods, 9 nutrients', () => {
  expect(table.foods).toHaveLength(77);
  expect(table.nutrients).toHaveLength(9);
  for (const food of table.foods) expect(food.perDollar, food.name).toHaveLength(9);
});

test('the cheapest diet costs 39.66 dollars of 1939 a year', async () => {
  const { status, objective } = await solve();
  const year = 365 * objective;
  expect(status).toBe('optimal');
  // 39.66: this table solved with an independent solver (glpsol), 365 days.
  expect(Math.abs(year - 39.66)).toBeLessThan(0.005);
  // 39.69: Laderman 1947, by hand with the simplex method (Dantzig 1990, Interfaces 20(4):43-47, from memory).
  expect(year).toBeLessThan(39.69);
  // 39.93: Stigler 1945, by trial and reasoning.
  expect(year).toBeLessThan(39.93);
});

test('it is made of five foods', async () => {
  const { x } = await solve();
  const bought = table.foods.filter((_, i) => x[i]! > 1e-9).map((food) => food.name);
  // Dantzig 1963, Linear Programming and Extensions, ch. 27-1 (from memory); the same with glpsol.
  expect(bought).toEqual([
    'Wheat Flour (Enriched)',
    'Liver (Beef)',
    'Cabbage',
    'Spinach',
    'Navy Beans, Dried',
  ]);
});

test('it meets every allowance', async () => {
  const { x } = await solve();
  table.nutrients.forEach((nutrient, i) => {
    const supplied = table.foods.reduce((sum, food, j) => sum + food.perDollar[i]! * x[j]!, 0);
    expect(supplied, nutrient.name).toBeGreaterThanOrEqual(nutrient.dailyMinimum - 1e-6);
  });
});
