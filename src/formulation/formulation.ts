/**
 * A live formulation: one problem, its solver kept warm. Every answer is a mix that keeps all rules, or the reason
 * why none does and what would mend it.
 */
import type { Reference } from '../foods/reference.ts';
import { normalQuantile } from '../nutrition/normal.ts';
import { smallestConflict } from './conflict.ts';
import { Elastic } from './elastic.ts';
import { doubts, evaluate } from './evaluate.ts';
import { weighable } from './grams.ts';
import { cautionNotes, heed } from './heed.ts';
import type { Highs } from './highs.ts';
import { stock } from './larder.ts';
import { Polytope } from './polytope.ts';
import { type Problem, ProblemError } from './problem.ts';
import { additions, loosenings } from './remedies.ts';
import type {
  CautionNote,
  Collision,
  Evaluation,
  Following,
  MoveResult,
  Remedy,
  Result,
  Weighable,
} from './result.ts';
import { capital, conflictSentence, demand, joined } from './sentences.ts';
import { Ration, type Side, sidesOf } from './sides.ts';
import { dot, squaredDistance } from './vectors.ts';

export interface FormulationOptions {
  readonly reference: Reference;
  readonly highs: Highs;
}

/** How much dearer, relatively, a mix may be that counts as equally cheap. */
const BUDGET_SLACK = 1e-8;

/** Shares in percent by food id. */
export type Shares = Readonly<Record<string, number>>;

export class Formulation {
  readonly problem: Problem;
  private readonly options: FormulationOptions;
  private readonly ignored: readonly string[];
  /** Rows in `problem.foods` of the foods that are not refused: the columns of the model. */
  private readonly open: readonly number[];
  private readonly ration: Ration;
  private readonly sides: readonly Side[];
  /** Whether some food must be fed beyond what its caution allows; the sides then tell the collision. */
  private readonly crossed: boolean;
  private readonly lower: Float64Array;
  private readonly upper: Float64Array;
  private readonly wants: Float64Array;
  private readonly polytope: Polytope;
  private spansKept:
    | { readonly key: string; readonly spans: readonly (readonly [number, number])[] }
    | undefined;

  private notes: readonly CautionNote[] | undefined;

  /**
   * @param problem as {@link parseProblem} returns it
   * @throws ProblemError where the caution list leaves no food, or too little room, for a mix
   */
  constructor(problem: Problem, options: FormulationOptions, ignored: readonly string[] = []) {
    this.problem = problem;
    this.options = options;
    this.ignored = ignored;
    const { blocked, caps } = heed(problem, options.reference);
    this.open = problem.foods.flatMap((f, i) => (f.refused || blocked.has(i) ? [] : [i]));
    if (this.open.length === 0) {
      throw new ProblemError(
        '/foods',
        'every food is refused or may never be fed (see the caution list); add a food that is eaten',
      );
    }
    const foods = this.open.map((i) => stock(problem.foods[i]!, options.reference, problem.variation));
    const beside = problem.beside.map((b) => ({
      stocked: stock(b, options.reference, problem.variation),
      part: b.share_of_ration / 100,
    }));
    this.ration = new Ration(foods, beside);
    this.sides = sidesOf(problem, this.ration, this.open, distance(problem), caps);
    this.upper = Float64Array.from(this.open, (i) =>
      Math.min(problem.foods[i]!.max ?? 100, caps.get(i)?.max ?? 100),
    );
    const least = Float64Array.from(this.open, (i) => problem.foods[i]!.min ?? 0);
    this.crossed = least.some((min, column) => min > this.upper[column]!);
    this.lower = least.map((min, column) => Math.min(min, this.upper[column]!));
    this.wants = wantedShares(this.open.map((i) => problem.foods[i]!.want));
    this.polytope = new Polytope(options.highs, this.lower, this.upper, this.ruleSides());
  }

