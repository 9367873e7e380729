/**
 * Weighing out a batch, food by food: what comes next, how much, between which amounts the batch stays in range, and
 * after each pour what becomes of the rest. All of it follows from the batch's pours, so a batch reopened elsewhere
 * stands at the same place.
 */
import type { Reference } from '../../foods/reference.ts';
import { ProblemError } from '../../formulation/problem/problem.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { Highs } from '../../formulation/solve/highs.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { evaluateWith } from '../batch/batch.ts';
import type { Batch } from '../model.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { NEAR_STEP, SAME } from '../tolerances.ts';
import { BatchRules, sharesOf, sum } from './batch-rules.ts';
import { type Correction, Corrections } from './correction.ts';
import {
  type CorrectionQuestion,
  lackingOf,
  plannedTotalsOf,
  TOTAL_SLACK,
  totalsOf,
} from './correction-question.ts';
import { MixingBowl } from './mixing-bowl.ts';
import * as say from './sentences.ts';
import type {
  Asked,
  ChangedTarget,
  Finished,
  Lost,
  NextPour,
  Poured,
  SpoonBack,
  Tolerance,
  Way,
  WeighState,
} from './weigh-state.ts';
import { plannedSteps } from './whole-steps.ts';

export interface WeighOutOptions {
  readonly reference: Reference;
  readonly highs: Highs;
  /** The most the batch may take of a food in all, g by food id: what its lots held when the batch began. Without an entry, any amount. */
  readonly stock?: Readonly<Record<string, number>>;
  /** The most the batch may come to, g; twice the planned weight unless given. */
  readonly mostGrams?: number;
  /** Whether more may be asked for of foods that were poured before; true unless written. */
  readonly goBack?: boolean;
  /** Whether some of the food poured last may be taken out again (each food is poured into a bowl of its own first). */
  readonly spoonBack?: boolean;
  /** Whether the keeper is asked before the batch grows or leaves out foods; without, it does what serves. */
  readonly asks?: boolean;
}

export class WeighOut {
  readonly batch: Batch;
  /** g by food id as planned, whole steps of the scale. */
  readonly planned: Readonly<Record<string, number>>;
  private readonly options: WeighOutOptions;
  private readonly rules: BatchRules;
  private readonly step: number;
  private readonly plan: Float64Array;
  private readonly stock: Float64Array;
  private readonly order: readonly number[];
  private readonly bowl: MixingBowl;
  private corrections: Corrections;
  private kept: Correction | undefined;
  private stateKept: WeighState | undefined;
  private waysKept: readonly Way[] | undefined;
  /** Whether no way into range is left that the keeper could be asked about: the nearest is aimed at then. */
  private wayless = false;

  /** @throws ProblemError where the batch names foods its problem does not have, or a pour is no weight */
  constructor(batch: Batch, options: WeighOutOptions) {
    this.batch = batch;
    this.options = options;
    this.step = batch.problem.scale_step_grams;
    this.rules = new BatchRules(batch.problem, options);
    const { rules } = this;
    if (!(batch.grams > 0))
      throw new ProblemError('/grams', `a batch of ${batch.grams} g cannot be weighed; write its grams`);
    const stock = options.stock ?? {};
    this.stock = Float64Array.from(rules.ids, (id) => stock[id] ?? Number.POSITIVE_INFINITY);
    this.plan = plannedSteps(rules, rules.vector(batch.shares, '/shares'), batch.grams, this.step);
    this.planned = this.record(this.plan);
    const ordered = batch.order.map((id, i) => rules.column(id, `/order/${i}`));
    this.order = [...new Set([...ordered, ...rules.ids.keys()])];
    this.bowl = new MixingBowl(rules.names);
    for (const [i, p] of batch.pours.entries()) this.take(p.food, p.grams, `/pours/${i}`);
    this.corrections = this.fresh();
  }

  dispose(): void {
    this.corrections.dispose();
  }

  /** Where the batch stands. */
  state(): WeighState {
    this.stateKept ??= this.freshState();
    return this.stateKept;
  }

