/** Mixes under linear rules and confidences: one {@link Polytope}, its solver kept warm. */

import type { Tell } from '../problem/progress.ts';
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
import { Polytope } from './polytope.ts';
import { dot, squaredDistance } from './vectors.ts';

export class ContinuousMixSolver implements MixSolver {
  private readonly question: MixQuestion;
  private readonly polytope: Polytope;
  private spansKept: { readonly key: string; readonly spans: readonly Span[] } | undefined;

  constructor(question: MixQuestion) {
    this.question = question;
    this.polytope = new Polytope(question.highs, question.lower, question.upper, question.bounds);
  }

  dispose(): void {
    this.polytope.dispose();
  }

  feasible(): boolean {
    this.pin(new Map());
    return this.polytope.cheapest(new Float64Array(this.question.lower.length)).status === 'optimal';
  }

  least(i: number): number | undefined {
    this.pin(new Map());
    const answer = this.polytope.cheapest(this.question.lower.map((_, j) => Number(j === i)));
    return answer.status === 'optimal' ? answer.x[i] : undefined;
  }

  best(): Found | undefined {
    const { objective, wants } = this.question;
    if (objective === 'cheapest') return this.cheapest();
    return this.nearest(objective === 'varied' ? new Float64Array(wants.length) : wants, new Map());
  }

  nearest(target: Float64Array, pins: Pins): Found | undefined {
    this.pin(pins);
    const answer = this.polytope.nearest(target);
    if (answer.status !== 'optimal') return undefined;
    const found = this.found(answer.x);
    return { ...found, objective: squaredDistance(found.x, target) };
  }

  /** Spans do not depend on where the shares stand, only on the rules and holds: a slider dragged on needs no new ones. */
  spans(pins: Pins, tell?: Tell<never>): readonly Span[] {
    const key = JSON.stringify([...pins]);
    if (this.spansKept?.key !== key) this.spansKept = { key, spans: this.freshSpans(pins, tell) };
    return this.spansKept.spans;
  }

  private freshSpans(pins: Pins, tell?: Tell<never>): Span[] {
    this.pin(pins);
    const of = this.question.lower.length;
    const spans = Array.from(this.question.lower, (_, done) => {
      tell?.({ doing: 'spans', done, of });
      return this.polytope.span(done);
    });
    for (const i of pins.keys()) {
      this.pin(without(pins, i));
      spans[i] = this.polytope.span(i);
    }
    return spans;
  }

  /** Least cost, and among mixes of that cost the one nearest to what is wanted. */
  private cheapest(): Found | undefined {
    const { prices, highs, lower, upper, bounds, wants } = this.question;
    this.pin(new Map());
    const answer = this.polytope.cheapest(prices, true);
    if (answer.status !== 'optimal') return undefined;
    const cost = dot(prices, answer.x);
    const scale = Math.max(1e-12, ...prices);
    const narrowed = new Polytope(highs, lower, upper, bounds);
    narrowed.require({
      g: prices.map((p) => -p / scale),
      h: (-cost - BUDGET_SLACK * Math.abs(cost)) / scale,
    });
    try {
      const tie = narrowed.nearest(wants);
      const nearest = tie.status === 'optimal' && this.polytope.holds(tie.x) ? tie : undefined;
      return this.priced(tieBroken<{ x: Float64Array }>(answer, nearest).x);
    } catch {
      // So thin a slice of mixes can defeat the solver; the cheapest mix it came from still stands.
      return this.priced(answer.x);
    } finally {
      narrowed.dispose();
    }
  }

  private priced(x: Float64Array): Found {
    const found = this.found(x);
    return { ...found, objective: dot(this.question.prices, found.x) };
  }

  private found(raw: Float64Array): Found {
    const { lower, upper } = this.question;
    const prices = this.polytope.prices();
    return { x: exact(raw, lower, upper), objective: Number.NaN, gap: 0, prices };
  }

  private pin(pins: Pins): void {
    this.polytope.setBounds(pinned(this.question.lower, pins), pinned(this.question.upper, pins));
  }
}
