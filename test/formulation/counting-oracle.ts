/**
 * A second opinion on problems with counting rules and aims, which shares nothing with the product's formulation: a
 * mixed-integer program written straight from the words of the machine interface and solved by GLPK, and beside it a
 * search over intervals of the shares, with a small LP or QP at every node. Where the two differ, the search decides.
 */
import GLPK from 'glpk.js/node';
import { solveQP } from 'quadprog';
import type { Reference } from '../../src/foods/reference.ts';
import type { Aim, CountRule, Measured } from '../../src/formulation/problem/problem.ts';
import type { CountingProblem } from './counting-problems.ts';
import { crudeAmount } from './crude-amount.ts';
import { plainRows } from './oracle.ts';

type Counting = { problem: CountingProblem; reference: Reference };
/** Coefficients over the shares, between bounds. */
interface Row {
  readonly a: readonly number[];
  readonly min: number;
  readonly max: number;
}
/** An aim, least is best: `most` is how far it may go. */
export interface Hold {
  readonly aim: Aim;
  readonly most: number;
}
export type Goal =
  | { readonly kind: 'any' }
  | { readonly kind: 'cost'; readonly price: readonly number[] }
  | { readonly kind: 'aim'; readonly aim: Aim };
export interface Found {
  readonly z: number;
  readonly x: readonly number[];
}

/** How often the search had to decide; printed, so that a silent dependence on it shows. */
export const searched = { count: 0 };

/** A share below this, in percent, is none. */
const NOTHING = 1e-6;

// ---- the words ----

const onHand = (p: CountingProblem, i: number) => (100 * (p.foods[i]!.on_hand_grams ?? 0)) / p.batch_grams;

/** Least share of a food that is used, percent; 0 where nothing is asked. */
function leastShare(p: CountingProblem, i: number): number {
  return Math.max(p.foods[i]!.if_used ?? 0, (100 * (p.least_grams ?? 0)) / p.batch_grams);
}

function countRules(p: CountingProblem): { rule: CountRule; foods: number[]; index: number }[] {
  return p.rules.flatMap((rule, index) => {
    if (!('count' in rule)) return [];
    const counted = p.foods.flatMap((f, i) =>
      !f.refused && (rule.count.group === undefined || f.group === rule.count.group) ? [i] : [],
    );
    return [{ rule, foods: counted, index }];
  });
}

/** Rows of the rules that count nothing; the first is the total. Bounds on no side are left out. */
function shareRows({ problem, reference }: Counting): Row[] {
  const fed = problem.beside.reduce((s, b) => s + b.share_of_ration, 0) / 100;
  const single = problem.rules.flatMap((r): Row[] => {
    if (!('food' in r)) return [];
    const k = r.on === 'ration' ? 1 - fed : 1;
    return [
      {
        a: problem.foods.map((f) => (f.id === r.food ? k : 0)),
        min: r.min ?? Number.NEGATIVE_INFINITY,
        max: r.max ?? Number.POSITIVE_INFINITY,
      },
    ];
  });
  return [...plainRows(problem, reference), ...single].filter(
    (r) => r.min > Number.NEGATIVE_INFINITY || r.max < Number.POSITIVE_INFINITY,
  );
}

/** A linear measure of the shares: sum of `a` x plus a constant. */
function linear({ problem, reference }: Counting, measured: Measured): { a: number[]; constant: number } {
  if ('group' in measured)
    return { a: problem.foods.map((f) => (f.group === measured.group ? 1 : 0)), constant: 0 };
  if ('food' in measured)
    return { a: problem.foods.map((f) => (f.id === measured.food ? 1 : 0)), constant: 0 };
  const amount = (ref: string) => crudeAmount(reference.get(ref)!, measured.nutrient) ?? 0;
  const ration = measured.on === 'ration';
  const fed = problem.beside.reduce((s, b) => s + b.share_of_ration, 0) / 100;
  return {
    a: problem.foods.map((f) => ((ration ? 1 - fed : 1) * amount(f.ref!)) / 100),
    constant: ration ? problem.beside.reduce((s, b) => s + (b.share_of_ration / 100) * amount(b.ref!), 0) : 0,
  };
}

/** -1 for an aim that wants the most, so that the least of the signed value is its best. */
export const signOf = (aim: Aim): 1 | -1 =>
  aim.aim === 'liked' || aim.aim === 'cupboard' || aim.aim === 'more' ? -1 : 1;

const isWhole = (aim: Aim) => aim.aim === 'few' || aim.aim === 'few to buy';

