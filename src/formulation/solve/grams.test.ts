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
            expect(answer.proven).toBe(true);
            return;
          }
          expect(answer.steps.every(Number.isInteger)).toBe(true);
          expect(answer.steps.reduce((a, b) => a + b, 0)).toBe(batch);
          expect(distance(q, answer.steps)).toBeCloseTo(best!, 6);
          expect(answer.proven).toBe(true);
          expect(answer.squares).toBeCloseTo(best!, 6);
          expect(answer.least).toBe(answer.squares);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('with no rule are the largest-remainder rounding', () => {
    const q = question([33.4, 33.3, 33.3], [0, 0, 0], 0, 100);
    expect(roundToSteps(q)).toMatchObject({ steps: [34, 33, 33], proven: true });
  });

  test('say why there are none', () => {
    expect(roundToSteps(question([50, 50], [0, 0], 0, 301, 2))).toEqual({
      conflict: expect.stringMatching(/no whole number of 2 g steps/),
      proven: true,
    });
    const half = { ...question([50, 50], [0, 0], 0, 3), lower: [50, 50], upper: [50, 50] };
    expect(roundToSteps(half)).toEqual({
      conflict: expect.stringMatching(/no whole steps of 1 g keep every rule in 3 g/),
      proven: true,
    });
  });

  test('a limit proves nothing: it says how near others could be, or that none were found', () => {
    // 40 foods with one rule that no whole steps meet but by chance, and room for no more than that.
    const x = Array.from({ length: 40 }, (_, i) => 2.5 + 0.013 * (i - 19.5));
    const g = x.map((_, i) => Math.sin(1 + i * i));
    const at = g.reduce((s, v, i) => s + v * x[i]!, 0);
    const narrow = (width: number): GramsQuestion => ({
      ...question(x, g, at, 300),
      rows: [
        { g: Float64Array.from(g), h: at },
        { g: Float64Array.from(g, (v) => -v), h: -at - width },
      ],
      holds: (y) => {
        const value = g.reduce((s, v, i) => s + v * y[i]!, 0);
        return value >= at - 1e-8 && value <= at + width + 1e-8;
      },
    });
    const found = roundToSteps(narrow(1e-4));
    if ('conflict' in found) throw new Error(found.conflict);
    expect(found.proven).toBe(false);
    expect(found.least).toBeGreaterThan(0);
    expect(found.least).toBeLessThan(found.squares);
    const none = roundToSteps({ ...narrow(1e-3), holds: () => false });
    expect(none).toEqual({
      conflict: expect.stringMatching(/that keep every rule in 300 g were found, though there may be some/),
      proven: false,
    });
  });
});
