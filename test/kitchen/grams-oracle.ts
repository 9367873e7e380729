/**
 * A second opinion on batches in grams that shares nothing with the weigh-out: contents per food, rules written from
 * their words, solved by GLPK over grams with the total left open. For problems with nutrient, ratio and group rules.
 */
import GLPK from 'glpk.js/node';
import type { Reference } from '../../src/foods/reference.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { Highs } from '../../src/formulation/solve/highs.ts';
import { type PlainRow, plainRows } from '../formulation/oracle.ts';
import type { DrawnProblem } from '../formulation/problems.ts';

let glpk: Promise<Awaited<ReturnType<typeof GLPK>>> | undefined;

export interface Oracle {
  readonly ids: readonly string[];
  /** Rows over the shares in percent; food bounds among them. */
  readonly rows: readonly PlainRow[];
}

const unit = (n: number, i: number) => Array.from({ length: n }, (_, j) => Number(i === j));

/** For a drawn problem: every food has a reference number. */
export function plainOracle(problem: Problem, reference: Reference): Oracle {
  const { foods } = problem;
  const bounds = foods.map((f, i) => ({ a: unit(foods.length, i), min: f.min ?? 0, max: f.max ?? 100 }));
  const rows = plainRows(problem as unknown as DrawnProblem, reference).slice(1);
  return { ids: foods.map((f) => f.id), rows: [...rows, ...bounds] };
}

/** For rules on nutrients as fed and on groups: contents read off what is said of each food alone as the whole mix. */
export function contentOracle(problem: Problem, reference: Reference, highs: Highs): Oracle {
  const { foods } = problem;
  const formulation = new Formulation(problem, { reference, highs });
  const alone = foods.map((f) => formulation.evaluate({ [f.id]: 100 }));
  formulation.dispose();
  const rows = problem.rules.map((rule): PlainRow => {
    const ends = { min: rule.min ?? Number.NEGATIVE_INFINITY, max: rule.max ?? Number.POSITIVE_INFINITY };
    if ('group' in rule) return { a: foods.map((f) => Number(f.group === rule.group)), ...ends };
    if (!('nutrient' in rule) || rule.basis === 'DM') throw new Error('no such rule is read here');
    return { a: alone.map((e) => e.nutrients[rule.nutrient]![rule.on ?? 'mix'] / 100), ...ends };
  });
  // Foods that one caution is about keep its cap together.
  const cautions = alone[0]!.cautions.filter((c) => c.max_share !== undefined);
  const caps = [...new Set(cautions.map((c) => c.caution))].map((id): PlainRow => {
    const about = cautions.filter((c) => c.caution === id);
    const counted = new Set(about.map((c) => c.food));
    return { a: foods.map((f) => Number(counted.has(f.id))), min: 0, max: about[0]!.max_share! };
  });
  const bounds = foods.map((f, i) => ({ a: unit(foods.length, i), min: f.min ?? 0, max: f.max ?? 100 }));
  return { ids: foods.map((f) => f.id), rows: [...rows, ...caps, ...bounds] };
}

/** Whether grams, by food id, keep every row. */
export function inRange({ ids, rows }: Oracle, grams: Readonly<Record<string, number>>): boolean {
  const y = ids.map((id) => grams[id] ?? 0);
  const total = y.reduce((a, b) => a + b, 0);
  return rows.every(({ a, min, max }) => {
    const value = a.reduce((s, v, i) => s + v * y[i]!, 0) * (100 / total);
    const close = 1e-6 * Math.max(1, ...a.map((v) => Math.abs(v) * 100));
    return value >= min - close && value <= max + close;
  });
}

/**
 * Least sum of misses at a given total, each in parts of its bound (of 1 where the bound is 0): every row may be
 * missed at that price, the grams' own bounds may not.
 */
