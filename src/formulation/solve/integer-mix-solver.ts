/** Mixes under counting rules and aims: foods are in or out, and {@link OuterApproximation} finds which. */

import { retold, type Tell } from '../problem/progress.ts';
import {
  BUDGET_SLACK,
  exact,
  type Found,
  type MixQuestion,
  type MixSolver,
  type Pins,
  pinned,
  type Span,
  tieBroken,
  without,
} from './mix-solver.ts';
import { type Chosen, OuterApproximation } from './outer-approximation.ts';
import { NO_SHARE } from './tolerances.ts';
import { dot, elementAt, squaredDistance } from './vectors.ts';

export class IntegerMixSolver implements MixSolver {
  private readonly question: MixQuestion;
  private readonly spansKept = new Map<string, readonly Span[]>();

  constructor(question: MixQuestion) {
    this.question = question;
  }

  dispose(): void {}

  feasible(): boolean {
    return this.ask(new Map(), [], (search) => search.feasible());
  }

  least(i: number): number | undefined {
    const shares = this.question.lower.map((_, j) => Number(j === i));
    return this.ask(new Map(), [], (search) => search.cheapest(shares)?.x[i]);
  }

  best(tell?: Tell<Found>): Found | undefined {
    const { objective, wants, aims } = this.question;
    const none: Pins = new Map();
    if (objective === 'cheapest')
      return this.ask(none, aims, (search) => this.cheapest(search), this.telling(tell));
    return this.nearestWith(
      objective === 'varied' ? new Float64Array(wants.length) : wants,
      none,
      aims,
      tell,
    );
  }

  nearest(target: Float64Array, pins: Pins): Found | undefined {
    return this.nearestWith(target, this.reachable(pins), []);
  }

  spans(pins: Pins, tell?: Tell<never>): readonly Span[] {
    const key = JSON.stringify([...pins]);
    const known = this.spansKept.get(key);
    if (known) return known;
    const of = this.question.lower.length;
    const free = this.ask(pins, [], (search) =>
      Array.from(this.question.lower, (_, done) => {
        tell?.({ doing: 'spans', done, of });
        return pins.has(done) ? undefined : search.span(done);
      }),
    );
    const spans = free.map((span, i) => span ?? this.ask(without(pins, i), [], (search) => search.span(i)));
    this.spansKept.clear();
    this.spansKept.set(key, spans);
    return spans;
  }

  /** A share held where a food that is used may not stand goes to the nearer end of the gap. */
  private reachable(pins: Pins): Pins {
    const least = new Float64Array(this.question.lower.length);
    for (const { counts, columns, atLeast } of this.question.counts) {
      if (counts === 'used') for (const i of columns) least[i] = Math.max(elementAt(least, i), atLeast);
    }
    return new Map(
      [...pins].map(([i, share]) => {
        const from = elementAt(least, i);
        if (share <= NO_SHARE || share >= from) return [i, share];
        return [i, share < from / 2 || from > elementAt(this.question.upper, i) ? 0 : from];
      }),
    );
  }

  private nearestWith(
    target: Float64Array,
    pins: Pins,
    aims: MixQuestion['aims'],
    tell?: Tell<Found>,
  ): Found | undefined {
    const nearest = (search: OuterApproximation) => {
      const chosen = search.nearest(target);
      if (!chosen) return undefined;
      const found = this.found(chosen);
      return { ...found, objective: squaredDistance(found.x, target) };
    };
    return this.ask(pins, aims, nearest, this.telling(tell));
  }

  /** Least cost, and among mixes of that cost the one nearest to what is wanted. */
  private cheapest(search: OuterApproximation): Found | undefined {
    const { prices, wants } = this.question;
    const first = search.cheapest(prices);
    if (!first) return undefined;
    search.hold({ shares: prices }, first.value + BUDGET_SLACK * Math.abs(first.value));
    const priced = (chosen: Chosen): Found => {
      const found = this.found(chosen);
      return { ...found, objective: dot(prices, found.x), gap: first.gap };
    };
    try {
      return priced(tieBroken(first, search.nearest(wants, false)));
    } catch {
      // So thin a slice of mixes can defeat the solver; the cheapest mix it came from still stands.
      return priced(first);
    }
  }

  private telling(tell: Tell<Found> | undefined): Tell<Chosen> | undefined {
    return retold(tell, (chosen) => ({ ...this.found(chosen), objective: chosen.value }));
  }

  private found({ x, gap, lower, upper }: Chosen): Found {
    return { x: exact(x, lower, upper), objective: Number.NaN, gap };
  }

  private ask<T>(
    pins: Pins,
    aims: MixQuestion['aims'],
    question: (search: OuterApproximation) => T,
    tell?: Tell<Chosen>,
  ): T {
    const lower = pinned(this.question.lower, pins);
    const upper = pinned(this.question.upper, pins);
    const search = new OuterApproximation({ ...this.question, lower, upper, aims }, tell);
    try {
      return question(search);
    } finally {
      search.dispose();
    }
  }
}
