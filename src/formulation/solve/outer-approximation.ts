/**
 * The best mix where foods are in or out: counting rules and aims.
 *
 * A mixed-integer program (the master) chooses which foods are used, counted and bought; what is curved (the distance
 * from a target, a confidence) it knows only by tangent planes, so its answer is a lower bound. For the foods that it
 * chose a {@link Polytope} finds the best mix to full precision, which is an upper bound and lays new tangents. The two
 * meet after a few rounds (outer approximation: Duran and Grossmann 1986, Math. Programming 36:307-339; the tangents of
 * a food's square hold in their perspective form: Frangioni and Gentile 2006, Math. Programming 106:225-236). Of many
 * foods a choice to begin with is bettered by exchanging one for another, which costs the master far more.
 */
import type { Doing, Progress, Tell } from '../problem/progress.ts';
import { allowance } from './aims.ts';
import type { CountBound } from './counting.ts';
import { answered, NoAnswer } from './highs.ts';
import type { IntegerQuestion } from './integer-question.ts';
import type { SearchWatch } from './iteration-limit.ts';
import type { Cost } from './master-layout.ts';
import { MasterProblem, type Picked } from './master-problem.ts';
import { type Curve, Polytope } from './polytope.ts';
import { AT_BOUND, NO_SHARE, SPAN_TOLERANCE } from './tolerances.ts';
import { dot, elementAt, squaredDistance } from './vectors.ts';

/** Exchanges of one food for another that are tried to better a choice: a few passes through those of 60 foods. */
const MOST_EXCHANGES = 3000;
/** With fewer foods the master itself is as quick (measured). */
const MANY_FOODS = 45;
/** Fewer where each takes long: so many factors of rows are gone through in all. */
const MOST_WORK = 6e6;
/** How near, relatively, upper and lower bound must come before the best mix is proven. */
const GAP = 1e-7;
/** A number or a least share is kept when missed by no more than this part of it. */
const COUNTED = 1e-9;
const MOST_ROUNDS = 60;
/** Choices of foods tried where it is only asked whether there is a mix: at the edge of a confidence there are hundreds. */
const MOST_TRIES = 5;

export interface Chosen {
  readonly x: Float64Array;
  readonly value: number;
  /** How far, at most, the best mix may lie below `value`; 0 where it is proven best. */
  readonly gap: number;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

/** A bound is told anew where it has risen by this part of what is left to gain. */
const LITTLE_RISE = 0.01;

/** What is told of on the way: mixes that keep everything, and what the master comes to. */
interface Follow {
  met(x: Float64Array): void;
  readonly watch: SearchWatch;
}

export class OuterApproximation {
  private readonly question: IntegerQuestion;
  private readonly n: number;
  private readonly polytope: Polytope;
  /** Made when a question first needs it: many are settled by the polytope alone. */
  private lazyMaster: MasterProblem | undefined;
  /** The aims' bests, once worked out; undefined where no mix keeps the rules. */
  private met: boolean | undefined;
  /** Whether an aim about what is used, bought or in the cupboard is held, which only the master knows in full. */
  private countsHeld = false;
  private seen: { low: Float64Array; high: Float64Array } | undefined;
  private readonly tell: Tell<Chosen> | undefined;

  /** @param tell told of ever better mixes and bounds while the nearest or the cheapest is sought */
  constructor(question: IntegerQuestion, tell?: Tell<Chosen>) {
    this.question = question;
    this.tell = tell;
    this.n = question.lower.length;
    this.polytope = new Polytope(question.highs, question.lower, question.upper, question.bounds);
  }

  dispose(): void {
    this.polytope.dispose();
    this.lazyMaster?.dispose();
  }

  private get master(): MasterProblem {
    this.lazyMaster ??= new MasterProblem(this.question, this.polytope);
    return this.lazyMaster;
  }

  /** Whether any mix keeps every rule. @throws NoAnswer where that is not settled in {@link MOST_TRIES} choices of foods */
  feasible(): boolean {
    return this.least({}, MOST_TRIES) !== undefined;
  }

  /**
   * The mix nearest to a target among those that meet the aims, first things first.
   * @param tell whether the way there is told
   */
  nearest(target: Float64Array, tell = true): Chosen | undefined {
    const worth = (x: Float64Array) => squaredDistance(x, target);
    if (!this.meetAims(worth)) return undefined;
    return this.refine(
      () => this.master.near(target),
      (polytope) => polytope.nearest(target),
      worth,
      tell ? this.follow('best', worth) : undefined,
      this.n >= MANY_FOODS,
    );
  }