export async function leastMissOf(
  { ids, rows }: Oracle,
  { low, high, total }: { low: Record<string, number>; high: Record<string, number>; total: number },
): Promise<number | undefined> {
  glpk ??= Promise.resolve(GLPK());
  const g = await glpk;
  const sides = rows.flatMap(({ a, min, max }) => [
    ...(min > Number.NEGATIVE_INFINITY ? [{ a, bound: min }] : []),
    ...(max < Number.POSITIVE_INFINITY ? [{ a: a.map((v) => -v), bound: -max }] : []),
  ]);
  const part = 100 / total;
  const { result } = await g.solve(
    {
      name: 'batch',
      objective: {
        direction: g.GLP_MIN,
        name: 'miss',
        vars: sides.map(({ bound }, r) => ({ name: `s${r}`, coef: 1 / (Math.abs(bound) || 1) })),
      },
      subjectTo: [
        {
          name: 'total',
          vars: ids.map((_, i) => ({ name: `y${i}`, coef: 1 })),
          bnds: { type: g.GLP_FX, lb: total, ub: total },
        },
        ...sides.map(({ a, bound }, r) => ({
          name: `r${r}`,
          vars: [...a.map((v, i) => ({ name: `y${i}`, coef: v * part })), { name: `s${r}`, coef: 1 }],
          bnds: { type: g.GLP_LO, lb: bound, ub: 0 },
        })),
      ],
      bounds: [
        ...ids.map((id, i) => {
          const [lb, ub] = [low[id] ?? 0, high[id] ?? 0];
          return { name: `y${i}`, type: lb === ub ? g.GLP_FX : g.GLP_DB, lb, ub };
        }),
        ...sides.map((_, r) => ({ name: `s${r}`, type: g.GLP_LO, lb: 0, ub: 0 })),
      ],
    },
    { msglev: g.GLP_MSG_OFF, presol: false },
  );
  return result.status === g.GLP_OPT ? result.z : undefined;
}

export interface Asked {
  /** Least and most grams by food id; 0 and any amount unless named. */
  readonly low?: Readonly<Record<string, number>>;
  readonly high?: Readonly<Record<string, number>>;
  readonly total: readonly [number, number];
  /** Cost of a gram; 0 unless named. */
  readonly cost?: Readonly<Record<string, number>>;
}

/** Least cost over all batches, or undefined where there are none. */
export async function leastOf({ ids, rows }: Oracle, asked: Asked): Promise<number | undefined> {
  glpk ??= Promise.resolve(GLPK());
  const g = await glpk;
  const names = ids.map((_, i) => `y${i}`);
  // min <= a . x with x = 100 y / T is (a - min/100) . y >= 0 once both sides are multiplied by T/100.
  const homogeneous = rows.flatMap(({ a, min, max }) => [
    ...(min > Number.NEGATIVE_INFINITY ? [a.map((v) => v - min / 100)] : []),
    ...(max < Number.POSITIVE_INFINITY ? [a.map((v) => max / 100 - v)] : []),
  ]);
  const between = (lb: number, ub: number) => {
    if (lb === ub) return { type: g.GLP_FX, lb, ub };
    return ub === Number.POSITIVE_INFINITY ? { type: g.GLP_LO, lb, ub: 0 } : { type: g.GLP_DB, lb, ub };
  };
  const { result } = await g.solve(
    {
      name: 'batch',
      objective: {
        direction: g.GLP_MIN,
        name: 'cost',
        vars: names.map((name, i) => ({ name, coef: asked.cost?.[ids[i]!] ?? 0 })),
      },
      subjectTo: [
        { name: 'total', vars: names.map((name) => ({ name, coef: 1 })), bnds: between(...asked.total) },
        ...homogeneous.map((a, r) => {
          const scale = Math.max(...a.map(Math.abs)) || 1;
          return {
            name: `r${r}`,
            vars: names.map((name, i) => ({ name, coef: a[i]! / scale })),
            bnds: { type: g.GLP_LO, lb: 0, ub: 0 },
          };
        }),
      ],
      bounds: ids.map((id, i) => ({
        name: names[i]!,
        ...between(asked.low?.[id] ?? 0, asked.high?.[id] ?? Number.POSITIVE_INFINITY),
      })),
    },
    { msglev: g.GLP_MSG_OFF, presol: false },
  );
  return result.status === g.GLP_OPT ? result.z : undefined;
}