  private freshState(): WeighState {
    const c = this.correction();
    const asked = c.status === 'out' ? this.asked(c) : undefined;
    return {
      status: asked ? 'asked' : c.status,
      targets: this.record(c.grams),
      total: c.total,
      done: this.comingAfter(c) === undefined,
      ...(asked && { asked }),
      ...(c.status === 'out' && !asked && { lost: this.lost(c) }),
    };
  }

  /** What the keeper is asked; undefined where no way into range is left, or the batch is to stay as planned. */
  private asked(c: Correction): Asked | undefined {
    const ways = this.ways();
    return ways.length > 0 ? { ways, missed: this.missed(c) } : undefined;
  }

  /** The ways into range that nobody agreed to yet. */
  private ways(): readonly Way[] {
    this.waysKept ??= this.freshWays();
    return this.waysKept;
  }

  private freshWays(): readonly Way[] {
    if (!this.options.asks || this.batch.agreed?.keep) return [];
    const { question } = this.corrections;
    const mostGrams = this.mostGrams;
    const least = new Float64Array(this.rules.size);
    const single = [this.wayIn({ ...question, mostGrams }), this.wayIn({ ...question, least })];
    const both = single.some((way) => way) ? undefined : this.wayIn({ ...question, mostGrams, least });
    return [...single, both].filter((way) => way !== undefined);
  }

  private wayIn(question: CorrectionQuestion): Way | undefined {
    const corrections = new Corrections(question, this.used);
    try {
      const { status, grams, total } = corrections.of(this.bowl);
      if (status === 'out') return undefined;
      const without = this.order.filter(
        (i) => elementAt(this.plan, i) > 0 && !this.bowl.poured[i] && grams[i] === 0,
      );
      return {
        total,
        without: without.map((i) => elementAt(this.rules.ids, i)),
        names: without.map((i) => elementAt(this.rules.names, i)),
      };
    } finally {
      corrections.dispose();
    }
  }

  /** Id of the food to pour now; undefined where all is poured. */
  upcoming(): string | undefined {
    const i = this.comingAfter(this.correction());
    return i === undefined ? undefined : this.rules.ids[i];
  }

  /** g of a food in the bowl; of all of them where none is named. */
  inBowl(food?: string): number {
    const { grams } = this.bowl;
    return food === undefined
      ? withoutFloatNoise(sum(grams))
      : elementAt(grams, this.rules.column(food, '/food'));
  }

  /** Whether what lies in the bowl keeps every rule, whatever is still to come. */
  get inRange(): boolean {
    return this.rules.hold(this.bowl.grams);
  }

  /** The food to pour now, how much, and between which amounts; undefined where all is poured. */
  next(): NextPour | undefined {
    const c = this.correction();
    const i = this.comingAfter(c);
    if (i === undefined) return undefined;
    const { bowl, corrections } = this;
    const inBowl = sum(bowl.grams);
    const ofIt = elementAt(bowl.grams, i);
    const target = withoutFloatNoise(elementAt(c.grams, i) - ofIt);
    const again = elementAt(bowl.poured, i);
    const asPlanned = this.tolerance(i, plannedTotalsOf(corrections.question, bowl), target);
    const wide = this.tolerance(i, totalsOf(corrections.question, bowl), target);
    const wider = wide && (!asPlanned || wide.low < asPlanned.low || wide.high > asPlanned.high);
    const total = wider ? corrections.totalWith(bowl, i, ofIt + wide.high) : undefined;
    const grown = total === undefined ? undefined : { ...wide!, total: Math.round(total) };
    return {
      food: elementAt(this.rules.ids, i),
      name: elementAt(this.rules.names, i),
      target,
      reading: withoutFloatNoise(inBowl + target),
      again,
      ...(asPlanned ? { asPlanned } : {}),
      ...(grown ? { grown } : {}),
      poured: withoutFloatNoise(inBowl),
      remaining: withoutFloatNoise(c.total - inBowl),
    };
  }

