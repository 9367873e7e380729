/**
 * What is still to be poured, given what lies in the bowl, so that the batch ends in range. A correction takes
 * nothing out of the bowl again; spooning some back is offered apart (weigh-out.ts). In this order, the first that serves:
 *
 * 1. All as planned, where that is in range and the batch comes out within {@link TOTAL_SLACK} of its planned weight.
 * 2. The foods not yet poured change, at the planned total; if that cannot be, the batch grows by as little as can be,
 *    and where it may not grow it comes out smaller. The mix is the nearest to the planned
 *    shares (least sum of squared differences, as everywhere), then whole steps of the scale.
 * 3. The same, with more of foods that were poured already. Taken also before a batch that would have to grow far.
 * 4. None will do: the mix that misses the rules least, each miss in parts of its bound.
 *
 * It depends on what lies in the bowl alone, not on the way there: a batch reopened elsewhere stands at the same place.
 */

import { shortfall } from '../../formulation/solve/bounds.ts';
import { Polytope } from '../../formulation/solve/polytope.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { NEAR_STEP, SAME } from '../tolerances.ts';
import { sharesOf, sum } from './batch-rules.ts';
import {
  type Bowl,
  boundsOf,
  type CorrectionQuestion,
  TOTAL_SLACK,
  totalsOf,
} from './correction-question.ts';
import { GramSpace } from './gram-space.ts';
import { cheaperSteps, keptSteps, nearestSteps, type StepsQuestion } from './whole-steps.ts';

/** Where growing takes over this part of the planned weight more than pouring more of an earlier food would, that food is asked for. */
const EASY_GROWTH = 0.1;
/** Totals tried beyond the one that just suffices, where that leaves no whole steps: in steps of the scale. */
const TRIES = [0, 1, 2, 3, 4, 6, 8, 12, 16, 24, 32];

/** What becomes of the batch: nothing changes, other targets, a larger batch, or out of range. */
export type CorrectionStatus = 'as planned' | 'corrected' | 'grown' | 'out';

/** How the batch ends. */
export interface Correction {
  readonly status: CorrectionStatus;
  /** g of each food in the end, whole steps added to the bowl. */
  readonly grams: Float64Array;
  readonly total: number;
  /** Whether foods that were poured get more. */
  readonly again: boolean;
}

/** Grams of the next food between which the batch can still be ended in range. */
interface GramSpan {
  readonly low: number;
  readonly high: number;
}

/** Answers how a batch goes on from any bowl. Holds models of the solver: dispose of it. */
export class Corrections {
  readonly question: CorrectionQuestion;
  private readonly leastShares: Float64Array;
  private readonly planShares: Float64Array;
  private readonly space: GramSpace;
  private readonly polytope: Polytope;

  /** @param used shares of the foods that are in; what counting rules need of them is kept */
  constructor(question: CorrectionQuestion, used: ArrayLike<number>) {
    this.question = question;
    const { highs, rules, plan } = question;
    this.leastShares = rules.leastShares(used);
    this.planShares = sharesOf(plan) ?? new Float64Array(rules.size);
    this.space = new GramSpace(highs, rules, this.leastShares);
    this.polytope = new Polytope(highs, this.leastShares, rules.upper, rules.bounds);
  }

  dispose(): void {
    this.space.dispose();
    this.polytope.dispose();
  }

  of(bowl: Bowl): Correction {
    return this.asPlanned(bowl) ?? this.inRange(bowl) ?? this.leastMissed(bowl);
  }

  /**
   * The mix of any fineness nearest to the planned shares, at a total; g by column.
   * @param again whether foods that were poured may get more
   */
  nearest(bowl: Bowl, total: number, again: boolean): Float64Array | undefined {
    const { upper } = this.question.rules;
    const { lower: low, upper: high } = boundsOf(this.question, bowl, again);
    const part = 100 / total;
    const lower = low.map((g, i) =>
      high[i] === g ? g * part : Math.max(g * part, elementAt(this.leastShares, i)),
    );
    const most = high.map((g, i) =>
      low[i] === g ? elementAt(lower, i) : Math.min(g * part, elementAt(upper, i)),
    );
    if (lower.some((l, i) => l > elementAt(most, i) + SAME)) return undefined;
    this.polytope.setBounds(
      lower,
      most.map((u, i) => Math.max(u, elementAt(lower, i))),
    );
    const answer = this.polytope.nearest(this.planShares);
    return answer.status === 'optimal' ? answer.x.map((v) => v / part) : undefined;
  }

