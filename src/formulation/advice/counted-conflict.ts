/**
 * Why no mix can keep rules that count foods, and what would mend it. The linear rules alone can be kept here, so the
 * elastic program says nothing: each question is asked of {@link OuterApproximation} with the bounds in question alone.
 */
import type { Reference } from '../../foods/reference.ts';
import { hasCaution } from '../amounts/apply-cautions.ts';
import { deletionFilter } from '../explain/conflict.ts';
import { outwards } from '../explain/outwards.ts';
import { ruleAt } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Addition, Loosening } from '../problem/result.ts';
import type { Bound, LinearBound } from '../solve/bounds.ts';
import type { CountBound } from '../solve/counting.ts';
import type { Highs } from '../solve/highs.ts';
import { OuterApproximation } from '../solve/outer-approximation.ts';
import { elementAt } from '../solve/vectors.ts';
import { dryFoods } from './dry-foods.ts';
import { addition, allowed, change, dearest, loosening } from './remedies.ts';

/** Further foods that are tried, and that are named. */
const MOST_TRIED = 40;
const MOST_NAMED = 5;
/** How finely a least share or weight is loosened, parts of what it was. */
const STEPS = 100;
const MOST_ROUNDS = 20;

export class CountedConflict {
  private readonly highs: Highs;
  private readonly n: number;
  private readonly linear: readonly LinearBound[];
  private readonly counts: readonly CountBound[];
  /** Positions of the colliding bounds: those below `linear.length` are linear, the rest counts. */
  private readonly members: readonly number[];

  constructor(highs: Highs, n: number, linear: readonly LinearBound[], counts: readonly CountBound[]) {
    this.highs = highs;
    this.n = n;
    this.linear = linear;
    this.counts = counts;
    const ranks = [...linear.map((b) => (b.pointer.startsWith('/foods/') ? 0 : 1)), ...counts.map(() => 2)];
    const order = [...ranks.entries()].sort(([, a], [, b]) => a - b).map(([k]) => k);
    this.members = deletionFilter(order, (kept) => this.possible(kept)).sort((a, b) => a - b);
  }

  /** A smallest set, in the sense that none of it can be spared, of bounds that collide. */
  get bounds(): readonly Bound[] {
    return this.members.map((k) => this.bound(k));
  }

  /** Every bound of the conflict whose loosening alone suffices, least relative change first. */
  loosenings(): Loosening[] {
    return this.members
      .filter((k) => !this.bound(k).because)
      .flatMap((k) => {
        const linear = this.linear[k];
        return (linear ? this.loosenLinear(k, linear) : this.loosenCount(k, this.count(k))) ?? [];
      })
      .sort((a, b) => change(a) - change(b));
  }

  /** Usual dry foods, one of which is enough; only where the mix has too few foods. */
  additions(problem: Problem, reference: Reference, mends: (a: Addition) => boolean): Addition[] {
    const some = this.members
      .map((k) => this.counts[k - this.linear.length])
      .find((c) => c?.counts === 'some');
    if (!some) return [];
    const rule = ruleAt(problem, some.pointer);
    const group = rule && 'count' in rule ? rule.count.group : undefined;
    const taken = new Set(problem.foods.map((f) => f.ref));
    const ids = new Set([...problem.foods, ...problem.beside].map((f) => f.id));
    return dryFoods(reference, problem.variation)
      .filter(
        ({ food }) => food.plain && !taken.has(food.ref) && (group === undefined || food.group === group),
      )
      .filter(({ food }) => !hasCaution(food.ref, problem, reference))
      .slice(0, MOST_TRIED)
      .map(({ food }) => addition(food, some.atLeast, ids, dearest(problem)))
      .filter(mends)
      .slice(0, MOST_NAMED);
  }

  private bound(k: number): Bound {
    return this.linear[k] ?? this.count(k);
  }

  private count(k: number): CountBound {
    return elementAt(this.counts, k - this.linear.length);
  }

  private possible(kept: readonly number[], instead: readonly CountBound[] = []): boolean {
    return this.ask(kept, instead, (search) => search.feasible());
  }

  private ask<T>(
    kept: readonly number[],
    instead: readonly CountBound[],
    question: (search: OuterApproximation) => T,
  ): T {
    const { n } = this;
    const search = new OuterApproximation({
      highs: this.highs,
      lower: new Float64Array(n),
      upper: new Float64Array(n).fill(100),
      bounds: kept.flatMap((k) => this.linear[k] ?? []),
      counts: [...kept.flatMap((k) => this.counts[k - this.linear.length] ?? []), ...instead],
      aims: [],
      onHand: new Float64Array(n),
    });
    try {
      return question(search);
    } finally {
      search.dispose();
    }
  }

  private others(k: number): number[] {
    return Array.from({ length: this.linear.length + this.counts.length }, (_, j) => j).filter(
      (j) => j !== k,
    );
  }

  /** The best content that the others allow; a ratio's row changes with its bound, so it is asked until convergence. */
  private loosenLinear(k: number, bound: LinearBound): Loosening | undefined {
    const reached = this.ask(this.others(k), [], (search) => {
      let best = bound.bound;
      for (let round = 0; round < MOST_ROUNDS; round++) {
        const found = search.cheapest(bound.halfSpace(best).g.map((v) => -v));
        const next = found ? bound.value(found.x) : Number.NaN;
        if (!Number.isFinite(next)) return undefined;
        const still = Math.abs(next - best) <= 1e-9 * Math.max(1, Math.abs(best));
        best = next;
        if (still) break;
      }
      return best;
    });
    if (reached === undefined) return undefined;
    const to = outwards(reached, bound.side, 4);
    if (!allowed(bound, to)) return undefined;
    return loosening(bound, to);
  }

  /** A number of foods by whole foods, a least share or weight by hundredths of it: the nearest that can be kept. */
  private loosenCount(k: number, count: CountBound): Loosening | undefined {
    const others = this.others(k);
    const whole = count.counts !== 'used';
    const steps = whole ? (count.side === 'min' ? count.bound : this.n - count.bound) : STEPS;
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

function countSentence({ counts, bound, subject, unit }: CountBound, to: number): string {
  if (counts === 'some') return `Ask for a ${subject} of ${to} instead of ${bound}.`;
  if (counts === 'few') return `Allow a ${subject} of ${to} instead of ${bound}.`;
  return `Let ${subject.replace(/,$/, '')} be ${to} ${unit} or more instead of ${bound} ${unit}.`;
}
