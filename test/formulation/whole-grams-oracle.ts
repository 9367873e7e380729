/**
 * A second opinion on whole grams that shares nothing with the product: rules written straight from the words of the
 * machine interface, and every whole number of steps tried that lies nearer to the shares than the grams in question.
 * Where that takes too many tries a mixed-integer program is asked, with each food's square written out as one cost a
 * step.
 */
import type { Highs } from '../../src/formulation/solve/highs.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import type { GramsProblem } from './whole-grams-problems.ts';

/** `a . k - spread >= h` over whole steps; the spread is the length of (q k, q0). */
interface Row {
  readonly a: number[];
  readonly h: number;
  readonly q?: number[];
  readonly q0: number;
}

interface Steps {
  readonly target: number[];
  readonly total: number;
  readonly low: number[];
  readonly high: number[];
  /** Least steps where a food is used. */
  readonly used: number[];
  readonly rows: Row[];
  readonly counts: {
    readonly columns: number[];
    readonly from: number;
    readonly min: number;
    readonly max: number;
  }[];
}

/** Normal quantiles of (1 + c) / 2, Abramowitz and Stegun 1964, table 26.5. */
const Z = new Map([
  [0, 0],
  [0.5, 0.6744897501960817],
  [0.8, 1.2815515655446004],
  [0.9, 1.6448536269514722],
]);

/** Mixes tried before the program is asked, and where that comes to no answer in its time. */
const FIRST_TRIES = 400_000;
const LAST_TRIES = 5_000_000;

export interface Opinion {
  /** Whether the grams are whole steps, the batch in all, and keep every rule; true where there are none to judge. */
  readonly kept: boolean;
  /** Least sum of squares in steps of grams that are nearer; infinite where there are none. */
  readonly nearer: number | 'undecided';
  readonly by: 'tries' | 'program';
}

/**
 * @param grams by food; undefined where it is said that there are none
 * @param shares percent, by food @param beside share of the ration of each food beside the mix, percent
 * @param slack how far a rule may be missed, in parts of its largest factor
 */
export function judgeGrams(
  problem: GramsProblem,
  grams: readonly number[] | undefined,
  shares: readonly number[],
  beside: readonly number[],
  slack: number,
  highs: Highs,
): Opinion {
  const steps = stepsOf(problem, shares, beside, slack);
  const k = grams?.map((g) => g / problem.scale_step_grams);
  const squares = k?.reduce((s, v, i) => s + (v - steps.target[i]!) ** 2, 0) ?? Number.POSITIVE_INFINITY;
  const below = k ? squares - 1e-6 * Math.max(1, squares) : squares;
  const kept = k === undefined || keepsAll(steps, k);
  const tried = byTries(steps, below, FIRST_TRIES);
  if (tried !== undefined) return { kept, nearer: tried, by: 'tries' };
  const programmed = byProgram(steps, below, highs);
  if (programmed !== 'undecided') return { kept, nearer: programmed, by: 'program' };
  return { kept, nearer: byTries(steps, below, LAST_TRIES) ?? 'undecided', by: 'tries' };
}

