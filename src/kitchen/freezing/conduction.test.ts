import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centreOf, type HalfExtent, secondsUntil } from './conduction.ts';

/** A body for which seconds are Fourier numbers and the surface coefficient is the Biot number. */
const unit = (biot: number) => ({ conductivity: 1, diffusivity: 1, surface: biot });
const slab = { kind: 'slab', metres: 2 } as const;
const cylinder = { kind: 'cylinder', metres: 2 } as const;

/** First root and weight as textbooks of heat transfer tabulate them for Heisler's one-term solution (from memory). */
it.each([
  [slab, 0.1, 0.3111, 1.0161],
  [slab, 1, 0.8603, 1.1191],
  [slab, 10, 1.4289, 1.262],
  [cylinder, 0.1, 0.4417, 1.0246],
  [cylinder, 1, 1.2558, 1.2071],
  [cylinder, 10, 2.1795, 1.5677],
] as const)('%o at Bi %d: late on only the tabulated term is left', (side, biot, root, weight) => {
  const centre = centreOf([side], unit(biot));
  for (const fourier of [1.5, 2]) {
    const tabulated = weight * Math.exp(-root * root * fourier);
    expect(Math.abs(centre(fourier) / tabulated - 1)).toBeLessThan(0.001);
  }
});

/** The same slab by finite differences: 100 cells from the centre to the surface, small steps in time. */
function byDifferences(biot: number, fourier: number): number {
  const cells = 100;
  const width = 1 / cells;
  const steps = Math.ceil(fourier / (0.4 * width * width));
  const step = fourier / steps;
  let now = new Float64Array(cells).fill(1);
  // From the middle of the last cell through half of it and the film of air.
  const outwards = 1 / (width / 2 + 1 / biot);
  for (let i = 0; i < steps; i++) {
    const next = now.slice();
    for (let c = 0; c < cells; c++) {
      const inner = c > 0 ? (now[c - 1]! - now[c]!) / width : 0;
      const outer = c < cells - 1 ? (now[c]! - now[c + 1]!) / width : now[c]! * outwards;
      next[c] = now[c]! + (step / width) * (inner - outer);
    }
    now = next;
  }
  return now[0]!;
}

it.each([
  [0.3, 0.05],
  [0.3, 1],
  [2, 0.019],
  [2, 0.1],
  [2, 0.4],
  [30, 0.019],
  [30, 0.05],
  [30, 0.08],
  [30, 0.5],
])('a slab at Bi %d and Fo %d is as finite differences have it', (biot, fourier) => {
  expect(Math.abs(centreOf([slab], unit(biot))(fourier) - byDifferences(biot, fourier))).toBeLessThan(0.0005);
});

describe('laws', () => {
  const sides = fc.array(
    fc.record<HalfExtent>({
      kind: fc.constantFrom('slab', 'cylinder'),
      metres: fc.double({ min: 0.02, max: 2, noNaN: true }),
    }),
    { minLength: 1, maxLength: 3 },
  );
  const body = fc.record({
    conductivity: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
    diffusivity: fc.double({ min: 5e-8, max: 5e-7, noNaN: true }),
    surface: fc.double({ min: 1, max: 50, noNaN: true }),
  });

  it('the centre only ever cools, and never past the air', () => {
    fc.assert(
      fc.property(sides, body, fc.double({ min: 0, max: 3e6, noNaN: true }), (all, of, time) => {
        const centre = centreOf(all, of);
        const [now, later] = [centre(time), centre(time * 1.3 + 600)];
        expect(now).toBeLessThanOrEqual(1);
        expect(later).toBeGreaterThanOrEqual(0);
        expect(later).toBeLessThanOrEqual(now + 1e-4);
      }),
      { numRuns: 50 },
    );
  });

  it('twice the size with half the surface coefficient takes four times as long', () => {
    fc.assert(
      fc.property(sides, body, fc.double({ min: 0.02, max: 0.9, noNaN: true }), (all, of, left) => {
        const twice = all.map((side) => ({ ...side, metres: 2 * side.metres }));
        const small = secondsUntil(left, centreOf(all, of));
        const big = secondsUntil(left, centreOf(twice, { ...of, surface: of.surface / 2 }));
        expect(big / small).toBeCloseTo(4, 4);
      }),
      { numRuns: 30 },
    );
  });

  it('a body with more sides open to the air cools no slower', () => {
    fc.assert(
      fc.property(sides, body, fc.double({ min: 3600, max: 1e6, noNaN: true }), (all, of, time) => {
        expect(centreOf(all, of)(time)).toBeLessThanOrEqual(centreOf(all.slice(1), of)(time) + 1e-12);
      }),
      { numRuns: 30 },
    );
  });
});
