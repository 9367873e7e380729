/** Formulation against an independent solver, on 2,000 problems drawn from the real tables. */
import { solveQP } from 'quadprog';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Reference } from '../../src/foods/reference.ts';
import { applyRemedy } from '../../src/formulation/advice/apply-remedy.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { type Highs, loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { glpkSolve, plainRows } from './oracle.ts';
import { type DrawnProblem, drawProblem, fullyKnown } from './problems.ts';

const PROBLEMS = 2000;
let reference: Reference;
let highs: Highs;
let pool: ReturnType<typeof fullyKnown>;

beforeAll(async () => {
  reference = loadReference();
  highs = await loadHighs();
  pool = fullyKnown(reference);
});

function solve(drawn: DrawnProblem | Problem) {
  const { problem } = parseProblem(JSON.parse(JSON.stringify(drawn)), reference);
  const formulation = new Formulation(problem, { reference, highs });
  try {
    return formulation.solve();
  } finally {
    formulation.dispose();
  }
}

/** Whether the product finds any mix, without the work of the whole answer. */
function feasible(drawn: Problem): boolean {
  const { problem } = parseProblem(JSON.parse(JSON.stringify(drawn)), reference);
  const formulation = new Formulation(problem, { reference, highs });
  try {
    return formulation.feasible();
  } finally {
    formulation.dispose();
  }
}

/** The problem with only the bounds named by the pointers; everything else that could bind is taken out. */
function only(problem: DrawnProblem, pointers: readonly string[]): DrawnProblem {
  const kept = (pointer: string, value: number | undefined) =>
    pointers.includes(pointer) ? value : undefined;
  const bounded = <T extends { min?: number; max?: number }>(items: readonly T[], list: string): T[] =>
    items.map((item, i) => ({
      ...item,
      min: kept(`/${list}/${i}/min`, item.min),
      max: kept(`/${list}/${i}/max`, item.max),
    }));
  return { ...problem, foods: bounded(problem.foods, 'foods'), rules: bounded(problem.rules, 'rules') };
}

const noCost = (p: DrawnProblem) => p.foods.map(() => 0);

describe('on problems drawn from the real tables', () => {
  test(`${PROBLEMS} cheapest mixes: same status, same cost, rules kept; conflicts minimal; remedies mend`, {
    timeout: 900_000,
  }, async () => {
    const met = { optimal: 0, infeasible: 0, loosenings: 0, additions: 0, members: 0 };
    for (let seed = 0; seed < PROBLEMS; seed++) {
      const drawn = drawProblem(pool, seed, 'cheapest');
      const prices = drawn.foods.map((f) => f.price_per_kg!);
      if (drawn.foods.reduce((s, f) => s + (f.max ?? 100), 0) < 100) continue;
      const theirs = await glpkSolve(drawn, reference, prices);
      const ours = solve(drawn);
      expect(ours.status, `seed ${seed}`).toBe(theirs === undefined ? 'infeasible' : 'optimal');
      if (ours.status === 'optimal') {
        met.optimal++;
        expect(
          Math.abs(ours.objective - theirs!) / Math.max(1, Math.abs(theirs!)),
          `seed ${seed}`,
        ).toBeLessThan(1e-6);
        const x = drawn.foods.map((f) => ours.shares[f.id]!);
        expect(Math.abs(x.reduce((a, b) => a + b, 0) - 100)).toBeLessThan(1e-9);
        expectKept(drawn, x, `seed ${seed}`);
        if (ours.grams) {
          const grams = drawn.foods.map((f) => ours.grams![f.id]!);
          expect(grams.every(Number.isInteger)).toBe(true);
          expect(grams.reduce((a, b) => a + b, 0)).toBe(300);
          expectKept(
            drawn,
            grams.map((g) => g / 3),
            `grams of seed ${seed}`,
          );
        }
        continue;
      }
      met.infeasible++;
      const pointers = ours.conflict.map((c) => c.pointer);
      met.members += pointers.length;
      const alone = only(drawn, pointers);
      expect(pointers.length, `seed ${seed}`).toBeGreaterThan(0);
      expect(await glpkSolve(alone, reference, noCost(alone)), `conflict of seed ${seed}`).toBeUndefined();
      for (const dropped of pointers) {
        const rest = only(
          drawn,
          pointers.filter((p) => p !== dropped),
        );
        expect(
          await glpkSolve(rest, reference, noCost(rest)),
          `seed ${seed} without ${dropped}`,
        ).toBeDefined();
      }
      for (const remedy of ours.remedies) {
        met[remedy.kind === 'add' ? 'additions' : 'loosenings']++;
        const mended = applyRemedy(drawn as Problem, remedy);
        expect(feasible(mended), `${remedy.sentence} (seed ${seed})`).toBe(true);
        const plain = await glpkSolve(
          mended as DrawnProblem,
          reference,
          mended.foods.map(() => 0),
        );
        expect(plain, `${remedy.sentence} (seed ${seed})`).toBeDefined();
      }
    }
    console.log('problems met', met);
    expect(met.optimal).toBeGreaterThan(PROBLEMS / 5);
    expect(met.infeasible).toBeGreaterThan(PROBLEMS / 5);
    expect(met.loosenings).toBeGreaterThan(0);
    expect(met.additions).toBeGreaterThan(0);
  });

  test('300 nearest mixes agree with a dual quadratic solver', { timeout: 300_000 }, () => {
    let compared = 0;
    for (let seed = 5000; compared < 300; seed++) {
      const drawn = drawProblem(pool, seed, 'nearest');
      if (drawn.foods.reduce((s, f) => s + (f.max ?? 100), 0) < 100) continue;
      const ours = solve(drawn);
      if (ours.status !== 'optimal') continue;
      compared++;
      const theirs = nearestByDual(drawn);
      expect(Math.abs(ours.objective - theirs) / Math.max(1, theirs), `seed ${seed}`).toBeLessThan(1e-6);
    }
  });

  test('spans are the true ends', { timeout: 300_000 }, async () => {
    let compared = 0;
    for (let seed = 9000; compared < 40; seed++) {
      const drawn = drawProblem(pool, seed, 'varied');
      if (drawn.foods.reduce((s, f) => s + (f.max ?? 100), 0) < 100) continue;
      const ours = solve(drawn);
      if (ours.status !== 'optimal') continue;
      compared++;
      for (const [i, f] of drawn.foods.entries()) {
        const end = (sign: number) =>
          glpkSolve(
            drawn,
            reference,
            drawn.foods.map((_, j) => (i === j ? sign : 0)),
          );
        const [low, high] = ours.spans[f.id]!;
        expect(low).toBeCloseTo((await end(1))!, 5);
        expect(high).toBeCloseTo(-(await end(-1))!, 5);
      }
    }
  });
});

