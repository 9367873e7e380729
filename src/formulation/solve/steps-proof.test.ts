/** What is claimed of whole steps, against every mix in a small box. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { StepsBox } from './steps-box.ts';
import { noneKeeps, pricedBound, type StepRow } from './steps-proof.ts';

const FOODS = 3;
const MOST = 6;

/** Drawn evenly: numbers drawn for their oddity are mostly 0 or nearly so. */
const hundredths = (low: number, high: number) =>
  fc.integer({ min: 100 * low, max: 100 * high }).map((v) => v / 100);
const numbers = (low: number, high: number) =>
  fc.array(hundredths(low, high), { minLength: FOODS, maxLength: FOODS });

const drawn = fc
  .record({
    target: numbers(0, MOST),
    least: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: FOODS, maxLength: FOODS }),
    total: fc.integer({ min: 1, max: 2 * MOST }),
    rows: fc.array(fc.tuple(numbers(-1, 1), hundredths(-3, 14)), { maxLength: 2 }),
    prices: fc.array(hundredths(0, 20), { minLength: 2, maxLength: 2 }),
    sumPrice: hundredths(-20, 20),
  })
  .map(({ target, least, total, rows, prices, sumPrice }) => {
    const box = new StepsBox(Float64Array.from(target), Float64Array.from(least));
    box.high.fill(MOST);
    const all: StepRow[] = [
      { a: new Float64Array(FOODS).fill(1), h: total },
      ...rows.map(([a, h]) => ({ a: Float64Array.from(a), h })),
    ];
    const weights = all.map((row, r) => ({ row, weight: r === 0 ? sumPrice : (prices[r - 1] ?? 0) }));
    return { box, all, weights, least, total };
  });

/** Every whole number of steps in the box that keeps the rows. */
function keeping({ all, least, total }: { all: StepRow[]; least: number[]; total: number }): number[][] {
  const found: number[][] = [];
  const fill = (k: number[]): void => {
    if (k.length < FOODS) {
      for (let v = 0; v <= MOST; v++) if (v === 0 || v >= least[k.length]!) fill([...k, v]);
      return;
    }
    const value = ({ a }: StepRow) => k.reduce((s, v, i) => s + v * a[i]!, 0);
    if (k.reduce((s, v) => s + v, 0) === total && all.slice(1).every((row) => value(row) >= row.h))
      found.push(k);
  };
  fill([]);
  return found;
}

test('a bound holds whatever the prices are', () => {
  let met = 0;
  fc.assert(
    fc.property(drawn, (at) => {
      const bound = pricedBound(at.box, at.weights, new Float64Array(FOODS));
      for (const k of keeping(at)) {
        met++;
        const squares = k.reduce((s, v, i) => s + (v - at.box.target[i]!) ** 2, 0);
        expect(squares).toBeGreaterThan(bound - 1e-9);
      }
    }),
    { numRuns: 400 },
  );
  expect(met).toBeGreaterThan(1000);
});

test('what is said to hold nothing holds nothing', () => {
  let met = 0;
  fc.assert(
    fc.property(drawn, (at) => {
      // A sum that weighs about as much as the rows is the likeliest to prove anything.
      const [sum, ...rows] = at.weights;
      const size = rows.reduce((s, w) => s + w.weight, 0);
      const weights = [{ row: sum!.row, weight: (sum!.weight / 20) * size }, ...rows];
      if (!noneKeeps(at.box, weights)) return;
      met++;
      expect(keeping(at)).toEqual([]);
    }),
    { numRuns: 1000 },
  );
  expect(met).toBeGreaterThan(40);
});
