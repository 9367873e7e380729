import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { randomFrom } from '../../../test/formulation/problems.ts';
import { largestRemainder } from './largest-remainder.ts';
import { nearestBySwaps, type SwapQuestion } from './step-swaps.ts';
import { dot, squaredDistance } from './vectors.ts';

const TOTAL = 300;

/** Narrow windows about what some whole steps have, wanted a little elsewhere. */
function drawQuestion(seed: number) {
  const random = randomFrom(seed);
  const n = 8 + Math.floor(32 * random());
  const raw = Array.from({ length: n }, () => 0.2 + random());
  const sum = raw.reduce((a, b) => a + b, 0);
  const known = Float64Array.from(
    largestRemainder(
      raw.map((v) => (TOTAL * v) / sum),
      TOTAL,
    ),
  );
  const target = known.map((k) => Math.max(0, k + 3 * (random() - 0.5)));
  const rows = Array.from({ length: 1 + Math.floor(5 * random()) }, () => {
    const a = Float64Array.from(known, () => 2 * random() - 1);
    const at = dot(a, known);
    const [below, above] = [0.3 * random(), 0.3 * random()];
    return [
      { a, h: at - below },
      { a: a.map((v) => -v), h: -at - above },
    ];
  }).flat();
  const low = known.map((k) => (random() < 0.2 ? Math.floor(k / 2) : 0));
  const high = known.map((k) => (random() < 0.2 ? k + 3 : TOTAL));
  const keeps = (x: Float64Array) => rows.every(({ a, h }) => dot(a, x) >= h - 1e-8);
  const least = known.map((k) => (random() < 0.1 ? Math.min(k, 6) : 0));
  const question: SwapQuestion = { target, low, high, least, rows, keeps };
  return { question, known };
}

const QUESTIONS = draws(2000, 100);

test(`${QUESTIONS} times steps are found that keep everything and are nearer than those known`, () => {
  let found = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const { question, known } = drawQuestion(seed);
      const { target, low, high, least } = question;
      const start = Float64Array.from(
        largestRemainder(
          Array.from(target, (t) => (t * TOTAL) / target.reduce((a, b) => a + b, 0)),
          TOTAL,
        ),
      );
      const squares = squaredDistance(known, target) + 1;
      const steps = nearestBySwaps(question, start, 300, squares);
      if (!steps) return;
      found++;
      expect(steps.reduce((a, b) => a + b, 0)).toBe(TOTAL);
      expect(question.keeps(steps)).toBe(true);
      expect(squaredDistance(steps, target)).toBeLessThan(squares);
      for (const [j, k] of steps.entries()) {
        expect(Number.isInteger(k)).toBe(true);
        expect(k).toBeGreaterThanOrEqual(low[j]!);
        expect(k).toBeLessThanOrEqual(high[j]!);
        if (k > 0) expect(k).toBeGreaterThanOrEqual(least[j]!);
      }
    }),
    { numRuns: QUESTIONS },
  );
  expect(found).toBeGreaterThan(QUESTIONS / 2);
});

test('nothing is found where nothing is nearer', () => {
  const { question, known } = drawQuestion(1);
  expect(nearestBySwaps(question, known, 300, 0)).toBeUndefined();
});