/** Value of an aim for given shares, in its own unit. */
export function reached(at: Counting, aim: Aim, x: readonly number[]): number {
  const { problem } = at;
  const sum = (of: (share: number, i: number) => number) => x.reduce((s, v, i) => s + of(v, i), 0);
  switch (aim.aim) {
    case 'liked':
      return sum((v, i) => (problem.foods[i]!.liked ? v : 0));
    case 'cupboard':
      return sum((v, i) => Math.min(v, onHand(problem, i)));
    case 'few':
      return x.filter((v) => v > NOTHING).length;
    case 'few to buy':
      return x.filter((v, i) => v > onHand(problem, i) + NOTHING).length;
    case 'cheap':
      return sum((v, i) => (v * problem.foods[i]!.price_per_kg!) / 100);
    default: {
      const { a, constant } = linear(at, aim);
      return constant + sum((v, i) => a[i]! * v);
    }
  }
}

/** Number that the objective makes least. */
function objectiveOf(problem: CountingProblem, x: readonly number[]): number {
  if (problem.objective === 'cheapest')
    return x.reduce((s, v, i) => s + v * problem.foods[i]!.price_per_kg!, 0);
  const want = wanted(problem);
  return x.reduce((s, v, i) => s + (problem.foods[i]!.refused ? 0 : (v - want[i]!) ** 2), 0);
}

/** The point whose squared distance is made least: wanted shares, or none for "varied". */
function wanted(problem: CountingProblem): number[] {
  if (problem.objective === 'varied') return problem.foods.map(() => 0);
  const open = problem.foods.filter((f) => !f.refused);
  const given = open.reduce((s, f) => s + (f.want ?? 0), 0);
  const unsaid = open.filter((f) => f.want === undefined).length;
  return problem.foods.map((f) => (f.refused ? 0 : (f.want ?? Math.max(0, (100 - given) / unsaid))));
}

/** Every rule that given shares break, in words; empty when all are kept. */
export function broken(at: Counting, x: readonly number[], tolerance = 1e-7): string[] {
  const { problem } = at;
  const out: string[] = [];
  shareRows(at).forEach((row, r) => {
    const value = row.a.reduce((s, a, i) => s + a * x[i]!, 0);
    const slack = tolerance * Math.max(1, ...row.a.map(Math.abs));
    if (value < row.min - slack || value > row.max + slack)
      out.push(`row ${r}: ${value} outside ${row.min} to ${row.max}`);
  });
  problem.foods.forEach((f, i) => {
    const v = x[i]!;
    const [low, high] = f.refused ? [0, 0] : [f.min ?? 0, f.max ?? 100];
    if (v < low - tolerance || v > high + tolerance) out.push(`${f.id}: ${v} outside ${low} to ${high}`);
    const least = leastShare(problem, i);
    if (v > NOTHING && v < least - NOTHING) out.push(`${f.id}: ${v} used, but below ${least}`);
  });
  for (const { rule, foods, index } of countRules(problem)) {
    const enough = foods.filter((i) => x[i]! >= rule.count.at_least! - NOTHING).length;
    if (rule.min !== undefined && enough < rule.min)
      out.push(`rule ${index}: ${enough} foods, fewer than ${rule.min}`);
    const used = foods.filter((i) => x[i]! > NOTHING).length;
    if (rule.max !== undefined && used > rule.max)
      out.push(`rule ${index}: ${used} foods, more than ${rule.max}`);
  }
  return out;
}

/**
 * The problem with every bound wider (`by` > 0) or narrower (`by` < 0) by that part of it, and of 1 at least: what is
 * possible in one and not in the other is too close to call. A default bound (0 and 100) stays.
 */
function bent(problem: CountingProblem, by: number): CountingProblem {
  const lower = (v: number) => Math.max(0, v - by * Math.max(1, Math.abs(v)));
  const upper = (v: number) => Math.max(0, v + by * Math.max(1, Math.abs(v)));
  const bend = <T extends { min?: number; max?: number }>(b: T): T => ({
    ...b,
    ...(b.min === undefined ? {} : { min: lower(b.min) }),
    ...(b.max === undefined ? {} : { max: upper(b.max) }),
  });
  return {
    ...problem,
    foods: problem.foods.map((f) => ({
      ...bend(f),
      ...(f.if_used === undefined ? {} : { if_used: lower(f.if_used) }),
    })),
    rules: problem.rules.map((r) =>
      'count' in r
        ? {
            ...r,
            count: {
              ...r.count,
              ...(r.count.at_least === undefined ? {} : { at_least: lower(r.count.at_least) }),
            },
          }
        : bend(r),
    ),
    ...(problem.least_grams === undefined ? {} : { least_grams: lower(problem.least_grams) }),
  };
}

// ---- the mixed-integer program ----

type Glpk = Awaited<ReturnType<typeof GLPK>>;
let glpk: Promise<Glpk> | undefined;

interface Column {
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
}
interface Line {
  readonly terms: readonly (readonly [string, number])[];
  readonly min: number;
  readonly max: number;
}
interface Program {
  readonly columns: readonly Column[];
  readonly lines: readonly Line[];
  readonly goal: readonly (readonly [string, number])[];
  readonly constant: number;
}