  /** The whole answer: shares, grams, spans and contents; or the conflict and its remedies. */
  solve(): Result {
    this.polytope.setBounds(this.lower, this.upper);
    const found = this.crossed ? undefined : this.best();
    if (!found) return this.collision();
    const x = this.exact(found.x);
    return { ...this.following(x, found.objective, this.spansWith(new Map())), ...this.toGrams(x) };
  }

  /** Whether any mix keeps every rule. */
  feasible(): boolean {
    if (this.crossed) return false;
    this.polytope.setBounds(this.lower, this.upper);
    return this.polytope.cheapest(new Float64Array(this.open.length)).status === 'optimal';
  }

  /** How given shares stand against the rules; a food left out counts as 0. */
  evaluate(shares: Shares): Evaluation {
    return evaluate(this.problem, this.ration, this.sides, this.vector(shares), this.cautions());
  }

  /**
   * The mix nearest to `from` with the shares in `held` as they are; a share held outside its span is brought to
   * its nearest end. Spans of the result leave `moving` free and keep the other holds.
   * @param moving id of the food whose slider moves; it is held at `held[moving]`
   */
  move(from: Shares, held: Shares, moving?: string): MoveResult {
    if (this.crossed) return this.collision();
    const target = this.vector(from);
    const pins = new Map<number, number>();
    this.ration.foods.forEach((f, i) => {
      const share = held[f.id];
      if (share !== undefined && f.id !== moving)
        pins.set(i, Math.min(this.upper[i]!, Math.max(this.lower[i]!, share)));
    });
    const spans = this.spansWith(pins);
    const fixed = new Map(pins);
    const moved = moving === undefined ? -1 : this.ration.foods.findIndex((f) => f.id === moving);
    if (moved >= 0) {
      const [low, high] = spans[moved]!;
      if (Number.isNaN(low)) return this.heldTooTight(pins);
      fixed.set(moved, Math.min(high, Math.max(low, held[moving!] ?? target[moved]!)));
    }
    this.pin(fixed);
    for (const [i, share] of fixed) target[i] = share;
    const answer = this.polytope.nearest(target);
    if (answer.status !== 'optimal') return this.heldTooTight(pins);
    const x = this.exact(answer.x);
    return this.following(x, squaredDistance(x, target), spans);
  }

  /** Whole steps of the scale for given shares. */
  grams(shares: Shares): Weighable {
    return this.toGrams(this.vector(shares));
  }

  dispose(): void {
    this.polytope.dispose();
  }

  private cautions(): readonly CautionNote[] {
    this.notes ??= cautionNotes(this.problem, this.options.reference);
    return this.notes;
  }

  private ruleSides(): Side[] {
    return this.sides.filter((s) => s.pointer.startsWith('/rules/'));
  }

  private best(): { x: Float64Array; objective: number } | undefined {
    const { objective } = this.problem;
    if (objective === 'cheapest') return this.cheapest();
    const target = objective === 'varied' ? new Float64Array(this.open.length) : this.wants;
    const answer = this.polytope.nearest(target);
    if (answer.status !== 'optimal') return undefined;
    return { x: answer.x, objective: squaredDistance(answer.x, target) };
  }

  /** Least cost, and among mixes of that cost the one nearest to what is wanted. */
  private cheapest(): { x: Float64Array; objective: number } | undefined {
    const prices = Float64Array.from(this.open, (i) => this.problem.foods[i]!.price_per_kg ?? 0);
    const answer = this.polytope.cheapest(prices);
    if (answer.status !== 'optimal') return undefined;
    const cost = dot(prices, answer.x);
    const scale = Math.max(1e-12, ...prices);
    const budget: Side = {
      pointer: '/rules/-',
      side: 'max',
      bound: cost,
      subject: 'cost',
      unit: '',
      halfSpace: () => ({
        g: prices.map((p) => -p / scale),
        h: (-cost - BUDGET_SLACK * Math.abs(cost)) / scale,
        scale,
      }),
      coefficient: () => 0,
      value: (x) => dot(prices, x),
    };
    const narrowed = new Polytope(this.options.highs, this.lower, this.upper, [...this.ruleSides(), budget]);
    try {
      const tie = narrowed.nearest(this.wants);
      const x = tie.status === 'optimal' && this.polytope.holds(tie.x) ? tie.x : answer.x;
      return { x, objective: dot(prices, x) };
    } catch {
      // So thin a slice of mixes can defeat the solver; the cheapest mix it came from still stands.
      return { x: answer.x, objective: cost };
    } finally {
      narrowed.dispose();
    }
  }

