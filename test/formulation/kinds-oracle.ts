/**
 * A second opinion on problems of any kinds together, which shares nothing with the product's formulation. Everything
 * is asked over the whole ration (percent of it of each food of the mix and of each beside it), where every rule is
 * linear or a cone; what is counted is settled by trying every way to choose. Linear questions go to GLPK, squared
 * ones to quadprog, those with cones to a barrier method of the test's own.
 */
import GLPK from 'glpk.js/node';
import { solveQP } from 'quadprog';
import type { CountRule, Problem, Rule } from '../../src/formulation/problem/problem.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { type Constraint, leastInside, roomIn } from './kinds-barrier.ts';

/** a . y - |q y| >= 0 over the whole ration, scaled to a largest coefficient of 1. */
interface Row {
  readonly a: readonly number[];
  readonly q?: readonly number[];
}

/** Least and most share of one food that a choice of foods leaves, percent of the mix. */
type Interval = readonly [number, number];

/** Quantile of the standard normal distribution by bisection of its integral (Abramowitz and Stegun 1964, 26.2.17). */
const QUANTILES: Readonly<Record<number, number>> = {
  0.5: 0.6744897501960817,
  0.8: 1.2815515655446004,
  0.9: 1.6448536269514722,
};

const glpk = await GLPK();

/** A value lies between these. */
export interface Between {
  readonly low: number;
  readonly high: number;
}

/** Which bounds of the problem are asked. */
export type Asked = (pointer: string) => boolean;
const everything: Asked = () => true;

/** All ways to choose foods, each with the rows of the rules. */
export class KindsOracle {
  private readonly problem: Problem;
  private readonly asked: Asked;
  private readonly n: number;
  private readonly width: number;
  private readonly rows: readonly Row[];

  constructor(problem: Problem, asked: Asked = everything) {
    this.problem = problem;
    this.asked = asked;
    this.n = problem.foods.length;
    this.width = this.n + problem.beside.length;
    this.rows = this.ruleRows();
  }