function stepsOf(
  problem: GramsProblem,
  shares: readonly number[],
  beside: readonly number[],
  slack: number,
): Steps {
  const { foods, rules } = problem;
  const total = Math.round(problem.batch_grams / problem.scale_step_grams);
  const per = 100 / total;
  const z = Z.get(problem.confidence)!;
  const rows: Row[] = [];
  const counts: Steps['counts'] = [];
  const mixPart = 1 - beside.reduce((s, b) => s + b, 0) / 100;
  const amount = (f: { composition: Partial<Record<Tag, number>> }, tag: Tag) => f.composition[tag]!;
  type Food = GramsProblem['foods'][number] | GramsProblem['beside'][number];
  const add = (
    on: 'mix' | 'ration',
    sign: 1 | -1,
    of: (f: Food) => number,
    bound: number,
    sd?: (f: Food) => number,
  ) => {
    const part = on === 'mix' ? 1 : mixPart;
    const fed = on === 'mix' ? [] : problem.beside.map((b, i) => ({ b, part: beside[i]! / 100 }));
    const g = foods.map((f) => (sign * part * of(f)) / 100);
    const scale = Math.max(...g.map(Math.abs)) || 1;
    const h = sign * (bound - fed.reduce((s, { b, part }) => s + part * of(b), 0));
    const q = sd && z > 0 ? foods.map((f) => (z * part * sd(f)) / 100) : undefined;
    const q0 = sd && z > 0 ? Math.hypot(...fed.map(({ b, part }) => z * part * sd(b))) : 0;
    rows.push({
      a: g.map((v) => (v * per) / scale),
      h: h / scale - slack,
      ...(q ? { q: q.map((v) => (v * per) / scale) } : {}),
      q0: q0 / scale,
    });
  };
  for (const rule of rules) {
    const ends = [
      ['min', 1],
      ['max', -1],
    ] as const;
    if ('count' in rule) {
      const { group, at_least = 0 } = rule.count;
      const columns = foods.flatMap((f, i) => (group === undefined || f.group === group ? [i] : []));
      if (rule.min)
        counts.push({
          columns,
          from: Math.ceil(at_least / per - 1e-6),
          min: rule.min,
          max: Number.POSITIVE_INFINITY,
        });
      if (rule.max !== undefined) counts.push({ columns, from: 1, min: 0, max: rule.max });
      continue;
    }
    for (const [end, sign] of ends) {
      const bound = rule[end];
      if (bound === undefined) continue;
      const on = rule.on ?? 'mix';
      if ('group' in rule || 'food' in rule) {
        // Shares are of the mix's foods alone, whatever they are a share of.
        const counts = (f: Food) =>
          'group' in rule ? 'group' in f && f.group === rule.group : f.id === rule.food;
        add(on, sign, (f) => (foods.some((own) => own === f) && counts(f) ? 100 : 0), bound);
      } else {
        // Content over what it is counted in: the weight, the dry matter, or the second amount; the row against 0.
        const top = (f: Food) => ('nutrient' in rule ? amount(f, rule.nutrient) : amount(f, rule.ratio[0]));
        const under = (f: Food) =>
          'ratio' in rule ? amount(f, rule.ratio[1]) : rule.basis === 'DM' ? 1 - amount(f, 'WATER') / 100 : 1;
        const row = (f: Food) => top(f) - bound * under(f);
        add(on, sign, row, 0, 'nutrient' in rule ? (f) => f.sd?.[rule.nutrient] ?? 0 : undefined);
        if (!problem.drop_one) continue;
        for (const left of foods) add(on, sign, (f) => (f === left ? 0 : row(f)), 0);
      }
    }
  }
  const least = (100 * (problem.least_grams ?? 0)) / problem.batch_grams;
  return {
    target: shares.map((s) => s / per),
    total,
    low: foods.map((f) => Math.ceil((f.min ?? 0) / per - 1e-6)),
    high: foods.map((f) => Math.floor((f.max ?? 100) / per + 1e-6)),
    used: foods.map((f) => Math.ceil(Math.max(f.if_used ?? 0, least) / per - 1e-6)),
    rows,
    counts,
  };
}

const keepsRows = ({ rows }: Steps, k: readonly number[]) =>
  rows.every(({ a, h, q, q0 }) => {
    let value = -h;
    let spread = q0 * q0;
    for (let i = 0; i < k.length; i++) value += a[i]! * k[i]!;
    if (q) for (let i = 0; i < k.length; i++) spread += (q[i]! * k[i]!) ** 2;
    return value - Math.sqrt(spread) >= 0;
  });

const keepsCounts = ({ counts }: Steps, k: readonly number[]) =>
  counts.every(({ columns, from, min, max }) => {
    const reach = columns.filter((i) => k[i]! >= from).length;
    return reach >= min && reach <= max;
  });

function keepsAll(steps: Steps, broken: readonly number[]): boolean {
  const k = broken.map(Math.round);
  return (
    broken.every((v, i) => Math.abs(v - k[i]!) < 1e-6) &&
    k.reduce((s, v) => s + v, 0) === steps.total &&
    k.every((v, i) => v >= steps.low[i]! && v <= steps.high[i]! && (v === 0 || v >= steps.used[i]!)) &&
    keepsCounts(steps, k) &&
    keepsRows(steps, k)
  );
}

