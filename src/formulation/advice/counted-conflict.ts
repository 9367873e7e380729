/**
 * Why no mix can keep rules that count foods, and what would mend it. The linear rules alone can be kept here, so the
 * elastic program says nothing: each question is asked of {@link OuterApproximation} with the bounds in question alone.
 */

import type { Reference } from '../../foods/reference.ts';
import { words } from '../../words/words.ts';
import { hasCaution } from '../amounts/apply-cautions.ts';
import { deletionFilter } from '../explain/conflict.ts';
import { Demands } from '../explain/demands.ts';
import { outwards } from '../explain/outwards.ts';
import { ruleAt } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Addition, Loosening } from '../problem/result.ts';
import type { Bound, LinearBound } from '../solve/bounds.ts';
import type { CountBound } from '../solve/counting.ts';
import { answered, type Highs } from '../solve/highs.ts';
import type { RuleSet } from '../solve/integer-question.ts';
import { OuterApproximation } from '../solve/outer-approximation.ts';
import { dryFoods, mayBeOffered } from './dry-foods.ts';
import { addition, allowed, change, dearest, loosening } from './remedies.ts';

/** Further foods that are tried. */
const MOST_TRIED = 40;
/** How finely a least share or weight is loosened, parts of what it was. */
const STEPS = 100;
const MOST_ROUNDS = 20;
/** How near a bound is halved in on, relatively: finer than it is written. */
const FINEST = 2e-5;
/** A bound that does not suffice at so many times what it was does not at all. */
const WIDEST = 1e6;

export class CountedConflict {
  private readonly highs: Highs;
  private readonly asked: RuleSet;
  private readonly demands: Demands<LinearBound | CountBound>;
  /** The colliding demands. */
  private readonly members: readonly number[];

  /**
   * @param linear a conflict among the bounds that count nothing, where there is one
   * @param tried told how many demands have been looked at
   */
  constructor(
    highs: Highs,
    asked: RuleSet,
    linear?: readonly Bound[],
    tried?: (done: number, of: number) => void,
  ) {
    this.highs = highs;
    this.asked = asked;
    this.demands = new Demands<LinearBound | CountBound>([...asked.bounds, ...asked.counts]);
    if (linear) {
      const spoken = new Set(linear);
      this.members = this.demands.all.filter((k) => spoken.has(this.demands.spoken(k)));
      return;
    }
    const rank = (k: number) => {
      const bound = this.demands.spoken(k);
      if ('counts' in bound) return 2;
      return bound.pointer.startsWith('/foods/') ? 0 : 1;
    };
    const order = [...this.demands.all].sort((a, b) => rank(a) - rank(b));
    let done = 0;
    const possible = (kept: readonly number[]) => {
      tried?.(done++, order.length);
      return this.possible(kept);
    };
    this.members = deletionFilter(order, possible).sort((a, b) => a - b);
  }

  /** A smallest set, in the sense that none of it can be spared, of bounds that collide. */
  get bounds(): readonly Bound[] {
    return this.members.map((k) => this.demands.spoken(k));
  }

  /** Every bound of the conflict whose loosening alone suffices, least relative change first. */
  loosenings(): Loosening[] {
    return this.members
      .flatMap((k) => {
        const bound = this.demands.own[k];
        if (!bound || bound.because) return [];
        return ('counts' in bound ? this.loosenCount(k, bound) : this.loosenLinear(k, bound)) ?? [];
      })
      .sort((a, b) => change(a) - change(b));
  }

  /** Usual dry foods, one of which may be enough; only where the mix has too few foods. */
  additions(problem: Problem, reference: Reference): Addition[] {
    const some = this.members
      .map((k) => this.demands.own[k])
      .find((bound) => bound !== undefined && 'counts' in bound && bound.counts === 'some');
    if (!some || !('counts' in some)) return [];
    const rule = ruleAt(problem, some.pointer);
    const group = rule && 'count' in rule ? rule.count.group : undefined;
    const taken = new Set(problem.foods.map((f) => f.ref));
    const ids = new Set([...problem.foods, ...problem.beside].map((f) => f.id));
    const offered = mayBeOffered(problem);
    return dryFoods(reference, problem.variation)
      .filter(
        ({ food }) =>
          food.plain &&
          !taken.has(food.ref) &&
          offered(food) &&
          (group === undefined || food.group === group),
      )
      .filter(({ food }) => !hasCaution(food.ref, problem, reference))
      .slice(0, MOST_TRIED)
      .map(({ food }) => addition(food, some.atLeast, ids, dearest(problem)));
  }

  private possible(kept: readonly number[], instead: readonly (LinearBound | CountBound)[] = []): boolean {
    // Where that cannot be told nothing says that they collide; what is advised on it is verified afterwards.
    return this.ask(kept, instead, (search) => answered(() => search.feasible()) ?? true);
  }