/** Least of the goal; undefined where there is nothing, or where GLPK gives up. */
async function run(program: Program): Promise<{ z: number; values: Record<string, number> } | undefined> {
  glpk ??= Promise.resolve(GLPK());
  const g = await glpk;
  const bounds = (min: number, max: number) => {
    if (min === max) return { type: g.GLP_FX, lb: min, ub: max };
    if (min === Number.NEGATIVE_INFINITY) return { type: g.GLP_UP, lb: 0, ub: max };
    if (max === Number.POSITIVE_INFINITY) return { type: g.GLP_LO, lb: min, ub: 0 };
    return { type: g.GLP_DB, lb: min, ub: max };
  };
  if (program.columns.some((c) => c.min > c.max)) return undefined;
  if (program.lines.some((l) => l.min > l.max)) return undefined;
  const binaries = program.columns.filter((c) => c.whole).map((c) => c.name);
  const { result } = await g.solve(
    {
      name: 'mix',
      objective: {
        direction: g.GLP_MIN,
        name: 'goal',
        vars: program.goal.map(([name, coef]) => ({ name, coef })),
      },
      subjectTo: program.lines.map((line, l) => {
        const scale = Math.max(...line.terms.map(([, coef]) => Math.abs(coef)), 0) || 1;
        return {
          name: `l${l}`,
          vars: line.terms.map(([name, coef]) => ({ name, coef: coef / scale })),
          bnds: bounds(line.min / scale, line.max / scale),
        };
      }),
      bounds: program.columns.filter((c) => !c.whole).map((c) => ({ name: c.name, ...bounds(c.min, c.max) })),
      binaries,
    },
    // Without its presolve GLPK wants a solved relaxation to begin a mixed-integer program with.
    { msglev: g.GLP_MSG_OFF, presol: binaries.length > 0, mipgap: 0, tmlim: 10 },
  );
  if (result.status !== g.GLP_OPT) return undefined;
  return { z: result.z + program.constant, values: result.vars };
}

/** Columns: x shares; u used; b to buy; w out of the cupboard; c_r_i counts for rule r. */
function programOf(at: Counting, holds: readonly Hold[], goal: Goal): Program {
  const { problem } = at;
  const n = problem.foods.length;
  const every = [...problem.foods.keys()];
  const aims = [...holds.map((h) => h.aim), ...(goal.kind === 'aim' ? [goal.aim] : [])];
  const has = (name: Aim['aim']) => aims.some((a) => a.aim === name);
  const limits = countRules(problem);
  const low = every.map((i) => (problem.foods[i]!.refused ? 0 : (problem.foods[i]!.min ?? 0)));
  const high = every.map((i) => (problem.foods[i]!.refused ? 0 : (problem.foods[i]!.max ?? 100)));
  const columns: Column[] = every.map((i) => ({ name: `x${i}`, min: low[i]!, max: high[i]! }));
  const lines: Line[] = shareRows(at).map((row) => ({
    terms: every.map((i) => [`x${i}`, row.a[i]!] as const),
    min: row.min,
    max: row.max,
  }));
  const none = Number.NEGATIVE_INFINITY;
  for (const i of every) {
    const least = leastShare(problem, i);
    const limited = has('few') || limits.some((l) => l.rule.max !== undefined && l.foods.includes(i));
    if (least > 0 || limited) {
      columns.push({ name: `u${i}`, min: 0, max: 1, whole: true });
      lines.push({
        terms: [
          [`x${i}`, 1],
          [`u${i}`, -high[i]!],
        ],
        min: none,
        max: 0,
      });
      if (least > 0)
        lines.push({
          terms: [
            [`x${i}`, 1],
            [`u${i}`, -least],
          ],
          min: 0,
          max: Number.POSITIVE_INFINITY,
        });
    }
    const held = onHand(problem, i);
    if (has('few to buy') && held < high[i]!) {
      columns.push({ name: `b${i}`, min: 0, max: 1, whole: true });
      lines.push({
        terms: [
          [`x${i}`, 1],
          [`b${i}`, held - high[i]!],
        ],
        min: none,
        max: held,
      });
    }
    if (has('cupboard')) {
      columns.push({ name: `w${i}`, min: 0, max: held });
      lines.push({
        terms: [
          [`w${i}`, 1],
          [`x${i}`, -1],
        ],
        min: none,
        max: 0,
      });
    }
  }
  for (const { rule, foods, index } of limits) {
    if (rule.max !== undefined && foods.length > 0)
      lines.push({ terms: foods.map((i) => [`u${i}`, 1] as const), min: none, max: rule.max });
    if (rule.min === undefined || rule.min === 0) continue;
    if (foods.length < rule.min) lines.push({ terms: [['x0', 1]], min: 1000, max: 1000 });
    for (const i of foods) {
      columns.push({ name: `c${index}_${i}`, min: 0, max: 1, whole: true });
      lines.push({
        terms: [
          [`x${i}`, 1],
          [`c${index}_${i}`, -rule.count.at_least!],
        ],
        min: 0,
        max: Number.POSITIVE_INFINITY,
      });
    }
    lines.push({
      terms: foods.map((i) => [`c${index}_${i}`, 1] as const),
      min: rule.min,
      max: Number.POSITIVE_INFINITY,
    });
  }
  const measure = (aim: Aim): { terms: [string, number][]; constant: number } => {
    const sign = signOf(aim);
    const names = new Set(columns.map((c) => c.name));
    const all = (letter: string) =>
      every.flatMap((i): [string, number][] => (names.has(`${letter}${i}`) ? [[`${letter}${i}`, sign]] : []));
    if (aim.aim === 'few') return { terms: all('u'), constant: 0 };
    if (aim.aim === 'few to buy') return { terms: all('b'), constant: 0 };
    if (aim.aim === 'cupboard') return { terms: all('w'), constant: 0 };
    // Linear in the shares: read the coefficients off by giving 1 percent of each food.
    const nothing = new Array<number>(n).fill(0);
    const constant = reached(at, aim, nothing);
    const slope = (i: number) => reached(at, aim, nothing.with(i, 1)) - constant;
    return { terms: every.map((i) => [`x${i}`, sign * slope(i)]), constant: sign * constant };
  };
  for (const hold of holds) {
    const { terms, constant } = measure(hold.aim);
    if (terms.length > 0) lines.push({ terms, min: none, max: hold.most - constant });
  }
  const sought =
    goal.kind === 'aim'
      ? measure(goal.aim)
      : {
          terms: every.map((i): [string, number] => [`x${i}`, goal.kind === 'cost' ? goal.price[i]! : 0]),
          constant: 0,
        };
  return { columns, lines, goal: sought.terms, constant: sought.constant };
}

