/** The interior-point method against a barrier method of the tests' own, and at the edge of what is possible. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { type Constraint, leastInside, roomIn } from '../../../test/formulation/kinds-barrier.ts';
import { randomFrom } from '../../../test/formulation/problems.ts';
import { type ConeQuestion, solveConeProgram } from './cone-program.ts';
import { dot } from './vectors.ts';

/** Rows and cones that a given mix keeps with a little room. */
function drawQuestion(seed: number): { question: ConeQuestion; inside: number[] } {
  const random = randomFrom(seed);
  const n = 3 + Math.floor(7 * random());
  const raw = Array.from({ length: n }, () => 0.05 + random());
  const sum = raw.reduce((a, b) => a + b, 0);
  const inside = raw.map((v) => (100 * v) / sum);
  const line = () => Float64Array.from(inside, () => 2 * random() - 1);
  const rows = Array.from({ length: Math.floor(4 * random()) }, () => {
    const g = line();
    return { g, h: dot(g, inside) - 0.01 - 5 * random() };
  });
  const cones = Array.from({ length: 1 + Math.floor(3 * random()) }, () => {
    const g = line();
    const q = Float64Array.from(inside, () => (random() < 0.8 ? 0.4 * random() : 0));
    const q0 = random() < 0.5 ? random() : 0;
    const spread = Math.hypot(q0, ...q.map((v, i) => v * inside[i]!));
    return { g, h: dot(g, inside) - spread - 0.01 - 5 * random(), cone: { q, q0 } };
  });
  const square = random() < 0.5 ? 2 : 0;
  const cost = Float64Array.from(inside, () => (square ? -60 * random() : 2 * random() - 1));
  const lower = Float64Array.from(inside, (v) => (random() < 0.2 ? v / 2 : 0));
  const upper = Float64Array.from(inside, (v) => (random() < 0.2 ? (v + 100) / 2 : 100));
  return { question: { cost, square, lower, upper, rows, cones }, inside };
}

function constraintsOf({ lower, upper, rows, cones }: ConeQuestion): Constraint[] {
  const unit = (i: number, sign: number) => Array.from(lower, (_, j) => (i === j ? sign : 0));
  return [
    ...Array.from(lower).map((b, i) => ({ a: unit(i, 1), b })),
    ...Array.from(upper).map((b, i) => ({ a: unit(i, -1), b: -b })),
    ...rows.map(({ g, h }) => ({ a: [...g], b: h })),
    // A constant spread is a column that stands at 1; see `start`.
    ...cones.map(({ g, h, cone }) => ({ a: [...g, 0], b: h, q: [...cone.q, cone.q0] })),
  ].map((c): Constraint => ({ ...c, a: c.a.length > lower.length ? c.a : [...c.a, 0] }));
}

const QUESTIONS = draws(2000, 120);

test(`${QUESTIONS} least costs and distances are those of the barrier method, and every bound is kept`, () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const { question, inside } = drawQuestion(seed);
      const { cost, square } = question;
      const answer = solveConeProgram(question);
      expect(answer.status).toBe('optimal');
      const constraints = constraintsOf(question);
      for (const c of constraints) expect(roomIn(c, [...answer.x, 1])).toBeGreaterThan(-1e-8);
      expect(answer.x.reduce((a, b) => a + b, 0)).toBeCloseTo(100, 9);
      const value = (x: ArrayLike<number>) =>
        dot(cost, x as Float64Array) + (square / 2) * dot(x as Float64Array, x);
      const { v, gap } = leastInside({
        cost: [...Array.from(cost, (c) => (square ? 0 : c)), 0],
        ...(square ? { target: Array.from(cost, (c) => -c / 2) } : {}),
        constraints,
        summed: [...inside.map(() => true), false],
        still: [...inside.map(() => false), true],
        start: [...inside, 1],
      });
      const least = value(v.slice(0, -1));
      const close = 1e-7 * (1 + Math.abs(least));
      expect(value(answer.x)).toBeLessThan(least + close);
      expect(value(answer.x)).toBeGreaterThan(least - gap - close);
    }),
    { numRuns: QUESTIONS },
  );
});

test(`${QUESTIONS} questions whose cone is put out of reach are told to have no mix`, () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const { question } = drawQuestion(seed);
      const [first, ...others] = question.cones;
      if (!first) throw new Error('every question has a cone');
      // No mix of 100 has more of a row whose largest factor is 1 than 100, spread or no spread.
      const beyond = 100 * Math.max(...first.g) + 0.01;
      const answer = solveConeProgram({ ...question, cones: [{ ...first, h: beyond }, ...others] });
      expect(answer.status).toBe('infeasible');
    }),
    { numRuns: QUESTIONS },
  );
});

test('shares that are settled take part and stay where they are', () => {
  const question: ConeQuestion = {
    cost: Float64Array.of(1, 0, 0),
    square: 0,
    lower: Float64Array.of(0, 30, 0),
    upper: Float64Array.of(100, 30, 100),
    rows: [],
    // 0.5 x0 against a spread of the settled share: x0 >= 2 x 0.4 x 30.
    cones: [{ g: Float64Array.of(0.5, 0, 0), h: 0, cone: { q: Float64Array.of(0, 0.4, 0), q0: 0 } }],
  };
  const answer = solveConeProgram(question);
  expect(answer.status).toBe('optimal');
  expect(answer.x[0]).toBeCloseTo(24, 6);
  expect(answer.x[1]).toBe(30);
});
