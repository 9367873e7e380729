/** GLPK, by glpk.js. Development only: it is under the GPL and never shipped. */
import GLPK from 'glpk.js/node';
import type { Answer, Rules } from './rules.ts';

export type Glpk = Awaited<ReturnType<typeof GLPK>>;

export const loadGlpk = (): Promise<Glpk> => GLPK();

/** Least cost. @param seconds after which a search for whole columns ends @returns undefined where none was proven */
export function byGlpk(
  g: Glpk,
  { rows, lower, upper, whole }: Rules,
  cost: readonly number[],
  seconds?: number,
): Answer | undefined {
  const name = (i: number) => `x${i}`;
  const terms = (a: readonly number[]) =>
    a.flatMap((coef, i) => (coef === 0 ? [] : [{ name: name(i), coef }]));
  const { result } = g.solve(
    {
      name: 'mix',
      objective: {
        direction: g.GLP_MIN,
        name: 'cost',
        vars: cost.map((coef, i) => ({ name: name(i), coef })),
      },
      subjectTo: rows.map(({ a, min, max }, r) => ({
        name: `r${r}`,
        vars: terms(a),
        bnds: bounds(g, min, max),
      })),
      bounds: lower.map((low, i) => ({ name: name(i), ...bounds(g, low, upper[i] ?? 100) })),
      ...(whole && { generals: whole.flatMap((w, i) => (w ? [name(i)] : [])) }),
    },
    { msglev: g.GLP_MSG_OFF, ...(seconds !== undefined && { tmlim: seconds }) },
  );
  if (result.status !== g.GLP_OPT) return undefined;
  return { x: lower.map((_, i) => result.vars[name(i)] ?? Number.NaN), objective: result.z };
}

function bounds(g: Glpk, lb: number, ub: number) {
  if (lb === ub) return { type: g.GLP_FX, lb, ub };
  if (lb === Number.NEGATIVE_INFINITY) return { type: g.GLP_UP, lb: 0, ub };
  if (ub === Number.POSITIVE_INFINITY) return { type: g.GLP_LO, lb, ub: 0 };
  return { type: g.GLP_DB, lb, ub };
}
