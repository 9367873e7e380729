import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type GramsQuestion, roundToSteps } from './grams.ts';

/** Shares that add up to 100. */
const shares = (n: number) =>
  fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: n, maxLength: n }).map((parts) => {
    const sum = parts.reduce((a, b) => a + b, 0);
    return parts.map((p) => (100 * p) / sum);
  });

function question(
  x: readonly number[],
  g: readonly number[],
  h: number,
  batchGrams: number,
  stepGrams = 1,
): GramsQuestion {
  const holds = (y: ArrayLike<number>) => g.reduce((s, v, i) => s + v * y[i]!, 0) >= h - 1e-8;
  return {
    shares: x,
    lower: x.map(() => 0),
    upper: x.map(() => 100),
    batchGrams,
    stepGrams,
    holds,
    rows: [{ g: Float64Array.from(g), h }],
  };
}

/** Least squared distance over every way to split the batch among three foods. */
function bruteForce(q: GramsQuestion): number | undefined {
  let best: number | undefined;
  const total = q.batchGrams / q.stepGrams;
  for (let a = 0; a <= total; a++) {
    for (let b = 0; a + b <= total; b++) {
      const steps = [a, b, total - a - b];
      if (!q.holds(steps.map((k) => (100 * k) / total))) continue;
      const d = distance(q, steps);
      if (best === undefined || d < best) best = d;
    }
  }
  return best;
}

const distance = (q: GramsQuestion, steps: readonly number[]) =>
  steps.reduce((s, k, i) => s + (k - (q.shares[i]! / 100) * (q.batchGrams / q.stepGrams)) ** 2, 0);

describe('grams', () => {
  test('are whole steps, exactly the batch, and the nearest that keep the rule', () => {
    const coefficient = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        shares(3),
        fc.tuple(coefficient, coefficient, coefficient),
        fc.integer({ min: 5, max: 40 }),
        (x, g, batch) => {
          // The rule stands exactly at its bound, as it does at the best mix.
          const q = question(
            x,
            g,
            g.reduce((s, v, i) => s + v * x[i]!, 0),
            batch,
          );
          const answer = roundToSteps(q);
          const best = bruteForce(q);
          if ('conflict' in answer) {
            expect(best).toBeUndefined();
            return;
          }
          expect(answer.steps.every(Number.isInteger)).toBe(true);
          expect(answer.steps.reduce((a, b) => a + b, 0)).toBe(batch);
          expect(distance(q, answer.steps)).toBeCloseTo(best!, 6);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('with no rule are the largest-remainder rounding', () => {
    const q = question([33.4, 33.3, 33.3], [0, 0, 0], 0, 100);
    expect(roundToSteps(q)).toEqual({ steps: [34, 33, 33] });
  });

  test('say why there are none', () => {
    expect(roundToSteps(question([50, 50], [0, 0], 0, 301, 2))).toEqual({
      conflict: expect.stringMatching(/no whole number of 2 g steps/),
    });
    const half = { ...question([50, 50], [0, 0], 0, 3), lower: [50, 50], upper: [50, 50] };
    expect(roundToSteps(half)).toEqual({
      conflict: expect.stringMatching(/no whole steps of 1 g keep every rule in 3 g/),
    });
  });
});