/** Least sum of squares below a limit, by trying all; undefined where it takes too many tries. */
function byTries(steps: Steps, below: number, mostTries: number): number | undefined {
  const { target, low, high, total } = steps;
  const n = target.length;
  // No mix is farther than this; a ball that holds them all is searched as long as nothing says that there is one.
  const farthest = target.reduce((s, t, i) => s + Math.max((t - low[i]!) ** 2, (high[i]! - t) ** 2), 0) + 1;
  let tries = 0;
  // Of each row, over the foods still to come: mean, and what is left of its length beside the mean.
  const rest = steps.rows.map(({ a }) => {
    return a.map((_, depth) => {
      const later = a.slice(depth);
      const mean = later.reduce((s, v) => s + v, 0) / later.length;
      return {
        mean,
        length: Math.hypot(...later.map((v) => v - mean)),
        atTarget: later.reduce((s, v, j) => s + v * target[depth + j]!, 0),
        most: later.reduce((s, v, j) => s + (v > 0 ? v * high[depth + j]! : v * low[depth + j]!), 0),
      };
    });
  });
  const nearestWhole = target.map((t) => (Math.round(t) - t) ** 2);
  for (let radius = Math.min(2, below); ; radius = Math.min(2 * radius, below, farthest)) {
    let best = radius;
    let found = false;
    const k = new Array<number>(n).fill(0);
    const values = steps.rows.map(({ h, q0 }) => -h - q0);
    const fill = (depth: number, squares: number, left: number): boolean => {
      if (++tries > mostTries) return false;
      if (depth === n) {
        if (left === 0 && squares < best && keepsCounts(steps, k) && keepsRows(steps, k)) {
          best = squares;
          found = true;
        }
        return true;
      }
      const m = n - depth;
      let wish = 0;
      let whole = 0;
      let fewest = 0;
      let most = 0;
      for (let i = depth; i < n; i++) {
        wish += target[i]!;
        whole += nearestWhole[i]!;
        fewest += low[i]!;
        most += high[i]!;
      }
      if (left < fewest || left > most) return true;
      const shift = left - wish;
      const within = best - squares - (shift * shift) / m;
      if (within < 0 || squares + whole >= best) return true;
      for (const [r, parts] of rest.entries()) {
        const { mean, length, atTarget, most } = parts[depth]!;
        // All that the rest can bring to this row: in what is left of the ball, and within the foods' own bounds.
        const inBall = atTarget + mean * shift + length * Math.sqrt(within);
        if (values[r]! + Math.min(inBall, most) < -1e-9) return true;
      }
      const t = target[depth]!;
      const reach = Math.sqrt(best - squares);
      const from = Math.max(low[depth]!, Math.ceil(t - reach));
      const to = Math.min(high[depth]!, left, Math.floor(t + reach));
      const order = [];
      for (let v = from; v <= to; v++) if (v === 0 || v >= steps.used[depth]!) order.push(v);
      order.sort((a, b) => Math.abs(a - t) - Math.abs(b - t));
      for (const v of order) {
        k[depth] = v;
        for (const [r, row] of steps.rows.entries()) values[r]! += row.a[depth]! * v;
        const done = fill(depth + 1, squares + (v - t) ** 2, left - v);
        for (const [r, row] of steps.rows.entries()) values[r]! -= row.a[depth]! * v;
        if (!done) return false;
      }
      k[depth] = 0;
      return true;
    };
    if (!fill(0, 0, total)) return undefined;
    if (found) return best;
    if (radius >= Math.min(below, farthest)) return Number.POSITIVE_INFINITY;
  }
}

/** Rounds in which planes are laid where a spread is missed. */
const MOST_ROUNDS = 60;
const SECONDS = 20;

/**
 * The same by a mixed-integer program. Columns: for each food one of 0 or 1 for every step that it may stand above its
 * least, in order, each with what it adds to the square; where only "are there any" is asked, one whole number a food.
 */