  /** The mix of least linear cost among those that meet the aims. */
  cheapest(prices: Float64Array): Chosen | undefined {
    const worth = (x: Float64Array) => dot(prices, x);
    if (!this.meetAims(worth)) return undefined;
    return this.refine(
      () => ({ shares: prices }),
      (polytope) => polytope.cheapest(prices, true),
      worth,
      this.follow('best', worth),
    );
  }

  /** Holds a cost at no more than `most` from now on. */
  hold(cost: Cost, most: number): void {
    const { shares, fromCupboard } = cost;
    if (shares) {
      let scale = 0;
      for (const v of shares) scale = Math.max(scale, Math.abs(v));
      if (scale > 0) this.polytope.require({ g: shares.map((v) => -v / scale), h: -most / scale });
      return;
    }
    this.countsHeld = true;
    this.master.hold(cost, most);
    if (fromCupboard) this.polytope.requireCurve(cupboardCurve(this.question.onHand, -most));
  }

  /** The choice of foods that was picked, as a mix to full precision. */
  settle(picked: Picked): Chosen | undefined {
    const bounds = this.master.boundsOf(picked);
    const answer = this.withChoice(picked, (polytope) => polytope.nearest(picked.x));
    return answer.status === 'optimal' ? { x: answer.x, value: picked.value, gap: 0, ...bounds } : undefined;
  }

  /** Asks the mixes that a choice of foods leaves. */
  private withChoice<T>(picked: Picked, ask: (polytope: Polytope) => T): T {
    const { question, master, polytope } = this;
    if (question.mix) {
      // There a least share is no bound of a column.
      const chosen = new Polytope(question.highs, question.lower, master.mostOf(picked), question.bounds);
      for (const row of master.leastRows(picked)) chosen.require(row);
      try {
        return ask(chosen);
      } finally {
        chosen.dispose();
      }
    }
    const { lower, upper } = master.boundsOf(picked);
    polytope.setBounds(lower, upper);
    try {
      return ask(polytope);
    } finally {
      polytope.setBounds(question.lower, question.upper);
    }
  }

  /** Lowest and highest share of one food over all mixes that keep the rules, the aims aside. */
  span(i: number): readonly [number, number] {
    const end = (sign: 1 | -1) => {
      const limit = elementAt(sign === 1 ? this.question.lower : this.question.upper, i);
      const met = sign === 1 ? this.seen?.low[i] : this.seen?.high[i];
      if (met !== undefined && Math.abs(met - limit) <= SPAN_TOLERANCE) return limit;
      const shares = new Float64Array(this.n);
      shares[i] = sign;
      const found = this.refine(
        () => ({ shares }),
        (polytope) => polytope.cheapest(shares),
        (x) => sign * elementAt(x, i),
      );
      if (!found) return Number.NaN;
      this.remember(found.x);
      return elementAt(found.x, i);
    };
    return [end(1), end(-1)];
  }

  /**
   * The least of a cost over all mixes, by tangent planes alone: as good as the solver's tolerance. Planes are laid
   * where a mix is missed, and where the best mix of the same foods stands on a cone.
   * @param most choices of foods tried before it is left open; without it, the last choice of many stands
   * @throws NoAnswer where it is left open
   */
  least(cost: Cost, most?: number, follow?: Follow): Picked | undefined {
    // Where no mix is left even as if foods were not counted, no choice of them need be made.
    if (this.polytope.cheapest(new Float64Array(this.n)).status === 'infeasible') return undefined;
    for (let round = 0; ; round++) {
      const picked = this.master.solve(cost, follow?.watch);
      if (!picked) return undefined;
      if (!this.polytope.separate(picked.x) || round >= MOST_ROUNDS * 5) return picked;
      if (most !== undefined && round >= most) throw new NoAnswer();
      const aim = cost.shares ?? new Float64Array(this.n);
      const answer = this.withChoice(picked, (polytope) => {
        const found = polytope.cheapest(aim);
        if (found.status === 'infeasible') polytope.touchNearest();
        return found;
      });
      if (answer.status === 'optimal') {
        this.polytope.touch(answer.x);
        follow?.met(answer.x);
      } else this.master.forbid(picked);
    }
  }

