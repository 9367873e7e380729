/** The nearest shares against Wolfe's method over corners that HiGHS finds, kept or not. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { randomFrom } from '../../../test/formulation/problems.ts';
import { loadHighs } from './highs.ts';
import { solveLinearWith } from './linear-program.ts';
import { nearestPoint } from './min-norm.ts';
import { nearestShares } from './nearest-shares.ts';
import { dot, squaredDistance } from './vectors.ts';

const highs = await loadHighs();

/** Windows about what some shares have; now and then moved to where hardly any, or no, shares keep them. */
function drawQuestion(seed: number) {
  const random = randomFrom(seed);
  const n = 2 + Math.floor(14 * random());
  const raw = Array.from({ length: n }, () => 0.05 + random());
  const sum = raw.reduce((a, b) => a + b, 0);
  const inside = raw.map((v) => (100 * v) / sum);
  const room = [0, 0.001, 0.1, 3][Math.floor(4 * random())]!;
  const off = random() < 0.4 ? 50 * random() : 0;
  const rows = Array.from({ length: Math.floor(8 * random()) }, () => {
    const plain = random() < 0.2;
    const g = Float64Array.from(inside, () => (plain ? Math.round(random()) : 2 * random() - 1));
    const at = dot(g, inside) + off;
    return [
      { g, h: at - room * random() },
      { g: g.map((v) => -v), h: -at - room * random() },
    ];
  }).flat();
  const target = Float64Array.from(inside, () => (random() < 0.1 ? 100 : (200 / n) * random()));
  const lower = Float64Array.from(inside, (v) => (random() < 0.2 ? v * random() : 0));
  const upper = Float64Array.from(inside, (v) => (random() < 0.2 ? v + (100 - v) * random() : 100));
  return { target, lower, upper, total: 100, rows };
}

function cornersOf({ lower, upper, rows }: ReturnType<typeof drawQuestion>) {
  return (cost: ArrayLike<number>) =>
    solveLinearWith(highs, {
      cost: Array.from(cost),
      lower: [...lower],
      upper: [...upper],
      rows: [
        { coefficients: Array.from(lower, () => 1), min: 100, max: 100 },
        ...rows.map(({ g, h }) => ({ coefficients: [...g], min: h })),
      ],
    });
}

const QUESTIONS = draws(4000, 200);

test(`${QUESTIONS} nearest shares, and that there are none, are those of another method`, () => {
  const met = { optimal: 0, none: 0, open: 0 };
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const question = drawQuestion(seed);
      const { target, lower, upper, rows } = question;
      const answer = nearestShares(question);
      met[answer.status]++;
      if (answer.status === 'open') return;
      const corner = cornersOf(question);
      const { status } = corner(lower.map(() => 0));
      expect(answer.status).toBe(status === 'optimal' ? 'optimal' : 'none');
      if (answer.status !== 'optimal') return;
      const { x } = answer;
      expect(Math.abs(x.reduce((a, b) => a + b, 0) - 100)).toBeLessThan(1e-8);
      for (const { g, h } of rows) expect(dot(g, x)).toBeGreaterThan(h - 1e-8);
      for (const [j, share] of x.entries()) {
        expect(share).toBeGreaterThanOrEqual(lower[j]!);
        expect(share).toBeLessThanOrEqual(upper[j]!);
      }
      const other = nearestPoint((cost) => Float64Array.from(corner(cost).x), target);
      const distance = squaredDistance(other, target);
      expect(Math.abs(squaredDistance(x, target) - distance)).toBeLessThan(1e-5 * (1 + distance));
    }),
    { numRuns: QUESTIONS },
  );
  expect(met.optimal).toBeGreaterThan(QUESTIONS / 2);
  expect(met.none).toBeGreaterThan(QUESTIONS / 20);
  // Open only where hardly any shares keep the rows.
  expect(met.open).toBeLessThan(QUESTIONS / 20);
});

test('what a row costs is what the sum of squares gains when it gives way', () => {
  const question = (least: number) => ({
    target: Float64Array.of(60, 30, 10),
    lower: new Float64Array(3),
    upper: Float64Array.of(100, 100, 25),
    total: 100,
    rows: [{ g: Float64Array.of(0, 1, 1), h: least }],
  });
  const at = (least: number) => {
    const answer = nearestShares(question(least));
    if (answer.status !== 'optimal') throw new Error('these can be kept');
    return { ...answer, squares: squaredDistance(answer.x, question(least).target) };
  };
  // Half of what is missing comes from each of the two, the third gives way.
  expect([...at(50).x]).toEqual([50, 35, 15].map((v) => expect.closeTo(v, 9)));
  const gain = at(50.5).squares - at(49.5).squares;
  expect(at(50).rows[0]).toBeCloseTo(gain, 6);
  expect([...at(50).shares]).toEqual([0, 0, 0].map((v) => expect.closeTo(v, 9)));
  // At its most a share costs too.
  expect([...at(80).x]).toEqual([20, 55, 25].map((v) => expect.closeTo(v, 9)));
  expect(at(80).shares[2]).toBeCloseTo(-2 * (55 - 30 - (25 - 10)), 6);
  expect(nearestShares(question(125.1)).status).toBe('none');
});