  /** The most room that any choice of foods leaves in every rule, scaled; below 0 where they collide. */
  room(shares: readonly Interval[] = this.shares()): Between {
    let [low, high] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const pattern of this.patterns()) {
      const most = this.roomiest(pattern, shares);
      if (!most) continue;
      low = Math.max(low, most.room.low);
      high = Math.max(high, most.room.high);
      if (low > 1e-4) break;
    }
    return { low, high };
  }

  /** Whether a mix exists with the shares beside as given, and the room it leaves. */
  roomAt(beside: readonly number[]): Between {
    return this.room(beside.map((b): Interval => [b, b]));
  }

  /** Least (`sign` 1) or most (-1) share beside, percent of the ration, those before it as given. */
  besideEnd(j: number, sign: 1 | -1, before: readonly number[]): Between {
    const shares = this.shares().map((s, k): Interval => (k < j ? [before[k]!, before[k]!] : s));
    return this.end(this.n + j, sign, shares, 1);
  }

  /** Least or most share of one food of the mix, the shares beside as given. */
  shareEnd(i: number, sign: 1 | -1, beside: readonly number[]): Between {
    const mix = 100 - beside.reduce((a, b) => a + b, 0);
    return this.end(
      i,
      sign,
      beside.map((b): Interval => [b, b]),
      100 / mix,
    );
  }

  /** The best objective with the shares beside as given; infinite where there is no mix. */
  best(beside: readonly number[]): Between {
    const { foods, objective } = this.problem;
    const mix = 100 - beside.reduce((a, b) => a + b, 0);
    const shares = beside.map((b): Interval => [b, b]);
    const given = foods.reduce((s, f) => s + (f.want ?? 0), 0);
    const unsaid = foods.filter((f) => f.want === undefined).length;
    const want = foods.map((f) =>
      objective === 'varied' ? 0 : (f.want ?? Math.max(0, (100 - given) / unsaid)),
    );
    if (objective === 'cheapest') {
      const cost = [...foods.map((f) => (100 / mix) * (f.price_per_kg ?? 0)), ...beside.map(() => 0)];
      return this.leastOf(shares, { cost }, (y) => cost.reduce((s, p, i) => s + p * y[i]!, 0));
    }
    const target = want.map((w) => (w * mix) / 100);
    return this.leastOf(shares, { target, scale: (100 / mix) ** 2 }, (y) =>
      want.reduce((s, w, i) => s + ((100 / mix) * y[i]! - w) ** 2, 0),
    );
  }

  private shares(): Interval[] {
    return this.problem.beside.map((b) => [
      b.share_min ?? b.share_of_ration,
      b.share_max ?? b.share_of_ration,
    ]);
  }

  private end(column: number, sign: 1 | -1, shares: readonly Interval[], by: number): Between {
    const cost = Array.from({ length: this.width }, (_, k) => (k === column ? sign * by : 0));
    const { low, high } = this.leastOf(shares, { cost }, (y) => sign * by * y[column]!);
    return sign === 1 ? { low, high } : { low: -high, high: -low };
  }

  /** The least over every choice of foods. */
  private leastOf(shares: readonly Interval[], goal: Goal, value: (y: readonly number[]) => number): Between {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const pattern of this.patterns()) {
      const found = this.leastWith(pattern, shares, goal);
      if (!found) continue;
      const least = value(found.y);
      low = Math.min(low, least - found.gap);
      if (Number.isFinite(found.gap)) high = Math.min(high, least);
    }
    return { low, high };
  }

  /** Least of a goal for one choice of foods, and how far from it the columns told may be. */
  private leastWith(
    pattern: readonly Interval[],
    shares: readonly Interval[],
    goal: Goal,
  ): { y: readonly number[]; gap: number } | undefined {
    const rows = this.rowsOf(pattern);
    const columns = this.columns(pattern, shares);
    if (rows.every((row) => !row.q)) {
      const y =
        'target' in goal
          ? squares(goal.target, rows, columns)
          : linear(goal.cost, rows, columns, false, this.n);
      return y && { y, gap: 0 };
    }
    const most = this.roomiest(pattern, shares);
    if (most && isPoint(columns)) return most.room.low < 0 ? undefined : { y: most.y, gap: 0 };
    if (!most || most.room.high < -1e-8) return undefined;
    // Where hardly any room is left the choice is a point or nothing: what it may add cannot be told.
    if (most.room.low < 1e-9) return { y: most.y, gap: Number.POSITIVE_INFINITY };
    const constraints = constraintsOf(rows, columns, this.n);
    const scale = 'scale' in goal ? goal.scale : 1;
    const { v, gap } = leastInside({
      cost: 'target' in goal ? new Array<number>(this.width).fill(0) : goal.cost,
      ...('target' in goal ? { target: goal.target } : {}),
      constraints,
      ...movable(columns),
      start: most.y.slice(0, this.width),
    });
    return { y: v, gap: gap * scale };
  }

  /** The most room that one choice of foods leaves in the rules. */
  private roomiest(
    pattern: readonly Interval[],
    shares: readonly Interval[],
  ): { y: readonly number[]; room: Between } | undefined {
    const rows = this.rowsOf(pattern);
    const columns = this.columns(pattern, shares);
    const cost = [...new Array<number>(this.width).fill(0), -1];
    if (rows.every((row) => !row.q)) {
      const y = linear(cost, rows, columns, true, this.n);
      return y && { y, room: { low: y.at(-1)!, high: y.at(-1)! } };
    }
    const start = within(columns, this.n);
    if (!start) return undefined;
    if (isPoint(columns)) {
      const least = Math.min(1000, ...rows.map((row) => roomIn({ ...row, b: 0 }, start)));
      return { y: start, room: { low: least, high: least } };
    }
    const roomy = (c: Constraint): Constraint => ({
      ...c,
      a: [...c.a, -1],
      ...(c.q ? { q: [...c.q, 0] } : {}),
    });
    const flat = (c: Constraint): Constraint => ({ ...c, a: [...c.a, 0] });
    const box = constraintsOf([], columns, this.n);
    const ruled = rows.map((row): Constraint => ({ ...row, b: 0 }));
    const least = Math.min(...ruled.map((c) => roomIn(c, start)));
    const { v, gap } = leastInside({
      cost,
      constraints: [
        ...box.map(flat),
        ...ruled.map(roomy),
        { a: [...new Array<number>(this.width).fill(0), -1], b: -1000 },
      ],
      summed: [...movable(columns).summed, false],
      still: [...movable(columns).still, false],
      start: [...start, least - 1],
    });
    return { y: v, room: { low: v.at(-1)!, high: v.at(-1)! + gap } };
  }

  // ---- the words ----

  private ruleRows(): Row[] {
    const { rules, foods, beside, confidence, drop_one } = this.problem;
    const z = confidence === 0 ? 0 : QUANTILES[confidence]!;
    const fed = [...foods, ...beside];
    const amount = (k: number, tag: Tag) => fed[k]!.composition![tag]!;
    const rows: Row[] = [];
    rules.forEach((rule, r) => {
      if ('count' in rule) return;
      for (const side of ['min', 'max'] as const) {
        const bound = rule[side];
        if (bound === undefined || !this.asked(`/rules/${r}/${side}`)) continue;
        const sign = side === 'min' ? 1 : -1;
        const parts = fed.map((_, k) => {
          const counted = rule.on === 'ration' || k < this.n;
          return counted ? sign * this.part(rule, bound, k, amount) : 0;
        });
        const spread =
          'nutrient' in rule && z > 0
            ? fed.map((f, k) => (rule.on === 'ration' || k < this.n ? z * (f.sd?.[rule.nutrient] ?? 0) : 0))
            : undefined;
        rows.push(scaled(parts, spread));
        if (!drop_one || !this.asked('/drop_one') || !('nutrient' in rule || 'ratio' in rule)) continue;
        for (let left = 0; left < this.n; left++)
          rows.push(scaled(parts.map((p, k) => (k === left ? 0 : p))));
      }
    });
    return rows;
  }

  private part(
    rule: Exclude<Rule, CountRule>,
    bound: number,
    k: number,
    amount: (k: number, t: Tag) => number,
  ) {
    if ('ratio' in rule) return amount(k, rule.ratio[0]) - bound * amount(k, rule.ratio[1]);
    if ('nutrient' in rule) {
      const whole = rule.basis === 'DM' ? 1 - amount(k, 'WATER') / 100 : 1;
      return amount(k, rule.nutrient) - bound * whole;
    }
    const food = this.problem.foods[k];
    const counted = food && ('group' in rule ? food.group === rule.group : food.id === rule.food);
    return (counted ? 100 : 0) - bound;
  }

  /** Every way in which foods can be in or out and counted, as intervals of their shares of the mix. */
  private *patterns(): Generator<Interval[]> {
    const { foods, rules, least_grams = 0, batch_grams } = this.problem;
    const weighable = this.asked('/least_grams') ? (100 * least_grams) / batch_grams : 0;
    const counts = rules.flatMap((rule, r) => {
      if (!('count' in rule)) return [];
      const { group, at_least = 0 } = rule.count;
      const members = foods.flatMap((f, i) => (group === undefined || f.group === group ? [i] : []));
      const min = rule.min !== undefined && this.asked(`/rules/${r}/min`) ? rule.min : 0;
      const max =
        rule.max !== undefined && this.asked(`/rules/${r}/max`) ? rule.max : Number.POSITIVE_INFINITY;
      return [{ members, at_least, min, max }];
    });
    const choices = foods.map((f, i): Interval[] => {
      const low = this.asked(`/foods/${i}/min`) ? (f.min ?? 0) : 0;
      const high = this.asked(`/foods/${i}/max`) ? (f.max ?? 100) : 100;
      const least = Math.max(weighable, this.asked(`/foods/${i}/if_used`) ? (f.if_used ?? 0) : 0);
      const mine = counts.filter((c) => c.members.includes(i));
      if (least === 0 && mine.length === 0) return [[low, high]];
      const cuts = mine.map((c) => c.at_least).filter((t) => t > Math.max(low, least) && t < high);
      const start = Math.max(low, least);
      const out: Interval[] = low <= 0 ? [[0, 0]] : [];
      if (start > high) return out;
      const edges = [...new Set([start, ...cuts, high])].sort((a, b) => a - b);
      if (edges.length === 1) return [...out, [high, high]];
      return [...out, ...edges.slice(0, -1).map((e, k): Interval => [e, edges[k + 1]!])];
    });
    const pattern: Interval[] = [];
    const visit = function* (i: number): Generator<Interval[]> {
      if (i < choices.length) {
        for (const choice of choices[i]!) {
          pattern[i] = choice;
          yield* visit(i + 1);
        }
        return;
      }
      const kept = counts.every(({ members, at_least, min, max }) => {
        const enough = members.filter((m) => pattern[m]![0] >= at_least - 1e-12).length;
        const used = members.filter((m) => pattern[m]![1] > 0).length;
        return enough >= min && used <= max;
      });
      if (kept) yield [...pattern];
    };
    yield* visit(0);
  }

  // ---- solving ----

  /** Rows of a choice of foods: shares of the mix as parts of what the mix holds, and those of the rules. */
  private rowsOf(pattern: readonly Interval[]): Row[] {
    const share = (i: number, sign: number, bound: number): Row =>
      scaled(
        Array.from({ length: this.width }, (_, k) => (k < this.n ? sign * ((k === i ? 100 : 0) - bound) : 0)),
      );
    return [
      ...pattern.flatMap(([low, high], i) => [
        ...(low > 0 ? [share(i, 1, low)] : []),
        ...(high < 100 && high > 0 ? [share(i, -1, high)] : []),
      ]),
      // Of nothing eaten nothing is asked.
      ...this.rows.filter(({ a }) => a.some((v, k) => v !== 0 && (k >= this.n || pattern[k]![1] > 0))),
    ];
  }

  private columns(pattern: readonly Interval[], shares: readonly Interval[]): Interval[] {
    return [...pattern.map(([, high]): Interval => [0, high > 0 ? 100 : 0]), ...shares];
  }
}

