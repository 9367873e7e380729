/**
 * A problem as every solver beside ours is given it: rows over the shares, written from the words of the machine
 * interface and not from the program's own arithmetic, each scaled to a largest factor of 1.
 */
import type { Reference } from '../../src/foods/reference.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { type PlainRow, plainRows } from '../../test/formulation/oracle.ts';
import type { DrawnProblem } from '../../test/formulation/problems.ts';

export interface Rules {
  /** The sum of the shares is one of them. */
  readonly rows: readonly PlainRow[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  /** Columns that are whole; absent where none is. */
  readonly whole?: readonly boolean[];
}

/** What is sought: least cost, or nearest by sum of squares. */
export type Goal = { readonly cost: readonly number[] } | { readonly target: readonly number[] };

export interface Answer {
  readonly x: readonly number[];
  readonly objective: number;
}

/** Counting rules are left to {@link counted}. */
export function rulesOf(problem: Problem, reference: Reference): Rules {
  const plain = {
    ...problem,
    rules: problem.rules.filter((r) => !('count' in r)),
  } as unknown as DrawnProblem;
  return {
    rows: plainRows(plain, reference).map(({ a, min, max }) => {
      const scale = Math.max(...a.map(Math.abs)) || 1;
      return { a: a.map((v) => v / scale), min: min / scale, max: max / scale };
    }),
    lower: problem.foods.map((f) => f.min ?? 0),
    upper: problem.foods.map((f) => f.max ?? 100),
  };
}

/** The rules with some shares held. */
export function holding(rules: Rules, held: ReadonlyMap<number, number>): Rules {
  const hold = (bounds: readonly number[]) => bounds.map((b, i) => held.get(i) ?? b);
  return { ...rules, lower: hold(rules.lower), upper: hold(rules.upper) };
}

/** Exactly `count` foods are in, each with at least `least` percent: a column that is 0 or 1 for every food. */
export function counted({ rows, lower, upper }: Rules, count: number, least: number): Rules {
  const n = lower.length;
  const wide = (a: readonly number[], switches: (i: number) => number) => [
    ...a,
    ...Array.from({ length: n }, (_, i) => switches(i)),
  ];
  const one = (of: number) => (i: number) => Number(i === of);
  const none = new Array<number>(n).fill(0);
  const [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return {
    rows: [
      ...rows.map((r) => ({ ...r, a: wide(r.a, () => 0) })),
      { a: wide(none, () => 1), min: count, max: count },
      ...none.flatMap((_, i) => {
        const share = none.map((_, j) => one(i)(j));
        return [
          { a: wide(share, (j) => -least * one(i)(j)), min: 0, max: high },
          { a: wide(share, (j) => -(upper[i] ?? 100) * one(i)(j)), min: low, max: 0 },
        ];
      }),
    ],
    lower: [...lower, ...none],
    upper: [...upper, ...none.map(() => 1)],
    whole: [...none.map(() => false), ...none.map(() => true)],
  };
}

/** A goal over the foods for rules with further columns, which cost nothing. */
export function widened(cost: readonly number[], { lower }: Rules): Goal {
  return { cost: lower.map((_, i) => cost[i] ?? 0) };
}

/** Sum of squared distances. */
export function distance(x: readonly number[], target: readonly number[]): number {
  return target.reduce((sum, t, i) => sum + ((x[i] ?? 0) - t) ** 2, 0);
}