const sharesFrom = (at: Counting, values: Record<string, number>) =>
  at.problem.foods.map((_, i) => values[`x${i}`]!);

/**
 * Least of the goal over every mix, by a mixed-integer program. Its whole numbers are then fixed and the rest is solved
 * again, for GLPK takes 0.00001 for whole; where the two disagree the search decides.
 * @returns undefined when there is no mix
 */
export async function best(at: Counting, holds: readonly Hold[], goal: Goal): Promise<Found | undefined> {
  const program = programOf(at, holds, goal);
  const first = await run(program);
  if (!first) return undefined;
  if (!program.columns.some((c) => c.whole)) return { z: first.z, x: sharesFrom(at, first.values) };
  const fixed = program.columns.map((c) => {
    if (!c.whole) return c;
    const value = Math.round(first.values[c.name]!);
    return { name: c.name, min: value, max: value };
  });
  const exact = await run({ ...program, columns: fixed });
  if (exact && Math.abs(exact.z - first.z) <= 1e-7 * Math.max(1, Math.abs(exact.z)))
    return { z: exact.z, x: sharesFrom(at, exact.values) };
  return search(at, holds, goal);
}

// ---- the search over intervals ----

/** Foods that may not lie above their own threshold, or must reach one, and how many. */
interface Counter {
  readonly kind: 'at most' | 'at least';
  readonly foods: readonly number[];
  readonly threshold: (i: number) => number;
  readonly number: number;
}

function countersOf({ problem }: Counting, holds: readonly Hold[]): Counter[] {
  const every = [...problem.foods.keys()];
  const rules = countRules(problem).flatMap(({ rule, foods }): Counter[] => [
    ...(rule.max === undefined
      ? []
      : [{ kind: 'at most' as const, foods, threshold: () => 0, number: rule.max }]),
    ...(rule.min === undefined
      ? []
      : [{ kind: 'at least' as const, foods, threshold: () => rule.count.at_least!, number: rule.min }]),
  ]);
  const aims = holds.flatMap((h): Counter[] =>
    isWhole(h.aim)
      ? [
          {
            kind: 'at most',
            foods: every,
            threshold: h.aim.aim === 'few' ? () => 0 : (i) => onHand(problem, i),
            number: Math.floor(h.most + 1e-9),
          },
        ]
      : [],
  );
  return [...rules, ...aims];
}

type Interval = readonly [number, number];