  /** Brings each aim to its best and holds it there. */
  private meetAims(worth: (x: Float64Array) => number): boolean {
    if (this.met !== undefined) return this.met;
    const { aims } = this.question;
    for (const [done, line] of aims.entries()) {
      const picked = this.least(line, undefined, this.follow('aims', worth, { done, of: aims.length }));
      if (!picked) {
        this.met = false;
        return false;
      }
      this.hold(line, allowance(line, picked.value + line.constant) - line.constant);
    }
    this.met = true;
    return true;
  }

  private refine(
    costOf: () => Cost,
    solve: (polytope: Polytope) => ReturnType<Polytope['nearest']>,
    worth: (x: Float64Array) => number,
    follow?: Follow,
    exchanges = false,
  ): Chosen | undefined {
    const { polytope } = this;
    const relaxed = this.relaxed(solve);
    if (relaxed === 'none') return undefined;
    if (relaxed) return { x: relaxed, value: worth(relaxed), gap: 0, ...boundsAt(this.question, relaxed) };
    const { master } = this;
    const cost = costOf();
    const bettered = (found: Chosen) => {
      follow?.met(found.x);
      const better = exchanges ? this.exchanged(found, solve, worth, follow) : found;
      this.touch(better.x);
      return better;
    };
    const first = exchanges ? this.anyChoice(solve, worth) : undefined;
    let best = first && bettered(first);
    let bound = Number.NEGATIVE_INFINITY;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const picked = master.solve(cost, follow?.watch);
      if (!picked) {
        bound = Number.POSITIVE_INFINITY;
        break;
      }
      bound = Math.max(bound, picked.bound);
      if (best && (!picked.proven || meets(best.value, bound))) break;
      polytope.separate(picked.x);
      master.touch(picked.x);
      const chosen = master.boundsOf(picked);
      const answer = this.withChoice(picked, solve);
      if (answer.status === 'infeasible') {
        // The master's own tolerances let it choose foods that cannot make a mix.
        master.forbid(picked);
        continue;
      }
      const value = worth(answer.x);
      follow?.met(answer.x);
      this.touch(answer.x);
      if (!best || value < best.value) best = bettered({ x: answer.x, value, gap: 0, ...chosen });
      if (meets(best.value, bound)) break;
    }
    if (!best) return undefined;
    return { ...best, gap: meets(best.value, bound) ? 0 : best.value - bound };
  }

  /** Tells master and polytope all about a mix, and the master what other foods would come to at shares like its own. */
  private touch(x: Float64Array): void {
    const used = x.filter((share) => share > NO_SHARE);
    const middle = used.reduce((sum, share) => sum + share, 0) / used.length;
    this.master.touch(x);
    this.master.touch(x.map(() => middle));
    this.polytope.touch(x);
  }

  /** The best mix of any foods that can be chosen; undefined where none is found at once. */
  private anyChoice(
    solve: (polytope: Polytope) => ReturnType<Polytope['nearest']>,
    worth: (x: Float64Array) => number,
  ): Chosen | undefined {
    const picked = answered(() => this.master.solve({}));
    if (!picked) return undefined;
    const answer = this.withChoice(picked, solve);
    if (answer.status !== 'optimal') return undefined;
    return { x: answer.x, value: worth(answer.x), gap: 0, ...this.master.boundsOf(picked) };
  }

  /** A mix bettered by taking one food out and another in, as long as that makes it better. */
  private exchanged(
    found: Chosen,
    solve: (polytope: Polytope) => ReturnType<Polytope['nearest']>,
    worth: (x: Float64Array) => number,
    follow: Follow | undefined,
  ): Chosen {
    const { question, polytope } = this;
    // There a least share is no bound of a column, or the master alone knows what holds.
    if (question.mix || this.countsHeld || polytope.isCurved) return found;
    let best = found;
    let left = Math.min(MOST_EXCHANGES, Math.floor(MOST_WORK / (this.n * polytope.rows.length + 1)));
    const better = (): Chosen | undefined => {
      for (const [out, share] of best.x.entries()) {
        if (share <= NO_SHARE || question.lower[out]! > 0) continue;
        for (const [taken, other] of best.x.entries()) {
          const lower = best.lower.slice();
          const upper = best.upper.slice();
          lower[taken] = Math.max(question.lower[taken]!, lower[out]!);
          upper[taken] = question.upper[taken]!;
          if (other > NO_SHARE || upper[taken]! < lower[taken]! || upper[taken] === 0) continue;
          if (left-- <= 0) return undefined;
          lower[out] = 0;
          upper[out] = 0;
          polytope.setBounds(lower, upper);
          const answer = solve(polytope);
          if (answer.status !== 'optimal') continue;
          const { x } = answer;
          const value = worth(x);
          if (best.value - value <= GAP * Math.max(1, best.value)) continue;
          if (question.counts.every((c) => keeps(c, x))) return { x, value, gap: 0, lower, upper };
        }
      }
      return undefined;
    };
    try {
      for (let next = better(); next; next = better()) {
        best = next;
        follow?.met(best.x);
      }
    } finally {
      polytope.setBounds(question.lower, question.upper);
    }
    return best;
  }