  private following(
    x: Float64Array,
    objective: number,
    ends: readonly (readonly [number, number])[],
  ): Following {
    const spans = ends.map(([low, high], i) => [Math.min(low, x[i]!), Math.max(high, x[i]!)] as const);
    const {
      total: _,
      breaches: __,
      ...standing
    } = evaluate(this.problem, this.ration, this.sides, x, this.cautions());
    return {
      status: 'optimal',
      ...standing,
      objective,
      shares: this.record((i) => x[i]!, 0),
      spans: this.record((i) => spans[i]!, [0, 0] as const),
      ignored: this.ignored,
    };
  }

  private collision(): Collision {
    const { highs, reference } = this.options;
    const elastic = new Elastic(highs, this.open.length, this.sides);
    try {
      const conflict = smallestConflict(elastic, highs);
      const sides = conflict.map((k) => elastic.sides[k]!);
      const remedies: Remedy[] = [
        ...loosenings(elastic, conflict),
        ...additions(elastic, this.problem, reference),
      ].filter((remedy) => this.mends(remedy));
      return {
        status: 'infeasible',
        verdict: conflictSentence(sides),
        conflict: sides.map((s) => ({ pointer: s.pointer, sentence: `${capital(demand(s))}.` })),
        remedies,
        ...doubts(this.problem, this.ration),
        cautions: this.cautions(),
        ignored: this.ignored,
      };
    } finally {
      elastic.dispose();
    }
  }

  /** Applies a remedy to a copy of the problem and asks whether it can then be solved. */
  private mends(remedy: Remedy): boolean {
    const mended = new Formulation(applyRemedy(this.problem, remedy), this.options);
    try {
      return mended.feasible();
    } finally {
      mended.dispose();
    }
  }

  private heldTooTight(pins: ReadonlyMap<number, number>): Collision {
    const names = [...pins.keys()].map((i) => this.ration.foods[i]!.name);
    const held = names.length > 0 ? ` while ${joined(names)} ${names.length === 1 ? 'is' : 'are'} held` : '';
    const verdict = `No mix can keep the rules${held}. ${held ? 'Let go of one.' : 'Balance the mix to see why.'}`;
    return {
      status: 'infeasible',
      verdict,
      conflict: [...pins.keys()].map((i) => ({
        pointer: `/foods/${this.open[i]}`,
        sentence: `${this.ration.foods[i]!.name} is held at ${Number(pins.get(i)!.toFixed(2))} %.`,
      })),
      remedies: [],
      ...doubts(this.problem, this.ration),
      cautions: this.cautions(),
      ignored: this.ignored,
    };
  }

  /** Spans do not depend on where the shares stand, only on the rules and holds: a slider dragged on needs no new ones. */
  private spansWith(pins: ReadonlyMap<number, number>): readonly (readonly [number, number])[] {
    const key = JSON.stringify([...pins]);
    if (this.spansKept?.key !== key) this.spansKept = { key, spans: this.freshSpans(pins) };
    return this.spansKept.spans;
  }

  private freshSpans(pins: ReadonlyMap<number, number>): (readonly [number, number])[] {
    this.pin(pins);
    const spans = this.ration.foods.map((_, i) => this.polytope.span(i));
    for (const i of pins.keys()) {
      this.pin(new Map([...pins].filter(([other]) => other !== i)));
      spans[i] = this.polytope.span(i);
    }
    return spans;
  }

