/**
 * A live formulation: one problem, its solver kept warm. Every answer is a mix that keeps all rules, or the reason
 * why none does and what would mend it.
 */

import { collided } from './advice/collision.ts';
import { frontier, type Goal } from './advice/frontier.ts';
import { type Substitutable, type SubstituteQuestion, substitutes } from './advice/substitutes.ts';
import { cautionNotes } from './amounts/apply-cautions.ts';
import { type FoodAmounts, foodAmounts } from './amounts/food-amounts.ts';
import { type DropOne, dropOne } from './explain/drop-one.ts';
import { doubts, evaluate } from './explain/evaluate.ts';
import { capital, conflictSentence, demand, joined } from './explain/sentences.ts';
import { reasons } from './explain/why.ts';
import { type Ingredient, type Problem, ProblemError, type Shares } from './problem/problem.ts';
import type {
  Best,
  CautionNote,
  Change,
  Collision,
  Evaluation,
  Following,
  MoveResult,
  Reason,
  Remedy,
  Result,
  Weighable,
} from './problem/result.ts';
import { type AimLine, aimLines, onHandOf } from './solve/aims.ts';
import { type Bound, type LinearBound, linearBounds, type Ration, shortfall } from './solve/bounds.ts';
import {
  type BuiltRation,
  buildRation,
  type FormulationOptions,
  wantedShares,
} from './solve/build-ration.ts';
import { ContinuousMixSolver } from './solve/continuous-mix-solver.ts';
import { type CountBound, countBoundsOf } from './solve/counting.ts';
import { dropOneBounds } from './solve/drop-one.ts';
import { weighable } from './solve/grams.ts';
import { IntegerMixSolver } from './solve/integer-mix-solver.ts';
import type { Found, MixQuestion, MixSolver, Span } from './solve/mix-solver.ts';
import { boundsAt, keeps } from './solve/outer-approximation.ts';
import { leavesShareOpen } from './solve/ration-share.ts';
import { STEPS_TOLERANCE } from './solve/tolerances.ts';

export class Formulation {
  readonly problem: Problem;
  private readonly options: FormulationOptions;
  private readonly ignored: readonly string[];
  /** Rows in `problem.foods` of the foods that are not refused: the columns of the model. */
  private readonly open: readonly number[];
  /** What is fed: the foods that are not refused, and what is fed beside them. */
  readonly ration: Ration;
  private readonly sides: readonly LinearBound[];
  /** Whether some food must be fed beyond what its caution allows; the sides then tell the collision. */
  private readonly crossed: boolean;
  /** Least and most share by column, percent. */
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  private readonly wants: Float64Array;
  readonly counts: readonly CountBound[];
  private readonly aims: readonly AimLine[];
  private readonly question: MixQuestion;
  private readonly mixes: MixSolver;
  private readonly counted: boolean;
  /** Share of the ration of each food beside the mix, and where it may be chosen, its span. */
  private readonly besideShares: BuiltRation['besideShares'];
  private kept: { readonly found: Found | undefined } | undefined;
  private solved: Result | undefined;
  private notes: readonly CautionNote[] | undefined;

  /**
   * @param problem as {@link parseProblem} returns it
   * @throws ProblemError where the caution list leaves no food, or too little room, for a mix
   */
  constructor(problem: Problem, options: FormulationOptions, ignored: readonly string[] = []) {
    this.problem = problem;
    this.options = options;
    this.ignored = ignored;
    const { open, caps, besideShares, ration, z } = buildRation(problem, options);
    if (open.length === 0) {
      throw new ProblemError(
        '/foods',
        'every food is refused or may never be fed (see the caution list); add a food that is eaten',
      );
    }
    this.open = open;
    this.besideShares = besideShares;
    this.ration = ration;
    this.sides = [
      ...linearBounds(problem, ration, open, z, caps),
      ...(problem.drop_one ? dropOneBounds(problem, ration) : []),
    ];
    this.upper = Float64Array.from(this.open, (i) =>
      Math.min(problem.foods[i]!.max ?? 100, caps.get(i)?.max ?? 100),
    );
    const least = Float64Array.from(this.open, (i) => problem.foods[i]!.min ?? 0);
    this.crossed = least.some((min, column) => min > this.upper[column]!);
    this.lower = least.map((min, column) => Math.min(min, this.upper[column]!));
    this.wants = wantedShares(this.open.map((i) => problem.foods[i]!.want));
    this.counts = countBoundsOf(problem, open, ration.foods);
    const aims = aimLines(problem, this.ration, this.open);
    this.question = {
      highs: options.highs,
      lower: this.lower,
      upper: this.upper,
      sides: this.ruleSides(),
      counts: this.counts,
      aims,
      stock: onHandOf(problem, this.open),
      objective: problem.objective,
      wants: this.wants,
      prices: Float64Array.from(this.open, (i) => problem.foods[i]!.price_per_kg ?? 0),
    };
    this.mixes =
      this.counts.length + aims.length > 0
        ? new IntegerMixSolver(this.question)
        : new ContinuousMixSolver(this.question);
    this.aims = aims;
    this.counted = this.mixes instanceof IntegerMixSolver;
  }

