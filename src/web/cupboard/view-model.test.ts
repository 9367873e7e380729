import { describe, expect, it } from 'vitest';
import { demoHousehold } from '../../household/demo.ts';
import type { FoodLots } from '../../household/reckon/cupboard/lots-by-food.ts';
import { lotsByFood } from '../../household/reckon/cupboard/lots-by-food.ts';
import type { Lot } from '../../kitchen/model.ts';
import { SHORT, shelvesOf, withLinesOnly } from './view-model.ts';

const DAY = '2026-03-10';

/** So many lots, every other one used up by a drying run, in two foods by turns. */
function shelf(lots: number): FoodLots[] {
  const kept = Array.from(
    { length: lots },
    (_, i): Lot => ({
      id: `lot-${i}`,
      food: i % 3 === 0 ? 'millet' : 'rolled-oats',
      name: i % 3 === 0 ? `Millet ${i}` : `Oats ${i}`,
      grams: 100,
      form: 'dry',
      boughtOn: `20${10 + (i % 10)}-01-01`,
      frozen: false,
      cold: [],
    }),
  );
  const runs = kept
    .filter((_, i) => i % 2 === 1)
    .map(({ id }, i) => ({
      ...{ id: `run-${i}`, lot: id, device: 'oven' as const, celsius: 60, trays: 1, gramsBefore: 100 },
      ...{ startedAt: '2026-01-01T08:00:00Z', checks: [] },
    }));
  return lotsByFood({ ...demoHousehold(), lots: kept, dryingRuns: runs }, DAY);
}

const ids = (foods: readonly FoodLots[]) => foods.flatMap((f) => f.lots).map((l) => l.lot.id);

describe('shelvesOf', () => {
  it('leaves a short list as it is', () => {
    const all = shelf(SHORT);
    expect(shelvesOf(all, 'whatever')).toEqual({ foods: all, usedUp: [] });
  });

  it('parts a long one: what holds something with its food, what is used up behind, the newest first; none lost', () => {
    const all = shelf(200);
    const { foods, usedUp } = shelvesOf(all, '');
    expect(foods.flatMap((f) => f.lots).every((l) => l.grams > 0)).toBe(true);
    expect(usedUp.every((l) => l.grams === 0)).toBe(true);
    expect([...ids(foods), ...usedUp.map((l) => l.lot.id)].sort()).toEqual([...ids(all)].sort());
    const bought = usedUp.map((l) => l.lot.boughtOn);
    expect(bought).toEqual([...bought].sort().reverse());
  });

  it('finds lots by their names and by that of their food', () => {
    const all = shelf(200);
    expect(new Set(shelvesOf(all, ' MILLET ').foods.map((f) => f.food))).toEqual(new Set(['millet']));
    const { foods, usedUp } = shelvesOf(all, 'oats 19');
    expect([...ids(foods), ...usedUp.map((l) => l.lot.id)].sort()).toEqual(
      ['lot-19', 'lot-190', 'lot-191', 'lot-193', 'lot-194', 'lot-196', 'lot-197', 'lot-199'].sort(),
    );
    expect(shelvesOf(all, 'nothing').foods).toEqual([]);
  });
});

describe('withLinesOnly', () => {
  it('keeps the lines that are shown, under their foods, and no empty food', () => {
    const all = shelf(60);
    const [first] = all;
    const lines = first?.lots.slice(0, 3) ?? [];
    expect(withLinesOnly(all, lines).map((f) => f.lots)).toEqual([lines]);
  });
});