  private pin(pins: ReadonlyMap<number, number>): void {
    const at = (bounds: Float64Array) => Float64Array.from(bounds, (v, i) => pins.get(i) ?? v);
    this.polytope.setBounds(at(this.lower), at(this.upper));
  }

  private toGrams(x: Float64Array): Weighable {
    const { batch_grams: batchGrams, scale_step_grams: stepGrams } = this.problem;
    const { polytope, lower, upper } = this;
    polytope.setBounds(lower, upper);
    const rows = this.ruleSides().map((s) => s.halfSpace(s.bound));
    const holds = (shares: ArrayLike<number>) => polytope.holds(shares, 1e-8);
    const answer = weighable(
      { shares: x, lower, upper, batchGrams, stepGrams, holds, rows },
      this.options.highs,
    );
    if ('conflict' in answer) return { grams: null, grams_conflict: answer.conflict };
    return { grams: this.record((i) => Number((answer.steps[i]! * stepGrams).toPrecision(12)), 0) };
  }

  /** Shares cleaned of the solver's last digits: within their bounds, and 100 in all. */
  private exact(raw: Float64Array): Float64Array {
    const x = raw.map((v, i) => {
      const share = Math.min(this.upper[i]!, Math.max(this.lower[i]!, v));
      return share < 1e-10 ? 0 : share;
    });
    const missing = 100 - x.reduce((a, b) => a + b, 0);
    let roomiest = 0;
    const room = (i: number) => Math.min(x[i]! - this.lower[i]!, this.upper[i]! - x[i]!);
    for (let i = 1; i < x.length; i++) if (room(i) > room(roomiest)) roomiest = i;
    x[roomiest]! += missing;
    return x;
  }

  private vector(shares: Shares): Float64Array {
    return Float64Array.from(this.ration.foods, (f) => shares[f.id] ?? 0);
  }

  /** By food id, in the problem's order; refused foods get `none`. */
  private record<T>(of: (column: number) => T, none: T): Record<string, T> {
    const column = new Map(this.open.map((row, i) => [row, i]));
    return Object.fromEntries(
      this.problem.foods.map((f, row) => {
        const i = column.get(row);
        return [f.id, i === undefined ? none : of(i)];
      }),
    );
  }
}

/** A copy of the problem with a remedy applied: the bound written at its pointer, or the food appended. */
export function applyRemedy(problem: Problem, remedy: Remedy): Problem {
  if (remedy.kind === 'add') return { ...problem, foods: [...problem.foods, remedy.food] };
  const [, list, row, field] = remedy.pointer.split('/') as [string, 'rules' | 'foods', string, string];
  const change = <T>(items: readonly T[]) =>
    items.map((item, i) => (i === Number(row) ? { ...item, [field]: remedy.to } : item));
  return list === 'rules'
    ? { ...problem, rules: change(problem.rules) }
    : { ...problem, foods: change(problem.foods) };
}

/**
 * How many standard deviations a bound keeps from the mean. For each rule by itself: the quantile that leaves the
 * part (1 - c) outside, half at either end. For all at once: the same part shared out over every bound (Bonferroni),
 * so that the chance of any of them being missed is 1 - c at most.
 */
function distance({ confidence, confidence_for, rules }: Problem): number {
  if (confidence === 0) return 0;
  const bounds = rules.flatMap((r) => ('nutrient' in r ? [r.min, r.max] : [])).filter((b) => b !== undefined);
  const ends = confidence_for === 'all' ? Math.max(2, bounds.length) : 2;
  return normalQuantile(1 - (1 - confidence) / ends);
}

/** A food without a wanted share wants an equal part of what the others leave of 100, never below 0. */
function wantedShares(wants: readonly (number | undefined)[]): Float64Array {
  const given = wants.reduce<number>((sum, w) => sum + (w ?? 0), 0);
  const open = wants.filter((w) => w === undefined).length;
  const part = open > 0 ? Math.max(0, (100 - given) / open) : 0;
  return Float64Array.from(wants, (w) => w ?? part);
}