  /**
   * Between which grams, in the end, one food may lie so that the others can still bring the batch into range; those
   * that were poured stay as they are.
   * @param total the least and most that the batch may weigh, g
   */
  span(bowl: Bowl, food: number, total: readonly [number, number]): GramSpan | undefined {
    const bounds = { ...boundsOf(this.question, bowl, false, food), total };
    const ends = [1, -1].map((sign) => this.space.least((i) => (i === food ? sign : 0), bounds)?.[food]);
    const [low, high] = ends;
    return low === undefined || high === undefined ? undefined : { low, high };
  }

  /** The total, the planned one if it can be, at which a food may end at given grams. */
  totalWith(bowl: Bowl, food: number, grams: number): number | undefined {
    const { lower, upper } = boundsOf(this.question, bowl, false, food);
    lower[food] = grams;
    upper[food] = grams;
    return this.space.total(this.question.plannedTotal, {
      lower,
      upper,
      total: totalsOf(this.question, bowl),
    });
  }

  /** The smallest batch that can be put right if the lots held more than they do, g by column. */
  beyondLots(bowl: Bowl): Float64Array | undefined {
    const { lower, upper } = boundsOf(this.question, bowl, true);
    const open = upper.map((u) => (u > 0 ? Number.POSITIVE_INFINITY : 0));
    const from = Math.max(this.question.plannedTotal, sum(bowl.grams));
    return this.space.least(() => 1, { lower, upper: open, total: [from, Number.POSITIVE_INFINITY] });
  }

  private asPlanned(bowl: Bowl): Correction | undefined {
    const { rules, plan, plannedTotal, stock } = this.question;
    const grams = plan.map((g, i) => (bowl.poured[i] ? elementAt(bowl.grams, i) : g));
    const total = sum(grams);
    const done = grams.every((g, i) => bowl.poured[i] || g === 0);
    const near = done || Math.abs(total - plannedTotal) <= TOTAL_SLACK * plannedTotal + SAME;
    const inLots = grams.every((g, i) => bowl.poured[i] || g <= elementAt(stock, i) + SAME);
    if (!near || !inLots || !rules.hold(grams)) return undefined;
    return { status: this.sized(total, true), grams, total, again: false };
  }

  private inRange(bowl: Bowl): Correction | undefined {
    const { plannedTotal } = this.question;
    const simple = this.simple(bowl);
    if (simple) return simple;
    const { goBack } = this.question;
    // The total that the batch needs where only foods not yet poured change, and where poured ones may get more.
    const onward = this.total(bowl, false);
    const growsLittle = onward !== undefined && onward <= plannedTotal * (1 + EASY_GROWTH);
    const withEarlier = growsLittle || !goBack ? undefined : this.total(bowl, true);
    const growsFar =
      onward !== undefined && withEarlier !== undefined && onward > withEarlier + EASY_GROWTH * plannedTotal;
    return (
      (growsFar ? undefined : this.settled(bowl, onward, false)) ??
      (goBack ? this.settled(bowl, withEarlier ?? this.total(bowl, true), true) : undefined) ??
      (growsFar ? this.settled(bowl, onward, false) : undefined)
    );
  }

  /** The whole steps nearest to the plan at its total, where they happen to keep the rules: nothing is nearer. */
  private simple(bowl: Bowl): Correction | undefined {
    const { rules, plannedTotal: total, plan } = this.question;
    const whole = Number.isInteger(Number(((total - sum(bowl.grams)) / this.question.stepGrams).toFixed(6)));
    const grams = whole ? nearestSteps(this.steps(bowl, total, false), plan) : undefined;
    return grams && rules.hold(grams) ? { status: 'corrected', grams, total, again: false } : undefined;
  }

  /** The total at which the batch can be in range: as planned, else larger by as little as can be, else smaller. */
  private total(bowl: Bowl, again: boolean): number | undefined {
    return this.space.total(this.question.plannedTotal, {
      ...boundsOf(this.question, bowl, again),
      total: totalsOf(this.question, bowl),
    });
  }

  /** Whole steps at a total, or at one a little further from the planned. */
  private settled(bowl: Bowl, wanted: number | undefined, again: boolean): Correction | undefined {
    if (wanted === undefined) return undefined;
    const { plannedTotal, stepGrams } = this.question;
    const [least, most] = totalsOf(this.question, bowl);
    const inBowl = sum(bowl.grams);
    const steps = (wanted - inBowl) / stepGrams;
    const down = wanted < plannedTotal;
    const first = down ? Math.floor(steps + NEAR_STEP) : Math.ceil(steps - NEAR_STEP);
    for (const more of TRIES) {
      const total = withoutFloatNoise(inBowl + stepGrams * (first + (down ? -more : more)));
      if (total < least - SAME || total > most + SAME) return undefined;
      const grams = this.stepsAt(bowl, total, again);
      if (grams) return { status: this.sized(total, false), grams, total, again };
    }
    return undefined;
  }