  /** The whole answer: shares, grams, spans and contents; or the conflict and its remedies. */
  solve(): Result {
    this.solved ??= this.solveAfresh();
    return this.solved;
  }

  private solveAfresh(): Result {
    const found = this.found();
    if (!found) return this.collision();
    return { ...this.following(found, this.mixes.spans(new Map())), ...this.toGrams(found.x, found) };
  }

  /** The best mix alone, without spans, contents and grams; undefined where no mix keeps every rule. */
  best(): Best | undefined {
    const found = this.found();
    return found && this.told(found);
  }

  /** A problem does not change, so its best mix is sought once. */
  private found(): Found | undefined {
    this.kept ??= { found: this.crossed ? undefined : this.mixes.best() };
    return this.kept.found;
  }

  /** Whether any mix keeps every rule. */
  feasible(): boolean {
    return !this.crossed && this.mixes.feasible();
  }

  /** How given shares stand against the rules; a food left out counts as 0. */
  evaluate(shares: Shares): Evaluation {
    const standing = evaluate(this.problem, this.ration, this.bounds(), this.vector(shares), this.cautions());
    return { ...standing, ...this.beside() };
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
    const spans = this.mixes.spans(pins);
    const fixed = new Map(pins);
    const moved = moving === undefined ? -1 : this.ration.foods.findIndex((f) => f.id === moving);
    if (moved >= 0) {
      const [low, high] = spans[moved]!;
      if (Number.isNaN(low)) return this.heldTooTight(pins);
      fixed.set(moved, Math.min(high, Math.max(low, held[moving!] ?? target[moved]!)));
    }
    for (const [i, share] of fixed) target[i] = share;
    const found = this.mixes.nearest(target, fixed);
    return found ? this.following(found, spans) : this.heldTooTight(pins);
  }

  /** Whole steps of the scale for given shares. */
  grams(shares: Shares): Weighable {
    const x = this.vector(shares);
    return this.toGrams(x, boundsAt(this, x));
  }

  /** Why the best mix is as it is: the bounds it stands at and what each costs. Empty where there is no mix. */
  why(): Reason[] {
    const found = this.found();
    if (!found) return [];
    return reasons({
      problem: this.problem,
      found,
      bounds: this.bounds(),
      priced: this.ruleSides(),
      names: this.ration.foods.map((f) => f.name),
      aims: this.aims,
      counted: this.counted,
      resolve: (pointer, to) => {
        const moved = new Formulation(written(this.problem, { pointer, to }), this.options);
        try {
          return moved.mixes.best();
        } finally {
          moved.dispose();
        }
      },
    });
  }

  /** Two goals against each other: the mixes that are best in one for what they are in the other. */
  frontier(a: Goal, b: Goal, points = 15): { a: number; b: number; shares: Shares }[] {
    if (this.crossed) return [];
    const { problem, ration, open, question } = this;
    return frontier({ problem, ration, open, mixes: question, points }, a, b).map(({ x, ...values }) => ({
      ...values,
      shares: this.record((i) => x[i]!, 0),
    }));
  }

  /** What can replace each food, or those asked for, with every rule kept. @param shares must keep every rule */
  substitutes(shares: Shares, question?: SubstituteQuestion): Substitutable[] {
    const { reference } = this.options;
    return substitutes(this.problem, { reference, beside: this.ration.beside }, shares, question);
  }

  /** A food as this problem counts it. @param food per 100 g as fed @throws ProblemError for an unknown `ref` */
  amountsOf(food: Ingredient): FoodAmounts {
    return foodAmounts(food, this.options.reference, this.problem.variation);
  }

  /** What is eaten when the animal leaves any one food. */
  dropOne(shares: Shares): DropOne {
    return dropOne(this.problem, this.ration, this.vector(shares));
  }

  dispose(): void {
    this.mixes.dispose();
  }

  private cautions(): readonly CautionNote[] {
    this.notes ??= cautionNotes(this.problem, this.options.reference);
    return this.notes;
  }