/** The intervals of one food's share between which any count can change. */
function intervalsOf({ problem }: Counting, i: number, counters: readonly Counter[]): Interval[] {
  const f = problem.foods[i]!;
  if (f.refused) return [[0, 0]];
  const [low, high] = [f.min ?? 0, f.max ?? 100];
  const least = leastShare(problem, i);
  const mine = counters.filter((c) => c.foods.includes(i));
  const apart = least > 0 || mine.some((c) => c.kind === 'at most' && c.threshold(i) <= 0);
  const out: Interval[] = low <= 0 && apart ? [[0, 0]] : [];
  const start = Math.max(low, least);
  if (start > high) return out;
  const cuts = [...new Set(mine.map((c) => c.threshold(i)))]
    .filter((t) => t > start && t < high)
    .sort((a, b) => a - b);
  const ends = [start, ...cuts, high];
  if (start === high) out.push([start, high]);
  else for (let k = 0; k + 1 < ends.length; k++) out.push([ends[k]!, ends[k + 1]!]);
  return out;
}

function counts(counter: Counter, i: number, [low, high]: Interval): boolean {
  const t = counter.threshold(i);
  return counter.kind === 'at most' ? high > t && low >= t : low >= t;
}

type Relaxed = (low: readonly number[], high: readonly number[]) => Promise<Found | undefined>;

/** Whether shares keep what is counted, to the accuracy of the solvers under the search. */
function counted(at: Counting, counters: readonly Counter[], x: readonly number[]): number[] {
  const off = new Set<number>();
  x.forEach((v, i) => {
    if (v > 1e-9 && v < leastShare(at.problem, i) - 1e-9) off.add(i);
  });
  for (const c of counters) {
    const met = c.foods.filter((i) =>
      c.kind === 'at most' ? x[i]! > c.threshold(i) + 1e-9 : x[i]! >= c.threshold(i) - 1e-9,
    );
    if (c.kind === 'at most' && met.length > c.number) for (const i of met) off.add(i);
    if (c.kind === 'at least' && met.length < c.number)
      for (const i of c.foods) if (!met.includes(i)) off.add(i);
  }
  return [...off];
}

async function branch(
  at: Counting,
  holds: readonly Hold[],
  relaxed: Relaxed,
  any: boolean,
): Promise<Found | undefined> {
  const counters = countersOf(at, holds);
  const root = at.problem.foods.map((_, i) => intervalsOf(at, i, counters));
  let found: Found | undefined;
  const stack: Interval[][][] = [root];
  while (stack.length > 0) {
    const node = stack.pop()!;
    if (node.some((intervals) => intervals.length === 0)) continue;
    const hopeless = counters.some((c) =>
      c.kind === 'at most'
        ? c.foods.filter((i) => node[i]!.every((v) => counts(c, i, v))).length > c.number
        : c.foods.filter((i) => node[i]!.some((v) => counts(c, i, v))).length < c.number,
    );
    if (hopeless) continue;
    const answer = await relaxed(
      node.map((v) => v[0]![0]),
      node.map((v) => v.at(-1)![1]),
    );
    if (!answer) continue;
    if (found && answer.z >= found.z - 1e-10 * Math.max(1, Math.abs(found.z))) continue;
    const off = counted(at, counters, answer.x);
    const open = node.flatMap((v, i) => (v.length > 1 ? [i] : []));
    if (off.length === 0 || open.length === 0) {
      found = answer;
      if (any) return found;
      continue;
    }
    const pick = open.find((i) => off.includes(i)) ?? open[0]!;
    const v = answer.x[pick]!;
    const away = ([low, high]: Interval) => Math.max(0, low - v, v - high);
    const nearestLast = [...node[pick]!].sort((a, b) => away(b) - away(a));
    for (const one of nearestLast) stack.push(node.with(pick, [one]));
  }
  return found;
}

/** The LP of a node: everything but what is counted. */
function relaxedProgram(at: Counting, holds: readonly Hold[], goal: Goal): Relaxed {
  const uncounted = {
    ...at,
    problem: {
      ...at.problem,
      least_grams: undefined,
      foods: at.problem.foods.map((f) => ({ ...f, if_used: undefined })),
      rules: at.problem.rules.filter((r) => !('count' in r)),
    },
  };
  const program = programOf(
    uncounted,
    holds.filter((h) => !isWhole(h.aim)),
    goal,
  );
  return async (low, high) => {
    const columns = program.columns.map((c) => {
      if (!c.name.startsWith('x')) return c;
      const i = Number(c.name.slice(1));
      return { ...c, min: low[i]!, max: high[i]! };
    });
    const answer = await run({ ...program, columns });
    return answer && { z: answer.z, x: sharesFrom(at, answer.values) };
  };
}

/** {@link best}, by the search. */
export async function search(at: Counting, holds: readonly Hold[], goal: Goal): Promise<Found | undefined> {
  searched.count++;
  if (goal.kind !== 'aim' || !isWhole(goal.aim))
    return branch(at, holds, relaxedProgram(at, holds, goal), goal.kind === 'any');
  // Fewest foods: allow one more until there is a mix.
  for (let number = 0; number <= at.problem.foods.length; number++) {
    const within = [...holds, { aim: goal.aim, most: number }];
    const answer = await branch(at, within, relaxedProgram(at, within, { kind: 'any' }), true);
    if (answer) return { z: number, x: answer.x };
  }
  return undefined;
}