function byProgram(steps: Steps, below: number, highs: Highs): number | 'undecided' {
  const { target, total, used, rows, counts } = steps;
  const n = target.length;
  const any = below === Number.POSITIVE_INFINITY;
  const reach = Math.sqrt(below);
  const low = steps.low.map((l, i) => (any ? l : Math.max(l, Math.ceil(target[i]! - reach))));
  const top = steps.high.map((h, i) =>
    any ? Math.min(h, total) : Math.min(h, Math.floor(target[i]! + reach)),
  );
  if (low.some((l, i) => l > top[i]!)) return Number.POSITIVE_INFINITY;
  const cost: number[] = [];
  const most: number[] = [];
  const unit: number[][] = low.map((l, i) => {
    if (any) {
      most.push(top[i]! - l);
      return [cost.push(0) - 1];
    }
    return Array.from({ length: top[i]! - l }, (_, v) => {
      most.push(1);
      return cost.push((l + v + 1 - target[i]!) ** 2 - (l + v - target[i]!) ** 2) - 1;
    });
  });
  const unary = cost.length;
  const flags: { indices: number[]; values: number[]; min: number }[] = [];
  const binary = () => {
    most.push(1);
    return cost.push(0) - 1;
  };
  /** k_i >= from x flag, or k_i <= top x flag. */
  const reaching = (i: number, from: number) => {
    const flag = binary();
    flags.push({ indices: [...unit[i]!, flag], values: [...unit[i]!.map(() => 1), -from], min: -low[i]! });
    return flag;
  };
  const inUse = (i: number) => {
    const flag = binary();
    flags.push({ indices: [...unit[i]!, flag], values: [...unit[i]!.map(() => -1), top[i]!], min: low[i]! });
    return flag;
  };
  const useFlag = new Map<number, number>();
  const usedFlag = (i: number) => {
    const known = useFlag.get(i);
    if (known !== undefined) return known;
    const flag = inUse(i);
    useFlag.set(i, flag);
    return flag;
  };
  for (let i = 0; i < n; i++) {
    if (used[i]! <= 1) continue;
    const flag = usedFlag(i);
    flags.push({
      indices: [...unit[i]!, flag],
      values: [...unit[i]!.map(() => 1), -used[i]!],
      min: -low[i]!,
    });
  }
  for (const { columns, from, min, max } of counts) {
    if (min > 0) {
      if (from <= 0) {
        if (columns.length < min) return Number.POSITIVE_INFINITY;
        continue;
      }
      const chosen = columns.map((i) => reaching(i, from));
      flags.push({ indices: chosen, values: chosen.map(() => 1), min });
    } else {
      const chosen = columns.map(usedFlag);
      flags.push({ indices: chosen, values: chosen.map(() => -1), min: -max });
    }
  }
  const lines: { indices: number[]; values: number[]; min: number; max: number }[] = flags.map((f) => ({
    ...f,
    max: Number.POSITIVE_INFINITY,
  }));
  const all = Array.from({ length: unary }, (_, j) => j);
  const base = low.reduce((s, v) => s + v, 0);
  lines.push({ indices: all, values: all.map(() => 1), min: total - base, max: total - base });
  const addRow = (a: readonly number[], h: number) => {
    const indices = a.flatMap((v, i) => (v === 0 ? [] : unit[i]!));
    const values = a.flatMap((v, i) => (v === 0 ? [] : unit[i]!.map(() => v)));
    const min = h - a.reduce((s, v, i) => s + v * low[i]!, 0);
    lines.push({ indices, values, min, max: Number.POSITIVE_INFINITY });
  };
  for (const { a, h, q0 } of rows) addRow(a, h + q0);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const starts = [0];
    for (const l of lines) starts.push(starts.at(-1)! + l.indices.length);
    const model = highs.createModel({
      numCols: cost.length,
      numRows: lines.length,
      colCost: cost,
      colLower: cost.map(() => 0),
      colUpper: most,
      rowLower: lines.map((l) => l.min),
      rowUpper: lines.map((l) => l.max),
      matrix: {
        format: 'csr',
        numRows: lines.length,
        numCols: cost.length,
        starts,
        indices: lines.flatMap((l) => l.indices),
        values: lines.flatMap((l) => l.values),
      },
      integrality: cost.map(() => 1 as const),
    });
    try {
      model.options.set({
        output_flag: false,
        mip_rel_gap: 0,
        mip_abs_gap: 1e-7,
        primal_feasibility_tolerance: 1e-9,
        mip_feasibility_tolerance: 1e-9,
        time_limit: SECONDS,
      });
      const { modelStatus } = model.run();
      if (modelStatus === highs.constants.modelStatus.infeasible) return Number.POSITIVE_INFINITY;
      if (modelStatus !== highs.constants.modelStatus.optimal) return 'undecided';
      const x = model.getSolution().colValue;
      const k = target.map((_, i) => low[i]! + unit[i]!.reduce((s, j) => s + Math.round(x[j]!), 0));
      let laid = false;
      for (const { a, h, q, q0 } of rows) {
        if (!q) continue;
        const length = Math.sqrt(q.reduce((s, v, i) => s + (v * k[i]!) ** 2, q0 * q0));
        const value = a.reduce((s, v, i) => s + v * k[i]!, 0) - h - length;
        if (value >= 0 || length === 0) continue;
        addRow(
          a.map((v, i) => v - (q[i]! ** 2 * k[i]!) / length),
          h + q0 ** 2 / length,
        );
        laid = true;
      }
      if (laid) continue;
      const squares = k.reduce((s, v, i) => s + (v - target[i]!) ** 2, 0);
      return squares < below ? squares : Number.POSITIVE_INFINITY;
    } finally {
      model.dispose();
    }
  }
  return 'undecided';
}