type Goal =
  | { readonly cost: readonly number[] }
  | { readonly target: readonly number[]; readonly scale: number };

/** Whether the sum leaves one way alone. */
function isPoint(columns: readonly Interval[]): boolean {
  return columns.filter(([low, high]) => high > low).length < 2;
}

/** Columns that may move take part in the sum; the others stand where they are. */
function movable(columns: readonly Interval[]) {
  const summed = columns.map(([low, high]) => high > low);
  return { summed, still: summed.map((moves) => !moves) };
}

/** Rows, bounds of the columns that may move, and that the mix is 1 % at least. */
function constraintsOf(rows: readonly Row[], columns: readonly Interval[], n: number): Constraint[] {
  const unit = (k: number, sign: number) => columns.map((_, j) => (j === k ? sign : 0));
  return [
    ...rows.map((row): Constraint => ({ ...row, b: 0 })),
    ...columns.flatMap(([low, high], k): Constraint[] =>
      high > low
        ? [
            { a: unit(k, 1), b: low },
            { a: unit(k, -1), b: -high },
          ]
        : [],
    ),
    { a: columns.map((_, k) => Number(k < n)), b: 1 },
  ];
}

/** Shares inside the bounds of the columns, 100 in all, the mix evenly. */
function within(columns: readonly Interval[], n: number): number[] | undefined {
  const beside = columns.slice(n).map(([low, high]) => (low + high) / 2);
  const part = 100 - beside.reduce((a, b) => a + b, 0);
  const open = columns.slice(0, n).filter(([, high]) => high > 0).length;
  if (open === 0 || part <= 1) return undefined;
  return [...columns.slice(0, n).map(([, high]) => (high > 0 ? part / open : 0)), ...beside];
}

