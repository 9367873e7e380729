/**
 * Trim losses and drying yields held against what is published. USDA National Nutrient Database for Standard
 * Reference, release 28 (2015): the hand-kept table was read off the food description file (FOOD_DES, "Refuse"); the
 * reference foods carry the same field from the abbreviated file, by another way.
 */
import { describe, expect, it } from 'vitest';
import { loadReference } from '../../src/household/reference-file.ts';
import { driedPerBought, freshToBuy, TRIM_ROWS, trimOf } from '../../src/kitchen/drying/yields.ts';

const reference = loadReference();
const food = (ndb: string) => reference.get(`sr28:${ndb}`)!;

describe('trim loss, percent of the weight as purchased', () => {
  it.each([
    ['11124', 'carrot', 11],
    ['11080', 'beetroot', 33],
    ['11090', 'broccoli', 39],
    ['11135', 'cauliflower', 61],
    ['11304', 'peas in the pod', 62],
    ['11333', 'green sweet pepper', 18],
    ['11507', 'sweet potato', 28],
    ['11957', 'fennel bulb', 28],
    ['09003', 'apple with skin', 10],
    ['09040', 'banana', 36],
    ['02044', 'basil', 36],
  ])('%s, %s, is %d', (ndb, _, printed) => {
    expect(trimOf(food(ndb)).trimLoss).toBe(printed);
  });

  it('agrees row by row with the reference foods', () => {
    expect(TRIM_ROWS.length).toBeGreaterThan(90);
    expect(TRIM_ROWS.filter((row) => reference.get(row.ref)?.refuse !== row.trimLoss)).toEqual([]);
    // A fresh food of the table has water to lose.
    expect(TRIM_ROWS.filter((row) => !(reference.get(row.ref)!.composition.WATER! > 50))).toEqual([]);
  });

  it('falls back on the row of a food the table does not list: red sweet pepper 18', () => {
    expect(TRIM_ROWS.some((row) => row.ref === 'sr28:11821')).toBe(false);
    expect(trimOf(food('11821'))).toMatchObject({ trimLoss: 18 });
  });
});

describe('fresh food to buy for 100 g of dried', () => {
  /** (1 - 0.04) / (1 - 0.8829) / (1 - 0.11) and so on, from the printed moistures and trim losses. */
  it.each([
    ['11124', 'carrot', 4, 921.1],
    ['11333', 'green sweet pepper', 2, 1956.0],
    ['11529', 'tomato', 14.56, 1713.3],
    ['09003', 'apple', 3, 746.4],
    ['09040', 'banana', 3, 604.1],
    ['11297', 'parsley', 5.89, 806.0],
  ])('%s, %s, to %d %% moisture: %d g', (ndb, _, moisture, grams) => {
    expect(freshToBuy(100, food(ndb), moisture).purchased).toBeCloseTo(grams, 0);
    expect(driedPerBought(food(ndb), moisture)! * grams).toBeCloseTo(100, 1);
  });
});