  private stepsAt(bowl: Bowl, total: number, again: boolean): Float64Array | undefined {
    const { rules } = this.question;
    const question = this.steps(bowl, total, again);
    const target = this.planShares.map((share) => (share * total) / 100);
    const plain = nearestSteps(question, target);
    if (!plain) return undefined;
    if (rules.hold(plain)) return plain;
    if (sum(bowl.grams) > total - SAME) return undefined;
    const exact = this.nearest(bowl, total, again);
    return exact && keptSteps(question, exact, target, rules.spaces);
  }

  private steps(bowl: Bowl, total: number, again: boolean): StepsQuestion {
    const { rules, stepGrams } = this.question;
    const { lower, upper } = boundsOf(this.question, bowl, again);
    // A food's own bounds as grams of this total; what lies in the bowl already is not asked.
    const fixed = (i: number) => upper[i] === lower[i];
    return {
      bowl: bowl.grams,
      lower: lower.map((g, i) =>
        fixed(i) ? g : Math.max(g, (elementAt(this.leastShares, i) * total) / 100),
      ),
      upper: upper.map((g, i) =>
        fixed(i) ? g : Math.max(elementAt(lower, i), Math.min(g, (elementAt(rules.upper, i) * total) / 100)),
      ),
      total,
      stepGrams,
      holds: (grams) => rules.hold(grams),
    };
  }

  /** The nearest to the plan among the mixes that miss the rules least. */
  private leastMissed(bowl: Bowl): Correction {
    const { plannedTotal, rules, highs, stepGrams } = this.question;
    const [, most] = totalsOf(this.question, bowl);
    const bounds = boundsOf(this.question, bowl, this.question.goBack);
    const inBowl = sum(bowl.grams);
    const ceil = (total: number) => inBowl + stepGrams * Math.ceil((total - inBowl) / stepGrams - NEAR_STEP);
    const capable = Math.min(most, sum(bounds.upper));
    const totals = [
      ceil(Math.min(capable, Math.max(plannedTotal, inBowl))),
      inBowl + stepGrams * Math.floor((capable - inBowl) / stepGrams + NEAR_STEP),
    ];
    let best: { grams: Float64Array; miss: number; total: number } | undefined;
    for (const total of new Set(totals)) {
      if (total <= 0) continue;
      const found = this.space.leastMiss(bounds, total);
      if (found && (!best || found.miss < best.miss - 1e-6)) best = { ...found, total };
    }
    const shares = best && sharesOf(best.grams);
    // Less than the solver can tell from nothing has no shares to be judged by.
    if (!best || !shares) return { status: 'out', grams: bowl.grams.slice(), total: inBowl, again: false };
    const { total } = best;
    const part = 100 / total;
    const slack = 1e-7;
    const lower = bounds.lower.map((g, i) =>
      Math.min(elementAt(shares, i), Math.max(g * part, elementAt(this.leastShares, i))),
    );
    const upper = bounds.upper.map((g, i) =>
      Math.max(elementAt(shares, i), Math.min(g * part, elementAt(rules.upper, i))),
    );
    const eased = rules.bounds.map((bound, k) => ({
      ...bound,
      halfSpace: () => {
        const space = elementAt(rules.spaces, k);
        return { ...space, h: space.h - Math.max(0, shortfall(space, shares)) - slack };
      },
    }));
    const polytope = new Polytope(highs, lower, upper, eased);
    try {
      const answer = polytope.nearest(this.planShares);
      const exact = answer.status === 'optimal' ? answer.x.map((v) => v / part) : best.grams;
      const question = { ...bounds, bowl: bowl.grams, total, stepGrams, holds: () => true };
      const rounded = nearestSteps(question, exact);
      const end = rounded
        ? cheaperSteps(question, rounded, (grams) => rules.miss(grams))
        : bowl.grams.slice();
      const again = end.some((g, i) => bowl.poured[i] === true && g > elementAt(bowl.grams, i) + SAME);
      // Whole steps can happen to keep what no fine mix was found for.
      const status = rules.hold(end) ? this.sized(sum(end), false) : 'out';
      return { status, grams: end, total: sum(end), again };
    } finally {
      polytope.dispose();
    }
  }

  private sized(total: number, planned: boolean): CorrectionStatus {
    if (total > this.question.plannedTotal * (1 + TOTAL_SLACK) + SAME) return 'grown';
    return planned ? 'as planned' : 'corrected';
  }
}