function scaled(a: readonly number[], q?: readonly number[]): Row {
  const scale = Math.max(...a.map(Math.abs)) || 1;
  return { a: a.map((v) => v / scale), ...(q?.some((v) => v > 0) ? { q: q.map((v) => v / scale) } : {}) };
}

/** Least cost over columns that add up to 100, the first `n` to 1 at least, with `plane . y >= 0`, or >= the room left. */
function linear(
  cost: readonly number[],
  rows: readonly Row[],
  columns: readonly Interval[],
  room: boolean,
  n: number,
): number[] | undefined {
  if (columns.some(([low, high]) => low > high)) return undefined;
  const names = columns.map((_, k) => `y${k}`);
  const program: Parameters<typeof glpk.solve>[0] = {
    name: 'kinds',
    objective: {
      direction: glpk.GLP_MIN,
      name: 'cost',
      vars: [...names, ...(room ? ['room'] : [])].map((name, k) => ({ name, coef: cost[k] ?? 0 })),
    },
    subjectTo: [
      {
        name: 'sum',
        vars: names.map((name) => ({ name, coef: 1 })),
        bnds: { type: glpk.GLP_FX, lb: 100, ub: 100 },
      },
      {
        name: 'mix',
        vars: names.slice(0, n).map((name) => ({ name, coef: 1 })),
        bnds: { type: glpk.GLP_LO, lb: 1, ub: 0 },
      },
      ...rows.map((row, r) => ({
        name: `r${r}`,
        vars: [
          ...names.map((name, k) => ({ name, coef: row.a[k]! })),
          ...(room ? [{ name: 'room', coef: -1 }] : []),
        ],
        bnds: { type: glpk.GLP_LO, lb: 0, ub: 0 },
      })),
    ],
    bounds: [
      ...names.map((name, k) => {
        const [lb, ub] = columns[k]!;
        return { name, type: lb === ub ? glpk.GLP_FX : glpk.GLP_DB, lb, ub };
      }),
      ...(room ? [{ name: 'room', type: glpk.GLP_UP, lb: 0, ub: 1000 }] : []),
    ],
  };
  // Where many planes are all but the same GLPK can lose its way; its presolve then helps it along.
  for (const presol of [false, true]) {
    const { result } = glpk.solve(program, { msglev: glpk.GLP_MSG_OFF, presol }) as unknown as {
      result: { status: number; vars: Record<string, number> };
    };
    if (result.status === glpk.GLP_OPT)
      return [...names, ...(room ? ['room'] : [])].map((name) => result.vars[name]!);
  }
  return undefined;
}

