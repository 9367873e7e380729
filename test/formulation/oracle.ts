/**
 * A second opinion that shares nothing with the product's formulation: rows written straight from the words of the
 * machine interface, solved by GLPK.
 */
import GLPK from 'glpk.js/node';
import type { Reference } from '../../src/foods/reference.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { crudeAmount } from './crude-amount.ts';
import type { DrawnProblem } from './problems.ts';

export interface PlainRow {
  readonly a: number[];
  readonly min: number;
  readonly max: number;
}

/** Rows over the shares, in percent: content x 100 against bound x 100 and so on, exactly as the words say. */
export function plainRows(problem: DrawnProblem, reference: Reference): PlainRow[] {
  const amount = (ref: string, tag: Tag) => crudeAmount(reference.get(ref)!, tag) ?? 0;
  const dry = (ref: string) => 1 - amount(ref, 'WATER') / 100;
  const R = problem.beside.reduce((s, b) => s + b.share_of_ration, 0) / 100;
  const rows: PlainRow[] = [{ a: problem.foods.map(() => 1), min: 100, max: 100 }];
  for (const rule of problem.rules) {
    const k = rule.on === 'ration' ? 1 - R : 1;
    const add = (of: (ref: string) => number, bounded: { min?: number; max?: number }) => {
      const constant =
        rule.on === 'ration'
          ? problem.beside.reduce((s, b) => s + (b.share_of_ration / 100) * of(b.ref!), 0)
          : 0;
      rows.push({
        a: problem.foods.map((f) => (k * of(f.ref!)) / 100),
        min: (bounded.min ?? Number.NEGATIVE_INFINITY) - constant,
        max: (bounded.max ?? Number.POSITIVE_INFINITY) - constant,
      });
    };
    if ('group' in rule) {
      rows.push({
        a: problem.foods.map((f) => (f.group === rule.group ? k : 0)),
        min: rule.min ?? Number.NEGATIVE_INFINITY,
        max: rule.max ?? Number.POSITIVE_INFINITY,
      });
    } else if ('ratio' in rule) {
      const [top, bottom] = rule.ratio;
      if (rule.min !== undefined) add((r) => amount(r, top) - rule.min! * amount(r, bottom), { min: 0 });
      if (rule.max !== undefined) add((r) => amount(r, top) - rule.max! * amount(r, bottom), { max: 0 });
    } else if ('nutrient' in rule && rule.basis === 'DM') {
      if (rule.min !== undefined) add((r) => amount(r, rule.nutrient) - rule.min! * dry(r), { min: 0 });
      if (rule.max !== undefined) add((r) => amount(r, rule.nutrient) - rule.max! * dry(r), { max: 0 });
    } else if ('nutrient' in rule) add((r) => amount(r, rule.nutrient), rule);
  }
  return rows.filter((r) => r.min > Number.NEGATIVE_INFINITY || r.max < Number.POSITIVE_INFINITY);
}

type Glpk = Awaited<ReturnType<typeof GLPK>>;
let glpk: Promise<Glpk> | undefined;

/** Branching nodes are not counted by GLPK, so its search for whole grams ends by the clock, in s: then it is undecided. */
const SEARCH_SECONDS = 5;

/** Bounds as GLPK writes them. */
function boundsFor(g: Glpk, min: number, max: number) {
  if (min === max) return { type: g.GLP_FX, lb: min, ub: max };
  if (min === Number.NEGATIVE_INFINITY) return { type: g.GLP_UP, lb: 0, ub: max };
  if (max === Number.POSITIVE_INFINITY) return { type: g.GLP_LO, lb: min, ub: 0 };
  return { type: g.GLP_DB, lb: min, ub: max };
}

/**
 * Whether the batch can be weighed in whole grams so that every rule is kept, by GLPK's branch and bound; undefined
 * where that was not decided in time.
 */
export async function glpkGrams(problem: DrawnProblem, reference: Reference): Promise<boolean | undefined> {
  glpk ??= Promise.resolve(GLPK());
  const g = await glpk;
  const perGram = 100 / problem.batch_grams;
  const { result } = await g.solve(
    {
      name: 'grams',
      objective: { direction: g.GLP_MIN, name: 'none', vars: [{ name: problem.foods[0]!.id, coef: 0 }] },
      subjectTo: plainRows(problem, reference).map((row, r) => {
        const scale = perGram * (Math.max(...row.a.map(Math.abs)) || 1);
        return {
          name: `r${r}`,
          vars: problem.foods.map((f, i) => ({ name: f.id, coef: (row.a[i]! * perGram) / scale })),
          bnds: boundsFor(g, row.min / scale, row.max / scale),
        };
      }),
      bounds: problem.foods.map((f) => ({
        name: f.id,
        ...boundsFor(
          g,
          Math.ceil((f.min ?? 0) / perGram - 1e-9),
          Math.floor((f.max ?? 100) / perGram + 1e-9),
        ),
      })),
      generals: problem.foods.map((f) => f.id),
    },
    { msglev: g.GLP_MSG_OFF, presol: true, tmlim: SEARCH_SECONDS },
  );
  if (result.status === g.GLP_OPT || result.status === g.GLP_FEAS) return true;
  return result.status === g.GLP_NOFEAS || result.status === g.GLP_INFEAS ? false : undefined;
}

/** Least cost over the shares by GLPK; undefined when there is no mix. Rows are scaled to a largest coefficient of 1. */
export async function glpkSolve(
  problem: DrawnProblem,
  reference: Reference,
  cost: readonly number[],
): Promise<number | undefined> {
  glpk ??= Promise.resolve(GLPK());
  const g = await glpk;
  const rows = plainRows(problem, reference);
  const result = await g.solve(
    {
      name: 'mix',
      objective: {
        direction: g.GLP_MIN,
        name: 'cost',
        vars: problem.foods.map((f, i) => ({ name: f.id, coef: cost[i]! })),
      },
      subjectTo: rows.map((row, r) => {
        const scale = Math.max(...row.a.map(Math.abs)) || 1;
        return {
          name: `r${r}`,
          vars: problem.foods.map((f, i) => ({ name: f.id, coef: row.a[i]! / scale })),
          bnds: boundsFor(g, row.min / scale, row.max / scale),
        };
      }),
      bounds: problem.foods.map((f) => ({ name: f.id, ...boundsFor(g, f.min ?? 0, f.max ?? 100) })),
    },
    { msglev: g.GLP_MSG_OFF, presol: false },
  );
  return result.result.status === g.GLP_OPT ? result.result.z : undefined;
}