function expectKept(drawn: DrawnProblem, x: readonly number[], what: string): void {
  for (const row of plainRows(drawn, reference)) {
    const value = row.a.reduce((s, a, i) => s + a * x[i]!, 0);
    const slack = 1e-7 * Math.max(1, ...row.a.map(Math.abs));
    expect(value, what).toBeGreaterThanOrEqual(row.min - slack);
    expect(value, what).toBeLessThanOrEqual(row.max + slack);
  }
  drawn.foods.forEach((f, i) => {
    expect(x[i]!).toBeGreaterThanOrEqual((f.min ?? 0) - 1e-9);
    expect(x[i]!).toBeLessThanOrEqual((f.max ?? 100) + 1e-9);
  });
}

/** Least squared distance from the wanted shares, by quadprog (Goldfarb and Idnani). Arrays count from 1 there. */
function nearestByDual(drawn: DrawnProblem): number {
  const n = drawn.foods.length;
  const given = drawn.foods.reduce((s, f) => s + (f.want ?? 0), 0);
  const open = drawn.foods.filter((f) => f.want === undefined).length;
  const want = drawn.foods.map((f) => f.want ?? Math.max(0, (100 - given) / open));
  const columns: number[][] = [];
  const bounds: number[] = [];
  const equalities: number[][] = [];
  const add = (a: number[], b: number) => {
    const scale = Math.max(...a.map(Math.abs)) || 1;
    columns.push(a.map((v) => v / scale));
    bounds.push(b / scale);
  };
  for (const row of plainRows(drawn, reference).slice(1)) {
    if (row.min > Number.NEGATIVE_INFINITY) add(row.a, row.min);
    if (row.max < Number.POSITIVE_INFINITY)
      add(
        row.a.map((v) => -v),
        -row.max,
      );
  }
  drawn.foods.forEach((f, i) => {
    const e = drawn.foods.map((_, j) => (i === j ? 1 : 0));
    add(e, f.min ?? 0);
    add(
      e.map((v) => -v),
      -(f.max ?? 100),
    );
  });
  equalities.push(drawn.foods.map(() => 1));
  const all = [...equalities, ...columns];
  const from1 = <T>(list: T[]) => [0 as unknown as T, ...list];
  const D = from1(
    Array.from({ length: n }, (_, i) => from1(Array.from({ length: n }, (_, j) => (i === j ? 2 : 0)))),
  );
  const A = from1(Array.from({ length: n }, (_, i) => from1(all.map((c) => c[i]!))));
  const answer = solveQP(D, from1(want.map((w) => 2 * w)), A, from1([100, ...bounds]), 1);
  const x = answer.solution.slice(1);
  return x.reduce((s: number, v: number, i: number) => s + (v - want[i]!) ** 2, 0);
}