  /** The best mix as if foods were not counted: where it keeps the counting rules all the same, it is the best. */
  private relaxed(
    solve: (polytope: Polytope) => ReturnType<Polytope['nearest']>,
  ): Float64Array | 'none' | undefined {
    const answer = solve(this.polytope);
    if (answer.status === 'infeasible') return 'none';
    if (this.countsHeld) return undefined;
    return this.question.counts.every((c) => keeps(c, answer.x)) ? answer.x : undefined;
  }

  /** Tells of every better mix and every higher bound; undefined where nobody listens. */
  private follow(
    doing: Doing,
    worth: (x: Float64Array) => number,
    steps: Pick<Progress<Chosen>, 'done' | 'of'> = {},
  ): Follow | undefined {
    const { tell, question } = this;
    if (!tell) return undefined;
    let best: { readonly x: Float64Array; readonly value: number } | undefined;
    // What is made least is a sum of squares, or of prices: never below 0. What an aim comes to is another number.
    let bound = 0;
    const told = () =>
      tell({
        doing,
        ...(best && {
          found: { ...best, gap: Math.max(0, best.value - bound), ...boundsAt(question, best.x) },
        }),
        ...(doing === 'best' && { ...(best && { value: best.value }), bound }),
        ...steps,
      });
    const met = (x: Float64Array) => {
      const value = worth(x);
      if (best && value >= best.value) return;
      best = { x, value };
      told();
    };
    told();
    return {
      met,
      watch: {
        bound(cost) {
          const rise = cost - bound;
          if (doing !== 'best' || rise <= LITTLE_RISE * Math.max(1, (best?.value ?? 0) - bound)) return;
          bound = best ? Math.min(cost, best.value) : cost;
          told();
        },
        better: (x) => {
          if (question.mix || !question.counts.every((c) => keeps(c, x))) return;
          if (this.polytope.holds(x)) met(x);
        },
      },
    };
  }

  private remember(x: Float64Array): void {
    this.seen ??= { low: x.slice(), high: x.slice() };
    for (let i = 0; i < this.n; i++) {
      this.seen.low[i] = Math.min(this.seen.low[i]!, x[i]!);
      this.seen.high[i] = Math.max(this.seen.high[i]!, x[i]!);
    }
  }
}

/** Whether what was found is proven best by a bound. */
function meets(value: number, bound: number): boolean {
  return value - bound <= GAP * Math.max(1, Math.abs(value));
}

/** At least so much of the mix out of the cupboard: the sum of min(x, onHand) is concave. */
function cupboardCurve(onHand: Float64Array, least: number): Curve {
  return {
    shortfall: (x) => least - onHand.reduce((sum, s, i) => sum + Math.min(s, x[i]!), 0),
    tangent: (x) => ({
      g: onHand.map((s, i) => Number(x[i]! < s)),
      h: least - onHand.reduce((sum, s, i) => sum + (x[i]! < s ? 0 : s), 0),
    }),
  };
}

/** Whether shares keep a counting bound. */
export function keeps({ side, bound, value }: CountBound, x: ArrayLike<number>): boolean {
  return side === 'min' ? value(x) >= bound * (1 - COUNTED) : value(x) <= bound;
}

/** Bounds under which given shares keep what they use: foods without a share are out. */
export function boundsAt(
  question: Pick<IntegerQuestion, 'lower' | 'upper' | 'counts'>,
  x: ArrayLike<number>,
) {
  const lower = question.lower.slice();
  const upper = question.upper.map((u, i) => (x[i]! > NO_SHARE ? u : Math.min(u, 0)));
  for (const { counts, columns, atLeast } of question.counts) {
    if (counts === 'few') continue;
    for (const c of columns) {
      if (x[c]! > NO_SHARE && x[c]! >= atLeast - AT_BOUND) lower[c] = Math.max(lower[c]!, atLeast);
    }
  }
  return { lower, upper };
}