/**
 * {@link best}, or with "squares" {@link nearestMix}, by trying every combination of intervals, one LP or QP each: slow,
 * and hard to get wrong.
 */
export async function bruteForce(
  at: Counting,
  holds: readonly Hold[],
  goal: Goal | 'squares',
): Promise<{ z: number } | undefined> {
  const whole = goal !== 'squares' && goal.kind === 'aim' && isWhole(goal.aim) ? goal.aim : undefined;
  // So that intervals are cut where the goal counts, too.
  const counters = countersOf(at, whole ? [...holds, { aim: whole, most: 1000 }] : holds);
  const intervals = at.problem.foods.map((_, i) => intervalsOf(at, i, counters));
  const relaxed =
    goal === 'squares'
      ? relaxedSquares(at, holds)
      : relaxedProgram(at, holds, whole ? { kind: 'any' } : goal);
  let z: number | undefined;
  const pattern: Interval[] = [];
  const visit = async (i: number): Promise<void> => {
    if (i < intervals.length) {
      for (const v of intervals[i]!) {
        pattern[i] = v;
        await visit(i + 1);
      }
      return;
    }
    const numbers = counters.map((c) => c.foods.filter((k) => counts(c, k, pattern[k]!)).length);
    if (counters.some((c, k) => (c.kind === 'at most' ? numbers[k]! > c.number : numbers[k]! < c.number)))
      return;
    const answer = await relaxed(
      pattern.map((v) => v[0]),
      pattern.map((v) => v[1]),
    );
    if (!answer) return;
    const value = whole ? numbers.at(-1)! : answer.z;
    if (z === undefined || value < z) z = value;
  };
  await visit(0);
  return z === undefined ? undefined : { z };
}

// ---- least squares ----

/**
 * Least squared distance from `want` within bounds and rows. quadprog takes a row that depends on others and misses by
 * the last rounding error for a contradiction; a little room, more where needed, lets it pass.
 */
function leastSquares(
  rows: readonly Row[],
  low: readonly number[],
  high: readonly number[],
  want: readonly number[],
): Found | undefined {
  for (const room of [0, 1e-10, 1e-9, 1e-8]) {
    const found = leastSquaresWithin(rows, low, high, want, room);
    if (found) return found;
  }
  return undefined;
}

/** By quadprog (Goldfarb and Idnani), which counts from 1; every bound but the total is wider by `room`. */
function leastSquaresWithin(
  rows: readonly Row[],
  low: readonly number[],
  high: readonly number[],
  want: readonly number[],
  room: number,
): Found | undefined {
  const free = [...low.keys()].filter((i) => high[i]! > low[i]!);
  const settled = (row: Row) => row.a.reduce((s, a, i) => s + (free.includes(i) ? 0 : a * low[i]!), 0);
  const planes: { a: number[]; b: number }[] = [];
  let total: { a: number[]; b: number } | undefined;
  for (const [r, row] of rows.entries()) {
    const a = free.map((i) => row.a[i]!);
    const scale = Math.max(...row.a.map(Math.abs), 0) || 1;
    const rest = settled(row);
    if (a.every((v) => v === 0)) {
      if (rest < row.min - 1e-9 * scale || rest > row.max + 1e-9 * scale) return undefined;
      continue;
    }
    const scaled = (sign: number, bound: number) => ({
      a: a.map((v) => (sign * v) / scale),
      b: (sign * (bound - rest)) / scale,
    });
    if (r === 0) total = scaled(1, row.min);
    else {
      if (row.min > Number.NEGATIVE_INFINITY) planes.push(scaled(1, row.min));
      if (row.max < Number.POSITIVE_INFINITY) planes.push(scaled(-1, row.max));
    }
  }
  const distance = (x: readonly number[]) => x.reduce((s, v, i) => s + (v - want[i]!) ** 2, 0);
  if (free.length === 0) return { z: distance(low), x: [...low] };
  free.forEach((i, k) => {
    const e = free.map((_, j) => (j === k ? 1 : 0));
    planes.push({ a: e, b: low[i]! }, { a: e.map((v) => -v), b: -high[i]! });
  });
  const all = [total!, ...planes];
  const from1 = <T>(list: readonly T[]) => [0 as unknown as T, ...list];
  const D = from1(free.map((_, i) => from1(free.map((__, j) => (i === j ? 2 : 0)))));
  const A = from1(free.map((_, k) => from1(all.map((p) => p.a[k]!))));
  const d = from1(free.map((i) => 2 * want[i]!));
  const answer = solveQP(
    D,
    d,
    A,
    from1(all.map((p, k) => (k === 0 ? p.b : p.b - room * Math.max(1, Math.abs(p.b))))),
    1,
  );
  if (answer.message) return undefined;
  const solution = answer.solution.slice(1);
  if (solution.some((v) => !Number.isFinite(v))) return undefined;
  const x = [...low];
  free.forEach((i, k) => {
    x[i] = solution[k]!;
  });
  return { z: distance(x), x };
}

