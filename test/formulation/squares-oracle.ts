/** A second opinion on mixes of least squared distance: the rows of the plain oracle, solved by quadprog. */
import { solveQP } from 'quadprog';
import type { Reference } from '../../src/foods/reference.ts';
import { plainRows } from './oracle.ts';
import type { DrawnProblem } from './problems.ts';

/** The shares that a problem wants, percent: foods without a wish want an equal part of what is left of 100. */
export function plainWants({ foods }: DrawnProblem): number[] {
  const given = foods.reduce((s, f) => s + (f.want ?? 0), 0);
  const open = foods.filter((f) => f.want === undefined).length;
  return foods.map((f) => f.want ?? Math.max(0, (100 - given) / open));
}

/** Least sum of squared distances from `target` by Goldfarb and Idnani's method; undefined where there is no mix. */
export function leastSquares(
  problem: DrawnProblem,
  reference: Reference,
  target: readonly number[],
): number | undefined {
  const unit = (i: number, sign: number) => problem.foods.map((_, j) => (i === j ? sign : 0));
  const rows = plainRows(problem, reference)
    .slice(1)
    .flatMap(({ a, min, max }) => [
      ...(min > Number.NEGATIVE_INFINITY ? [[a, min] as const] : []),
      ...(max < Number.POSITIVE_INFINITY ? [[a.map((v) => -v), -max] as const] : []),
    ]);
  const bounds = problem.foods.flatMap((f, i) => [
    [unit(i, 1), f.min ?? 0] as const,
    [unit(i, -1), -(f.max ?? 100)] as const,
  ]);
  const sum = [problem.foods.map(() => 1), 100] as const;
  const scaled = [sum, ...rows, ...bounds].map(([a, b]) => {
    const scale = Math.max(...a.map(Math.abs)) || 1;
    return { a: a.map((v) => v / scale), b: b / scale };
  });
  // Arrays count from 1 there.
  const from1 = <T>(list: readonly T[]) => [0 as unknown as T, ...list];
  const answer = solveQP(
    from1(problem.foods.map((_, i) => from1(unit(i, 2)))),
    from1(target.map((t) => 2 * t)),
    from1(problem.foods.map((_, i) => from1(scaled.map(({ a }) => a[i]!)))),
    from1(scaled.map(({ b }) => b)),
    1,
  );
  if (answer.message !== '') return undefined;
  return answer.solution.slice(1).reduce((s, v, i) => s + (v - target[i]!) ** 2, 0);
}