  /**
   * Notes a pour and works out the rest.
   * @param grams on the scale; 0 leaves the food out; below 0 for what is taken out again of the food poured last
   * @throws ProblemError where that is no weight, or the food is none of the batch's
   */
  pour(food: string, grams: number): Poured {
    const before = this.correction();
    const i = this.rules.column(food, '/food');
    const roomBefore = this.options.spoonBack
      ? this.corrections.span(this.bowl, i, plannedTotalsOf(this.corrections.question, this.bowl))
      : undefined;
    const leftOut = this.take(food, grams, '/grams');
    const renews = leftOut || this.batch.agreed?.keep || this.wayless;
    this.wayless = false;
    if (renews) this.renew();
    this.kept = undefined;
    this.stateKept = undefined;
    this.waysKept = undefined;
    const state = this.state();
    const after = this.correction();
    // Until the keeper has chosen, nobody knows what becomes of the other foods.
    const changed = state.asked ? [] : this.changes(before, after, i);
    const spoonBack = roomBefore && this.spoonBack(i, grams, roomBefore.high, state);
    const told = { food: elementAt(this.rules.names, i), grams, changed, state, planned: this.batch.grams };
    return { ...state, changed, ...(spoonBack ? { spoonBack } : {}), sentence: say.poured(told) };
  }

  /** How what lies in the bowl stands against the rules, whatever is still to come. */
  finish(): Finished {
    const { grams } = this.bowl;
    return {
      inRange: this.inRange,
      evaluation: this.evaluated(grams),
      grams: this.record(grams),
      total: withoutFloatNoise(sum(grams)),
    };
  }

  /** How the batch is in the end, as it is aimed at now; once all is poured, how what lies in the bowl is. */
  aimedAt(): Evaluation {
    const c = this.correction();
    return this.evaluated(this.comingAfter(c) === undefined ? this.bowl.grams : c.grams);
  }

  /** The nearest mix to the plan, of any fineness, that the present targets are the whole steps of; g by food id. */
  nearest(): Readonly<Record<string, number>> | undefined {
    const { total, again, status } = this.correction();
    if (status === 'out') return undefined;
    const exact = this.corrections.nearest(this.bowl, total, again);
    return exact && this.record(exact);
  }

  private correction(): Correction {
    this.kept ??= this.freshCorrection();
    return this.kept;
  }

  private freshCorrection(): Correction {
    const c = this.corrections.of(this.bowl);
    const { asks } = this.options;
    if (c.status !== 'out' || !asks || this.batch.agreed?.keep || this.ways().length > 0) return c;
    this.wayless = true;
    this.renew();
    return this.corrections.of(this.bowl);
  }

  private renew(): void {
    this.corrections.dispose();
    this.corrections = this.fresh();
  }

  /** The next food by the order: first those not poured yet, then those that get more. */
  private comingAfter(c: Correction): number | undefined {
    const lacks = (i: number) =>
      elementAt(c.grams, i) - elementAt(this.bowl.grams, i) > this.step * NEAR_STEP;
    return this.order.find((i) => !this.bowl.poured[i] && lacks(i)) ?? this.order.find((i) => lacks(i));
  }

  /** Puts a pour into the bowl. @returns whether it leaves a food out for good */
  private take(food: string, grams: number, field: string): boolean {
    return this.bowl.take(this.rules.column(food, `${field}/food`), grams, `${field}/grams`);
  }

  /** The most the batch may ever come to, g. */
  private get mostGrams(): number {
    return this.options.mostGrams ?? 2 * this.batch.grams;
  }

  /** Shares of the foods that are in: all that were planned, but those left out for good. */
  private get used(): Float64Array {
    const used = this.plan.map((g, i) => (this.bowl.poured[i] && this.bowl.grams[i] === 0 ? 0 : g));
    return sharesOf(used) ?? used;
  }

