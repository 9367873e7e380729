/** Every reason is checked by solvers that share nothing with the product: GLPK for costs, quadprog for squares. */
import { beforeAll, describe, expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { glpkSolve } from '../../../test/formulation/oracle.ts';
import { type DrawnProblem, drawProblem, fullyKnown } from '../../../test/formulation/problems.ts';
import { leastSquares, plainWants } from '../../../test/formulation/squares-oracle.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import type { Objective, Problem } from '../problem/problem.ts';
import type { Reason } from '../problem/result.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';

const PROBLEMS = draws(60, 15);
const reference = loadReference();
const pool = fullyKnown(reference);
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

function ask<T>(drawn: DrawnProblem | Problem, question: (f: Formulation) => T): T {
  const { problem } = parseProblem(JSON.parse(JSON.stringify(drawn)), reference);
  const formulation = new Formulation(problem, { reference, highs });
  try {
    return question(formulation);
  } finally {
    formulation.dispose();
  }
}

/** The objective of the best mix by an independent solver; undefined where there is no mix. */
async function best(drawn: DrawnProblem): Promise<number | undefined> {
  if (drawn.objective === 'cheapest') {
    return glpkSolve(
      drawn,
      reference,
      drawn.foods.map((f) => f.price_per_kg!),
    );
  }
  const wants = plainWants(drawn);
  return leastSquares(drawn, reference, drawn.objective === 'varied' ? wants.map(() => 0) : wants);
}

/** The problem with another bound at a pointer; undefined takes it out. */
function withBound(drawn: DrawnProblem, pointer: string, to: number | undefined): DrawnProblem {
  const [, list, row, side] = pointer.split('/') as [string, 'rules' | 'foods', string, string];
  const changed = drawn[list].map((item, i) => (i === Number(row) ? { ...item, [side]: to } : item));
  return { ...drawn, [list]: changed } as DrawnProblem;
}

/**
 * What the objective gains for each unit that a bound gives way, from independent solves on both sides of it;
 * undefined where there is no such derivative: steps of two sizes, and the two sides, must agree.
 */
async function derivative(drawn: DrawnProblem, { pointer, from }: Reason): Promise<number | undefined> {
  const outwards = pointer.endsWith('/max') ? 1 : -1;
  const middle = await best(drawn);
  const slope = async (step: number) => {
    const moved = await best(withBound(drawn, pointer, from + outwards * step));
    return moved === undefined ? undefined : (middle! - moved) / step;
  };
  const step = 1e-4 * Math.max(1e-3, Math.abs(from));
  if (from - step <= 0) return undefined;
  const sides = [];
  for (const sign of [1, -1]) {
    const [long, short] = [await slope(sign * step), await slope((sign * step) / 2)];
    if (long === undefined || short === undefined || !near(long, short, 1e-3)) return undefined;
    // Twice the short step's less the long step's: what is curved falls out.
    sides.push(2 * short - long);
  }
  return near(sides[0]!, sides[1]!, 1e-3) ? (sides[0]! + sides[1]!) / 2 : undefined;
}

const near = (a: number, b: number, relative: number) =>
  Math.abs(a - b) <= relative * Math.max(1e-3, Math.abs(a), Math.abs(b));

describe.each(['nearest', 'cheapest', 'varied'] as const)('the reasons of the %s mix', (objective) => {
  test(`on ${PROBLEMS} drawn problems every figure is what solving again gives`, async () => {
    const met = { problems: 0, reasons: 0, gains: 0, free: 0, nothing: 0, tooLittle: 0, prices: 0, kinks: 0 };
    for (const [seed, drawn] of feasible(objective, PROBLEMS)) {
      met.problems++;
      const objectiveNow = await best(drawn);
      for (const reason of ask(drawn, (f) => f.why())) {
        met.reasons++;
        const what = `${reason.sentence} (seed ${seed})`;
        const without = await best(withBound(drawn, reason.pointer, undefined));
        if (reason.to === undefined) {
          expect(reason.gain, what).toBe(0);
          if (/costs nothing/.test(reason.sentence)) {
            met.nothing++;
            expect(near(without!, objectiveNow!, 3e-6), what).toBe(true);
          } else met.tooLittle++;
        } else {
          met.gains++;
          const moved = (await best(withBound(drawn, reason.pointer, reason.to)))!;
          expect(reason.gain, what).toBeGreaterThan(0);
          expect(near(moved, reason.objective!, 1e-6), `${what}: ${moved}`).toBe(true);
          expect(near(objectiveNow! - moved, reason.gain, 1e-4), what).toBe(true);
          expect(
            reason.pointer.endsWith('/max') ? reason.to > reason.from : reason.to < reason.from,
            what,
          ).toBe(true);
        }
        if (reason.free !== undefined) {
          met.free++;
          // At the content where the mix comes to rest the bound no longer matters...
          const atRest = await best(withBound(drawn, reason.pointer, reason.free + slackOf(reason)));
          expect(near(atRest!, without!, 1e-5), `${what}: ${atRest} ${without}`).toBe(true);
          // ...and short of it it does; of mixes that cost the same several may lie there.
          const short = reason.from + 0.9 * (reason.free - reason.from);
          const shortOfRest = await best(withBound(drawn, reason.pointer, short));
          if (objective !== 'cheapest') expect(shortOfRest!, what).toBeGreaterThan(without!);
        }
        if (reason.price === undefined) continue;
        const slope = await derivative(drawn, reason);
        if (slope === undefined) met.kinks++;
        else {
          met.prices++;
          expect(near(reason.price, slope, 1e-3), `${what}: price ${reason.price}, slope ${slope}`).toBe(
            true,
          );
        }
      }
    }
    console.log(objective, met);
    expect(met.gains).toBeGreaterThan(PROBLEMS);
    expect(met.prices).toBeGreaterThan(PROBLEMS / 2);
  });
});

/** The solver's last digits. */
const slackOf = ({ pointer, free }: Reason) =>
  (pointer.endsWith('/max') ? 1 : -1) * 1e-7 * Math.max(1, Math.abs(free!));

/** Drawn problems that a mix can solve, with their seeds. */
function* feasible(objective: Objective, count: number): Generator<[number, DrawnProblem]> {
  for (let seed = 20_000, found = 0; found < count; seed++) {
    const drawn = drawProblem(pool, seed, objective);
    if (drawn.foods.reduce((s, f) => s + (f.max ?? 100), 0) < 100) continue;
    if (!ask(drawn, (f) => f.feasible())) continue;
    found++;
    yield [seed, drawn];
  }
}

test('a problem that no mix can solve has no reasons', () => {
  const drawn = drawProblem(pool, 1, 'nearest');
  const tooMuch = { ...drawn, rules: [{ nutrient: 'PROCNT', min: 99 }] } as DrawnProblem;
  expect(ask(tooMuch, (f) => f.why())).toEqual([]);
});