/** Nearest to a target over the mix's columns, by Goldfarb and Idnani; columns that cannot move are settled first. */
function squares(
  target: readonly number[],
  ruled: readonly Row[],
  columns: readonly Interval[],
): number[] | undefined {
  const free = columns.flatMap(([low, high], k) => (high > low ? [k] : []));
  const settled = columns.map(([low, high]) => (high > low ? 0 : low));
  const fixed = (a: readonly number[]) => a.reduce((s, v, k) => s + v * settled[k]!, 0);
  if (free.length === 0) {
    const whole = Math.abs(settled.reduce((a, b) => a + b, 0) - 100) < 1e-9;
    return whole && ruled.every(({ a }) => fixed(a) >= -1e-9) ? settled : undefined;
  }
  const from1 = <T>(list: readonly T[]) => [0 as unknown as T, ...list];
  const rows = [
    { a: columns.map(() => 1), b: 100 },
    ...ruled.map(({ a }) => ({ a, b: 0 })),
    ...free.flatMap((k) => [
      { a: columns.map((_, j) => (j === k ? 1 : 0)), b: columns[k]![0] },
      { a: columns.map((_, j) => (j === k ? -1 : 0)), b: -columns[k]![1] },
    ]),
  ].filter(({ a }, r) => r === 0 || free.some((k) => a[k] !== 0));
  for (const give of [0, 1e-10, 1e-9, 1e-8]) {
    const answer = solveQP(
      from1(free.map((_, i) => from1(free.map((__, j) => (i === j ? 2 : 0))))),
      from1(free.map((k) => 2 * target[k]!)),
      from1(free.map((k) => from1(rows.map(({ a }) => a[k]!)))),
      from1(rows.map(({ a, b }, r) => b - fixed(a) - (r === 0 ? 0 : give))),
      1,
    );
    if (answer.message !== '') continue;
    const y = [...settled];
    free.forEach((k, i) => {
      y[k] = answer.solution[i + 1]!;
    });
    if (y.every(Number.isFinite)) return y;
  }
  return undefined;
}