/** Least of the objective "nearest" or "varied" over every mix; undefined when there is none. */
export async function nearestMix(at: Counting, holds: readonly Hold[]): Promise<Found | undefined> {
  return branch(at, holds, relaxedSquares(at, holds), false);
}

/** The QP of a node: everything but what is counted. */
function relaxedSquares(at: Counting, holds: readonly Hold[]): Relaxed {
  const want = wanted(at.problem);
  const rows: Row[] = shareRows(at);
  const nothing = at.problem.foods.map(() => 0);
  const shelves = holds.filter((h) => h.aim.aim === 'cupboard');
  for (const { aim, most } of holds) {
    if (isWhole(aim) || aim.aim === 'cupboard') continue;
    const constant = reached(at, aim, nothing);
    const a = nothing.map((_, i) => signOf(aim) * (reached(at, aim, nothing.with(i, 1)) - constant));
    rows.push({ a, min: Number.NEGATIVE_INFINITY, max: most - signOf(aim) * constant });
  }
  return async (low, high) => {
    for (let round = 0; round < 200; round++) {
      const answer = leastSquares(rows, low, high, want);
      if (!answer) return undefined;
      const missed = shelves.find((h) => -reached(at, h.aim, answer.x) > h.most + 1e-10 * Math.abs(h.most));
      if (!missed) return answer;
      // What the cupboard gives is the least of x and what is there: a plane for the foods not used up holds always.
      const short = answer.x.map((v, i) => v < onHand(at.problem, i));
      const rest = short.reduce((s, yes, i) => s + (yes ? 0 : onHand(at.problem, i)), 0);
      rows.push({
        a: short.map((yes) => (yes ? 1 : 0)),
        min: -missed.most - rest,
        max: Number.POSITIVE_INFINITY,
      });
    }
    return undefined;
  };
}

// ---- aims in order ----

export interface Ranked {
  /** Best of each aim given those before it; least is best (see {@link signOf}). */
  readonly bests: readonly number[];
  /** The objective given all aims, and a mix that has it. */
  readonly objective: number;
  readonly x: readonly number[];
}

/** What an aim may be when a later one is sought: its best, what it gives, and a part `slack` of it. */
export function holdOf(aim: Aim, value: number, slack: number): Hold {
  const most = value + (aim.give ?? 0);
  return { aim, most: isWhole(aim) ? Math.floor(most + 1e-6) : most + slack * Math.max(1, Math.abs(value)) };
}

/** Best of the objective under holds. */
export async function bestObjective(at: Counting, holds: readonly Hold[]): Promise<Found | undefined> {
  if (at.problem.objective !== 'cheapest') return nearestMix(at, holds);
  const goal: Goal = { kind: 'cost', price: at.problem.foods.map((f) => f.price_per_kg!) };
  return (await best(at, holds, goal)) ?? (holds.length > 0 ? search(at, holds, goal) : undefined);
}

/**
 * Each aim at its best in order, then the objective.
 * @returns undefined when there is no mix; "undecided" where the solvers lose a mix they had
 */
export async function ranked(at: Counting, slack: number): Promise<Ranked | 'undecided' | undefined> {
  const holds: Hold[] = [];
  const bests: number[] = [];
  for (const aim of at.problem.aims ?? []) {
    const goal: Goal = { kind: 'aim', aim };
    const answer =
      (await best(at, holds, goal)) ?? (holds.length > 0 ? await search(at, holds, goal) : undefined);
    if (!answer) return holds.length === 0 ? undefined : 'undecided';
    const value = isWhole(aim) ? Math.round(answer.z) : answer.z;
    bests.push(value);
    holds.push(holdOf(aim, value, slack));
  }
  const last = await bestObjective(at, holds);
  if (!last) return holds.length === 0 ? undefined : 'undecided';
  return { bests, objective: last.z, x: last.x };
}

/** Whether there is any mix at all. */
export async function possible(at: Counting): Promise<boolean> {
  return (await best(at, [], { kind: 'any' })) !== undefined;
}

/** An answer to be checked: shares in the order of the foods, and what is claimed of them. */
export interface Answer {
  readonly x: readonly number[];
  readonly objective: number;
  readonly aims: readonly { readonly aim: string; readonly value: number }[];
  /** How far the objective may be from its best, where that is not proven. */
  readonly gap: number;
}

const part = (of: number, value: number) => of * Math.max(1, Math.abs(value));