  private fresh(): Corrections {
    const { plan, rules, step, bowl } = this;
    const plannedTotal = withoutFloatNoise(sum(plan));
    const { grams = 0, without = [], keep } = this.batch.agreed ?? {};
    const { asks } = this.options;
    // A batch that stays as planned may still take what was planned, however much lies in the bowl.
    const asPlanned = sum(plan.map((g, i) => (bowl.poured[i] ? elementAt(bowl.grams, i) : g)));
    const size = Math.max(plannedTotal, grams) * (1 + TOTAL_SLACK);
    const most = keep ? asPlanned : this.wayless ? Math.min(asPlanned, this.mostGrams) : size;
    return new Corrections(
      {
        highs: this.options.highs,
        rules,
        plan,
        plannedTotal,
        stepGrams: step,
        stock: this.stock,
        mostGrams: asks ? Math.max(size, most) : this.mostGrams,
        goBack: this.options.goBack ?? true,
        least: Float64Array.from(rules.ids, (id) => (asks && !without.includes(id) ? step : 0)),
      },
      this.used,
    );
  }

  /** In whole steps to pour now; undefined where not even the target serves. */
  private tolerance(i: number, total: readonly [number, number], target: number): Tolerance | undefined {
    const span = this.corrections.span(this.bowl, i, total);
    if (!span) return undefined;
    const { step } = this;
    const inBowl = elementAt(this.bowl.grams, i);
    const low = withoutFloatNoise(step * Math.ceil((span.low - inBowl) / step - NEAR_STEP));
    const high = withoutFloatNoise(step * Math.floor((span.high - inBowl) / step + NEAR_STEP));
    return low > high || high < target - SAME ? undefined : { low: Math.max(0, low), high };
  }

  private changes(before: Correction, after: Correction, poured: number): ChangedTarget[] {
    return this.order.flatMap((i) => {
      const [from, to] = [elementAt(before.grams, i), elementAt(after.grams, i)];
      const inBowl = elementAt(this.bowl.grams, i);
      const again = elementAt(this.bowl.poured, i) && to > inBowl + this.step * NEAR_STEP;
      if (Math.abs(to - from) < this.step * NEAR_STEP || (i === poured && !again)) return [];
      if (this.bowl.poured[i] && !again) return [];
      const food = elementAt(this.rules.ids, i);
      const told = { name: elementAt(this.rules.names, i), from, to, again, inBowl };
      return [{ food, from, to, again, sentence: say.changed(told) }];
    });
  }

  private spoonBack(i: number, grams: number, most: number, state: WeighState): SpoonBack | undefined {
    if (grams <= 0 || state.status === 'as planned' || state.status === 'corrected') return undefined;
    const { step, rules } = this;
    const inBowl = elementAt(this.bowl.grams, i);
    const excess = withoutFloatNoise(step * Math.ceil((inBowl - most) / step - NEAR_STEP));
    if (excess <= 0 || excess > inBowl) return undefined;
    const sentence = say.spoonBack(elementAt(rules.names, i), excess);
    return { food: elementAt(rules.ids, i), grams: excess, sentence };
  }

  private lost(c: Correction): Lost {
    const missed = this.missed(c);
    const more = this.corrections.beyondLots(this.bowl);
    const lacking = more && lackingOf(this.corrections.question, this.bowl, more);
    const larger = more &&
      lacking && {
        total: Math.ceil(sum(more) - NEAR_STEP),
        needed: lacking.byId,
        sentence: say.larger(sum(more), lacking.named),
      };
    return {
      missed,
      sentence: say.lost(missed),
      ...(larger && { larger }),
    };
  }

  /** What a correction leaves out of range. */
  private missed(c: Correction): Lost['missed'] {
    return this.evaluated(c.grams).breaches.map(({ pointer, sentence }) => ({ pointer, sentence }));
  }

  private evaluated(grams: Float64Array): Evaluation {
    const { reference, highs } = this.options;
    const total = sum(grams);
    // What the scale can weigh is asked of this batch, as large as it is.
    const problem = { ...this.batch.problem, batch_grams: total > 0 ? total : this.batch.grams };
    const shares = sharesOf(grams);
    return evaluateWith({ reference, highs })(problem, shares ? this.record(shares) : {});
  }

  private record(values: ArrayLike<number>): Record<string, number> {
    return Object.fromEntries(this.rules.ids.map((id, i) => [id, elementAt(values, i)]));
  }
}