  /** @param instead bounds asked beside the demands kept */
  private ask<T>(
    kept: readonly number[],
    instead: readonly (LinearBound | CountBound)[],
    question: (search: OuterApproximation) => T,
  ): T {
    const { given } = this.asked;
    const bounds = [...this.demands.bounds(new Set(kept)), ...instead, ...given];
    const search = new OuterApproximation({
      ...this.asked,
      highs: this.highs,
      bounds: bounds.flatMap((b) => ('counts' in b ? [] : [b])),
      counts: bounds.flatMap((b) => ('counts' in b ? [b] : [])),
      aims: [],
      onHand: new Float64Array(this.asked.lower.length),
    });
    try {
      return question(search);
    } finally {
      search.dispose();
    }
  }

  private others(k: number): number[] {
    return this.demands.all.filter((j) => j !== k);
  }

  /**
   * The tightest content that the others allow. As in {@link Elastic.reach} the quotient of each best mix is the next
   * bound; where the rule is asked when a food is left too, or has a spread, the bound is halved in on instead.
   */
  private loosenLinear(k: number, bound: LinearBound): Loosening | undefined {
    const others = this.others(k);
    const whenLeft = this.demands.whenLeft.flatMap((w) =>
      w.of === k && !('counts' in w.bound) ? [w.bound] : [],
    );
    const reached =
      whenLeft.length > 0 || bound.halfSpace(bound.bound).cone
        ? this.halveIn(bound, (to) =>
            this.possible(
              others,
              [bound, ...whenLeft].map((b) => ({ ...b, bound: to })),
            ),
          )
        : this.ask(others, [], (search) => dinkelbach(search, bound));
    if (reached === undefined) return undefined;
    const to = outwards(reached, bound.side, 4);
    if (!allowed(bound, to)) return undefined;
    return loosening(bound, to);
  }

  /** The tightest bound that can be kept, to the digits that are written. */
  private halveIn({ bound, side }: LinearBound, keeps: (to: number) => boolean): number | undefined {
    let short = bound;
    let enough = side === 'min' ? 0 : 2 * Math.max(1, bound);
    while (side === 'max' && !keeps(enough) && enough < WIDEST * Math.max(1, bound)) {
      short = enough;
      enough *= 4;
    }
    if (!keeps(enough)) return undefined;
    while (Math.abs(enough - short) > FINEST * Math.max(Math.abs(enough), 1e-6)) {
      const middle = (enough + short) / 2;
      if (keeps(middle)) enough = middle;
      else short = middle;
    }
    return enough;
  }

  /** A number of foods by whole foods, a least share or weight by hundredths of it: the nearest that can be kept. */
  private loosenCount(k: number, count: CountBound): Loosening | undefined {
    const others = this.others(k);
    const whole = count.counts !== 'used';
    const steps = whole ? (count.side === 'min' ? count.bound : count.columns.length - count.bound) : STEPS;
    const at = (step: number) => {
      if (!whole) return Number((count.bound * (1 - step / STEPS)).toPrecision(3));
      return count.side === 'min' ? count.bound - step : count.bound + step;
    };
    const keeps = (step: number) => {
      const bound = at(step);
      const atLeast = whole ? count.atLeast : (count.atLeast * bound) / count.bound;
      return this.possible(others, [{ ...count, bound, atLeast }]);
    };
    if (steps < 1 || !keeps(steps)) return undefined;
    let [short, enough] = [0, steps];
    while (enough - short > 1) {
      const middle = Math.floor((short + enough) / 2);
      if (keeps(middle)) enough = middle;
      else short = middle;
    }
    const to = at(enough);
    return {
      kind: 'loosen',
      pointer: count.pointer,
      from: count.bound,
      to,
      sentence: countSentence(count, to),
    };
  }
}

/** The tightest content or quotient over all mixes of a search. */
function dinkelbach(search: OuterApproximation, bound: LinearBound): number | undefined {
  let best = bound.bound;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = search.least({ shares: bound.halfSpace(best).g.map((v) => -v) });
    const next = found ? bound.value(found.x) : Number.NaN;
    if (!Number.isFinite(next)) return undefined;
    const still = Math.abs(next - best) <= 1e-9 * Math.max(1, Math.abs(best));
    best = next;
    if (still) break;
  }
  return best;
}

function countSentence({ counts, bound, subject, unit }: CountBound, to: number): string {
  const t = words().advice.count;
  if (counts === 'some') return t.some(subject, to, bound);
  if (counts === 'few') return t.few(subject, to, bound);
  return t.used(subject, to, bound, unit);
}