/**
 * Everything wrong with an answer: rules broken, values that the shares do not have, aims or an objective short of
 * their best. Aims are compared with those of this oracle. Where the slack of one aim (a millionth) moves a later one
 * by more than that, they must lie between the bests without slack and with twice as much, and be best given the very
 * values that the aims before have in the answer.
 * @param theirs {@link ranked} without slack to speak of
 */
export async function faults(at: Counting, answer: Answer, theirs: Ranked | 'undecided'): Promise<string[]> {
  const { x } = answer;
  const out = broken(at, x);
  const total = x.reduce((s, v) => s + v, 0);
  if (Math.abs(total - 100) > 1e-9) out.push(`shares add up to ${total}`);
  const objective = objectiveOf(at.problem, x);
  if (Math.abs(objective - answer.objective) > part(1e-6, objective))
    out.push(`objective said to be ${answer.objective}, is ${objective}`);
  const aims = at.problem.aims ?? [];
  const values = aims.map((aim) => reached(at, aim, x));
  aims.forEach((aim, k) => {
    const said = answer.aims[k];
    if (said?.aim !== aim.aim || !(Math.abs(said.value - values[k]!) <= part(1e-6, values[k]!)))
      out.push(`aim ${k} (${aim.aim}) said to be ${JSON.stringify(said)}, is ${values[k]}`);
  });
  if (out.length > 0) return out;
  const off = theirs === 'undecided' ? ['undecided'] : misses(at, answer, values, theirs, theirs);
  if (off.length === 0) return off;
  const loose = await ranked(at, 2e-6);
  if (theirs !== 'undecided' && loose !== 'undecided' && loose !== undefined)
    out.push(...misses(at, answer, values, theirs, loose));
  return [...out, ...(await shortcomings(at, answer, values))];
}

/** Aims and objective outside what lies between two rankings. */
function misses(
  at: Counting,
  answer: Answer,
  values: readonly number[],
  tight: Ranked,
  loose: Ranked,
): string[] {
  const out: string[] = [];
  const check = (what: string, value: number, a: number, b: number, give: number) => {
    const reach = 2 * Math.abs(a - b) + part(2e-6, a);
    if (value < Math.min(a, b) - reach || value > Math.max(a, b) + give + reach)
      out.push(`${what} is ${value}, best is ${a} (${b} with slack), give ${give}`);
  };
  (at.problem.aims ?? []).forEach((aim, k) => {
    check(`aim ${k} (${aim.aim})`, signOf(aim) * values[k]!, tight.bests[k]!, loose.bests[k]!, aim.give ?? 0);
  });
  const z = answer.objective;
  const [a, b] = [tight.objective, loose.objective];
  const reach = 2 * Math.abs(a - b) + part(1e-6, a);
  if (z < Math.min(a, b) - reach || z > Math.max(a, b) + reach + answer.gap)
    out.push(`objective is ${z}, best is ${a} (${b} with slack), gap ${answer.gap}`);
  return out;
}

/** Aims and objective that could be better with every aim before at the value it has in the answer. */
async function shortcomings(at: Counting, answer: Answer, values: readonly number[]): Promise<string[]> {
  const out: string[] = [];
  const aims = at.problem.aims ?? [];
  // A first step for the accuracy of the solvers, a second to see how fast the best moves with it; it may bend between.
  const within = (k: number, step: number) =>
    aims.slice(0, k).map((aim, j) => holdOf({ ...aim, give: 0 }, signOf(aim) * values[j]!, step));
  const check = async (
    what: string,
    value: number,
    allowed: number,
    bestOf: (step: number) => Promise<Found | undefined>,
  ) => {
    const [near, far] = [(await bestOf(1e-9)) ?? (await bestOf(1e-7)), await bestOf(2e-7)];
    if (!near || !far) return;
    if (value > near.z + allowed + 5 * Math.abs(near.z - far.z))
      out.push(`${what} is ${value}, but ${near.z} leaves all before it as it is`);
  };
  for (const [k, aim] of aims.entries()) {
    const value = signOf(aim) * values[k]!;
    await check(`aim ${k} (${aim.aim})`, value, (aim.give ?? 0) + part(2e-6, value), (step) =>
      best(at, within(k, step), { kind: 'aim', aim }),
    );
  }
  await check('objective', answer.objective, answer.gap + part(1e-6, answer.objective), (step) =>
    bestObjective(at, within(aims.length, step)),
  );
  return out;
}

/**
 * Whether there is any mix, by the search; "close" where a bound moved by a millionth would change the answer.
 */
export async function judged(at: Counting): Promise<'possible' | 'impossible' | 'close'> {
  const of = async (by: number) =>
    (await search({ ...at, problem: bent(at.problem, by) }, [], { kind: 'any' })) !== undefined;
  if (await of(-1e-6)) return 'possible';
  return (await of(1e-6)) ? 'close' : 'impossible';
}