  /** All sides but the foods' own bounds, which stand in `lower` and `upper`. */
  private ruleSides(): LinearBound[] {
    return this.sides.filter((s) => !s.pointer.startsWith('/foods/'));
  }

  private told({ x, objective, gap }: Found): Best {
    return {
      objective,
      ...(gap > 0 ? { gap } : {}),
      ...(this.aims.length > 0
        ? { aims: this.aims.map((line) => ({ ...line.aim, value: line.value(x) })) }
        : {}),
      shares: this.record((i) => x[i]!, 0),
    };
  }

  private following(found: Found, ends: readonly Span[]): Following {
    const { x } = found;
    const spans = ends.map(([low, high], i) => [Math.min(low, x[i]!), Math.max(high, x[i]!)] as const);
    const {
      total: _,
      breaches: __,
      ...standing
    } = evaluate(this.problem, this.ration, this.bounds(), x, this.cautions());
    return {
      status: 'optimal',
      ...standing,
      ...this.told(found),
      ...this.beside(),
      spans: this.record((i) => spans[i]!, [0, 0] as const),
      ignored: this.ignored,
    };
  }

  /** What is fed beside the mix, where its share was chosen. */
  private beside(): Pick<Following, 'beside'> {
    if (!leavesShareOpen(this.problem)) return {};
    return {
      beside: Object.fromEntries(
        this.ration.beside.map(({ stocked }, i) => [stocked.id, this.besideShares[i]!]),
      ),
    };
  }

  /** Everything that can be broken or stand at its limit. */
  private bounds(): readonly Bound[] {
    return [...this.sides, ...this.counts];
  }

  private collision(): Collision {
    const { problem, options, sides, counts, open } = this;
    const mends = (remedy: Remedy) => this.mends(remedy);
    const { bounds, remedies } = collided({ problem, options, sides, counts, n: open.length, mends });
    return {
      status: 'infeasible',
      verdict: conflictSentence(bounds),
      conflict: bounds.map((s) => ({ pointer: s.pointer, sentence: `${capital(demand(s))}.` })),
      remedies,
      ...doubts(this.problem, this.ration),
      cautions: this.cautions(),
      ignored: this.ignored,
    };
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

  /** @param choice bounds under which the foods that are in stay in */
  private toGrams(x: Float64Array, choice: Pick<Found, 'lower' | 'upper'>): Weighable {
    const { batch_grams: batchGrams, scale_step_grams: stepGrams } = this.problem;
    const spaces = this.ruleSides().map((s) => s.halfSpace(s.bound));
    const within = (shares: ArrayLike<number>) =>
      Array.from(shares).every(
        (v, i) => v >= this.lower[i]! - STEPS_TOLERANCE && v <= this.upper[i]! + STEPS_TOLERANCE,
      );
    const holds = (shares: ArrayLike<number>) =>
      within(shares) &&
      spaces.every((space) => shortfall(space, shares) <= STEPS_TOLERANCE) &&
      this.counts.every((c) => keeps(c, shares));
    const answer = weighable(
      { shares: x, ...choice, batchGrams, stepGrams, holds, rows: spaces },
      this.options.highs,
    );
    if ('conflict' in answer) return { grams: null, grams_conflict: answer.conflict };
    return { grams: this.record((i) => Number((answer.steps[i]! * stepGrams).toPrecision(12)), 0) };
  }

  /** Shares by column of `ration.foods`; a food left out counts as 0. */
  vector(shares: Shares): Float64Array {
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

/** A copy of the problem with a remedy applied: bounds written at their pointers, or the food appended. */
export function applyRemedy(problem: Problem, remedy: Remedy): Problem {
  if (remedy.kind === 'add') return { ...problem, foods: [...problem.foods, remedy.food] };
  const changes = remedy.kind === 'loosen' ? [remedy] : remedy.changes;
  return changes.reduce(written, problem);
}

/** The problem with another value at a pointer; undefined takes the bound out. */
function written(
  problem: Problem,
  { pointer, to }: Pick<Change, 'pointer'> & { readonly to: Change['to'] | undefined },
): Problem {
  const [, list, row, field] = pointer.split('/') as [string, string, string?, string?];
  if (row === undefined || field === undefined) return { ...problem, [list]: to };
  const change = <T>(items: readonly T[]) =>
    items.map((item, i) => (i === Number(row) ? { ...item, [field]: to } : item));
  return list === 'rules'
    ? { ...problem, rules: change(problem.rules) }
    : { ...problem, foods: change(problem.foods) };
}
