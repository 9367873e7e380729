/**
 * The problem with every bound made elastic: each may be missed at a price. One HiGHS model answers, warm, whether
 * any chosen set of demands can be kept together, which bounds are missed, by how little one bound must give way, and
 * what a further food would change. Only the sum of 100, the columns' own bounds and what is given stay rigid.
 */

import type { FoodAmounts } from '../amounts/food-amounts.ts';
import { type HalfSpace, type LinearBound, shortfall, tangent } from '../solve/bounds.ts';
import { type ConeRow, solveConeProgram } from '../solve/cone-program.ts';
import { answered, type Highs, NoAnswer } from '../solve/highs.ts';
import type { RuleSet } from '../solve/integer-question.ts';
import { COARSE_TOLERANCE, CONE_TOLERANCE, SMALLEST_FACTOR, SOLVER_TOLERANCE } from '../solve/tolerances.ts';
import { elementAt, entries, sparse } from '../solve/vectors.ts';
import { Demands } from './demands.ts';

/** A bound counts as kept when it is missed by no more than this (scaled): twice what a cone may be missed by. */
export const KEPT = 2e-8;
const MOST_CUTS = 300;
/** Tangent planes in all, where the interior-point method comes to no answer: after them nothing more is told by planes. */
const MOST_PLANES = 3000;
/** Rounds of {@link Elastic.reach}; a quotient takes four or five. */
const MOST_ROUNDS = 60;
/** A bound that moves by no more than this, relatively, has been reached; with cones, which are kept less finely. */
const REACHED = 1e-10;
const REACHED_IN_CONES = 1e-8;
/** The gap, relatively, at which an interior-point method that gets no further has come near enough. */
const NEAR = 1e-5;
/** A miss of no more than this, scaled, is what an interior-point method leaves of none. */
const NO_MISS = 1e-7;

/** How a model is run: as finely as can be, and where hardly any mix is left, which defeats that, more coarsely. */
const ATTEMPTS = [
  { tolerance: SOLVER_TOLERANCE, presolve: 'off' },
  { tolerance: SOLVER_TOLERANCE, presolve: 'off' },
  { tolerance: COARSE_TOLERANCE, presolve: 'off' },
  { tolerance: COARSE_TOLERANCE, presolve: 'on' },
] as const;

type Model = ReturnType<Highs['createModel']>;

interface ElasticAnswer {
  readonly x: Float64Array;
  /** How far each bound is missed, in its scaled row; the wish that a food may be left counts at the bound it rests on. */
  readonly missed: Float64Array;
  /** Sum of what the bounds are missed by, as the solver has it: also where a further food takes part. */
  readonly total: number;
  /** Price of each model row (the sum first), for pricing further foods. */
  readonly prices: Float64Array;
}

export interface Trial {
  /** Percent of the mix. */
  readonly share?: number | undefined;
  readonly prices?: Float64Array;
  readonly worth: number;
}

/** A row of the model. `of` is the bound whose slack it shares; undefined where it is rigid. */
interface Base {
  readonly bound: LinearBound;
  readonly of: number | undefined;
  space: HalfSpace;
}

export class Elastic {
  readonly demands: Demands<LinearBound>;
  /** Bounds asked by themselves: the demands but for the wish. */
  readonly bounds: readonly LinearBound[];
  private readonly highs: Highs;
  private readonly rules: Omit<RuleSet, 'counts'>;
  private model: Model;
  private readonly n: number;
  /** The model's rows after the sum: of `bounds`, of what is asked when a food is left, of what is given. */
  private readonly base: readonly Base[];
  /** The base row of each tangent plane, which are the model's last rows. */
  private readonly planes: number[] = [];
  private wished = true;
  /** How the model is tuned: tolerance and presolve. */
  private tuned = '';
  /** The column of a further food while it is tried. */
  private trial: number | undefined;
  /** Tangent planes laid since the beginning, those of models that were given up too. */
  private laid = 0;
  readonly hasCones: boolean;

  constructor(highs: Highs, rules: Omit<RuleSet, 'counts'>) {
    this.highs = highs;
    this.rules = rules;
    this.n = rules.lower.length;
    this.demands = new Demands(rules.bounds);
    this.bounds = this.demands.own;
    const base = (bound: LinearBound, of?: number): Base => ({
      bound,
      of,
      space: bound.halfSpace(bound.bound),
    });
    this.base = [
      ...this.bounds.map((bound, k) => base(bound, k)),
      ...this.demands.whenLeft.map(({ bound, of }) => base(bound, of)),
      ...rules.given.map((bound) => base(bound)),
    ];
    this.hasCones = this.base.some(({ space }) => space.cone !== undefined);
    this.model = this.create();
  }

  /** Everything that is asked. */
  get all(): Set<number> {
    return new Set(this.demands.all);
  }

  /** What one unit of a bound's scaled row is in its bound's own unit. */
  scaleOf(k: number): number {
    return elementAt(this.base, k).space.scale;
  }

  dispose(): void {
    this.model.dispose();
  }

  /**
   * Least total miss with the demands in `required` kept, the rest priced by `price` (1 each unless given).
   * @param free a bound not required that may also be kept with room to spare, which counts as a miss below 0
   * @returns undefined when the required demands alone cannot be kept
   */
  solve(
    required: ReadonlySet<number>,
    price: (k: number) => number = () => 1,
    free?: number,
  ): ElasticAnswer | undefined {
    if (this.hasCones && this.trial === undefined) {
      const inside = this.solveInside(required, price, free);
      if (inside !== 'open') return inside;
    }
    try {
      return this.solveOnce(required, price, free);
    } catch (error) {
      // Planes that are all but the same can leave the solver without a way on: it gets a model without them.
      if (!(error instanceof NoAnswer) || this.trial !== undefined) throw error;
      this.renew();
      return this.solveOnce(required, price, free);
    }
  }

  /** {@link solve} by the interior-point method, for which cones need no planes; "open" where it comes to no answer. */
  private solveInside(
    required: ReadonlySet<number>,
    price: (k: number) => number,
    free: number | undefined,
  ): ElasticAnswer | undefined | 'open' {
    const { n } = this;
    const m = this.bounds.length;
    const { wish } = this.demands;
    const wished = wish !== undefined && required.has(wish);
    // A bound that may be missed for nothing asks nothing.
    const idle = (k: number) => !required.has(k) && price(k) === 0 && k !== free;
    const asked = this.base.flatMap(({ space, of, bound }, row) =>
      (of !== undefined && idle(of)) || (bound.restsOn !== undefined && !wished) ? [] : [{ space, of, row }],
    );
    const most = new Float64Array(m);
    const least = new Float64Array(m);
    for (const { space, of, row } of asked) {
      if (of === undefined || required.has(of)) continue;
      const [low, high] = this.missesOf(space);
      most[of] = Math.max(elementAt(most, of), 1 + high / this.slackOf(row));
      if (of === free) least[of] = Math.min(elementAt(least, of), low / this.slackOf(row) - 1);
    }
    const wide = (space: HalfSpace, of: number | undefined, row: number) => {
      const g = new Float64Array(n + m);
      g.set(space.g);
      if (of !== undefined) g[n + of] = this.slackOf(row);
      return { g, h: space.h };
    };
    const straight = asked.filter(({ space, of }) => !space.cone || of === undefined);
    const curved = asked.filter(({ space, of }) => space.cone && of !== undefined);
    const answer = solveConeProgram({
      cost: Float64Array.from({ length: n + m }, (_, j) => (j < n || idle(j - n) ? 0 : price(j - n))),
      square: 0,
      shares: n,
      near: NEAR,
      lower: Float64Array.from([...this.rules.lower, ...least]),
      upper: Float64Array.from([...this.rules.upper, ...most]),
      rows: straight.map(({ space, of, row }) => wide(space, of, row)),
      cones: curved.flatMap(({ space, of, row }): ConeRow[] => {
        if (!space.cone) return [];
        const q = new Float64Array(n + m);
        q.set(space.cone.q);
        return [{ ...wide(space, of, row), cone: { q, q0: space.cone.q0 } }];
      }),
    });
    if (answer.status === 'open') return 'open';
    if (answer.status === 'infeasible') return undefined;
    const x = answer.x.slice(0, n);
    const prices = new Float64Array(1 + this.base.length + this.planes.length);
    prices[0] = answer.sum;
    for (const [k, { row }] of straight.entries()) prices[row + 1] = elementAt(answer.rows, k);
    for (const [k, { row }] of curved.entries()) prices[row + 1] = elementAt(answer.cones, k);
    this.wish(wished);
    return {
      x,
      missed: this.missedAt(x).map((miss) => (miss <= NO_MISS ? 0 : miss)),
      total: answer.x.slice(n).reduce((a, b) => a + b, 0),
      prices,
    };
  }

  /** Between which ends a half-space can be missed, scaled, by any shares within their bounds. */
  private missesOf({ g, h, cone }: HalfSpace): readonly [least: number, most: number] {
    const { lower, upper } = this.rules;
    let low = h;
    let high = h;
    let spread = (cone?.q0 ?? 0) ** 2;
    for (const [i, v] of g.entries()) {
      const ends = [-v * elementAt(lower, i), -v * Math.min(100, elementAt(upper, i))];
      low += Math.min(...ends);
      high += Math.max(...ends);
      spread += ((cone?.q[i] ?? 0) * Math.min(100, elementAt(upper, i))) ** 2;
    }
    return [low, high + Math.sqrt(spread)];
  }

  private solveOnce(
    required: ReadonlySet<number>,
    price: (k: number) => number,
    free?: number,
  ): ElasticAnswer | undefined {
    const m = this.bounds.length;
    const none = Number.POSITIVE_INFINITY;
    if (m > 0) {
      const at = { kind: 'range' as const, from: this.n, to: this.n + m - 1 };
      this.model.changeColsCost(
        at,
        Float64Array.from({ length: m }, (_, k) => price(k)),
      );
      this.model.changeColsBounds(
        at,
        Float64Array.from({ length: m }, (_, k) => (k === free ? -none : 0)),
        Float64Array.from({ length: m }, (_, k) => (required.has(k) ? 0 : none)),
      );
    }
    this.wish(this.demands.wish !== undefined && required.has(this.demands.wish));
    for (let round = 0; ; round++) {
      if (!this.run()) return undefined;
      const solution = this.model.getSolution();
      const x = solution.colValue.slice(0, this.n);
      const slack = solution.colValue.slice(this.n, this.n + m);
      let cut = false;
      for (const [row, { space, of }] of this.base.entries()) {
        if (!space.cone || of === undefined || (!required.has(of) && price(of) === 0)) continue;
        if (shortfall(space, x) - elementAt(slack, of) <= CONE_TOLERANCE) continue;
        const plane = tangent(space, x);
        if (!plane) continue;
        cut = true;
        this.addPlane(plane.g, plane.h, row);
      }
      if (this.laid > MOST_PLANES) throw new NoAnswer();
      if (cut && round < MOST_CUTS) continue;
      const total = slack.reduce((a, b) => a + b, 0);
      return { x, missed: this.missedAt(x), total, prices: solution.rowDual.slice() };
    }
  }

  /** Whether a set of demands can be kept together; where the solver cannot tell, nothing says that they collide. */
  possible(required: ReadonlySet<number>): boolean {
    return answered(() => this.solve(required, () => 0) !== undefined) ?? true;
  }

  /**
   * The tightest that a bound can be with everything else kept, in its own unit: a content or a quotient at its best.
   * For each bound the mix is found that keeps it with the most room; its quotient is the next bound, until none is
   * better (Dinkelbach 1967, On nonlinear fractional programming, Management Science 13:492-498; with several
   * quotients, where foods may be left: Crouzeix, Ferland and Schaible 1985, J. Optim. Theory Appl. 47:35-49).
   * @returns undefined where nothing suffices
   */
  reach(k: number): number | undefined {
    const { bound: written, side } = elementAt(this.bounds, k);
    const others = this.all;
    others.delete(k);
    let reached = written;
    try {
      for (let round = 0; round < MOST_ROUNDS; round++) {
        const answer = this.solve(others, (j) => Number(j === k), k);
        if (!answer) return undefined;
        const met = this.tightest(k, answer.x);
        if (Number.isNaN(met)) return undefined;
        // Where nothing of the denominator is fed the quotient says nothing yet: a wider bound is tried.
        const next = Number.isFinite(met) ? met : side === 'max' ? 4 * Math.max(1, reached) : 0;
        if (
          Math.abs(next - reached) <=
          (this.hasCones ? REACHED_IN_CONES : REACHED) * Math.max(1, Math.abs(reached))
        )
          return next;
        reached = next;
        this.rebound(k, reached);
      }
      return Number.isFinite(reached) ? reached : undefined;
    } finally {
      this.rebound(k, written);
    }
  }

  /** The tightest bound that given shares keep, also when any one food is left where that is asked. */
  tightest(k: number, x: ArrayLike<number>): number {
    // Of nothing eaten a quotient says nothing.
    const values = this.rowsOf(k)
      .map((row) => elementAt(this.base, row).bound.value(x))
      .filter((value) => !Number.isNaN(value));
    if (values.length === 0) return Number.NaN;
    return elementAt(this.bounds, k).side === 'min' ? Math.min(...values) : Math.max(...values);
  }

  /** Puts another number in a bound's place, where it is asked when a food is left too: the rows change with it. */
  rebound(k: number, bound: number): void {
    for (const row of this.rowsOf(k)) {
      const base = elementAt(this.base, row);
      base.space = base.bound.halfSpace(bound);
      for (const [i, v] of base.space.g.entries()) this.model.changeCoefficient(row + 1, i, v);
      this.model.changeCoefficient(row + 1, this.n + k, this.slackOf(row));
      const asked = row < this.bounds.length || this.wished;
      this.model.changeRowBounds(
        row + 1,
        asked ? base.space.h : Number.NEGATIVE_INFINITY,
        Number.POSITIVE_INFINITY,
      );
    }
    // Planes that touched the old cone say nothing about the new one.
    for (const [plane, row] of this.planes.entries()) {
      if (row !== k) continue;
      const at = this.base.length + 1 + plane;
      this.model.changeRowBounds(at, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
    }
  }

  /**
   * What one percent of a further food adds: to the sum, to each bound (scaled as its row is), to each bound as it is
   * asked when a food is left (not scaled: the further food counts the same whichever is left), to what is given.
   */
  contentOf(candidate: FoodAmounts): Float64Array {
    const m = this.bounds.length;
    const content = new Float64Array(this.base.length - this.demands.whenLeft.length + m + 1);
    content[0] = 1;
    for (const [row, { bound, space, of }] of this.base.entries()) {
      const adds = bound.coefficient(bound.bound, candidate);
      content[this.place(row, of)] = bound.restsOn === undefined ? adds / space.scale : adds;
    }
    return content;
  }

  /** Prices of the model's rows brought together as {@link contentOf} counts them. */
  byContent(prices: ArrayLike<number>): Float64Array {
    const told = new Float64Array(this.base.length - this.demands.whenLeft.length + this.bounds.length + 1);
    told[0] = elementAt(prices, 0);
    for (const [at, row] of [...this.base.keys(), ...this.planes].entries()) {
      const { bound, space, of } = elementAt(this.base, row);
      const price = elementAt(prices, at + 1);
      const place = this.place(row, of);
      told[place] = elementAt(told, place) + (bound.restsOn === undefined ? price : price / space.scale);
    }
    return told;
  }

  /**
   * Least share of a further food with every demand kept, undefined when it does not help; and prices as
   * {@link byContent} has them, with their worth, that bound the share of any other food (see `price-foods.ts`).
   */
  leastShare(content: ArrayLike<number>): Trial {
    const { model, n } = this;
    const added = n + this.bounds.length;
    const rows = [...this.base.keys(), ...this.planes].map((row) => {
      const { bound, space, of } = elementAt(this.base, row);
      const adds = elementAt(content, this.place(row, of));
      return bound.restsOn === undefined ? adds : adds / space.scale;
    });
    model.addCol(1, 0, Number.POSITIVE_INFINITY, entries(Float64Array.from([1, ...rows])));
    this.trial = added;
    const share = () => {
      const { colValue } = model.getSolution();
      const own = elementAt(colValue, added);
      const mix = this.rules.mix?.reduce((sum, i) => sum + elementAt(colValue, i), own);
      return mix === undefined ? own : (100 * own) / mix;
    };
    try {
      const least = this.solve(this.all, () => 0);
      if (least) {
        const prices = this.byContent(least.prices);
        const worth = elementAt(model.getSolution().colValue, added);
        return { share: this.leastOfMix(share, added), prices, worth };
      }
      // It does not help; what would still be missing with it tells how little others can do.
      model.changeColsCost({ kind: 'range', from: added, to: added }, [0]);
      const { wish } = this.demands;
      const short = this.solve(new Set(wish === undefined ? [] : [wish]));
      return short ? { prices: this.byContent(short.prices), worth: short.total } : { worth: 0 };
    } catch (error) {
      // A food of which nothing can be told is not advised.
      if (error instanceof NoAnswer) return { worth: 0 };
      throw error;
    } finally {
      this.trial = undefined;
      this.costOfMix(0);
      model.deleteCols({ kind: 'range', from: added, to: added });
    }
  }

  /** Where the mix is a part of all columns, the least share is a quotient: again by Dinkelbach's rounds. */
  private leastOfMix(share: () => number, added: number): number {
    let least = share();
    if (!this.rules.mix) return least;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      this.costOfMix(-least / 100);
      this.model.changeColsCost({ kind: 'range', from: added, to: added }, [1 - least / 100]);
      if (!this.solve(this.all, () => 0)) break;
      const next = share();
      if (!(next < least - REACHED * Math.max(1, least))) break;
      least = next;
    }
    return least;
  }

  private costOfMix(cost: number): void {
    for (const i of this.rules.mix ?? [])
      this.model.changeColsCost({ kind: 'range', from: i, to: i }, [cost]);
  }

  /** Where a base row's content stands in {@link contentOf}. */
  private place(row: number, of: number | undefined): number {
    const m = this.bounds.length;
    if (of === undefined) return row + 1 - this.demands.whenLeft.length + m;
    return row < m ? row + 1 : m + of + 1;
  }

  /** Base rows that move with a bound. */
  private rowsOf(k: number): number[] {
    const m = this.bounds.length;
    return [k, ...this.demands.whenLeft.flatMap(({ of }, row) => (of === k ? [m + row] : []))];
  }

  /** A bound's slack is counted in its own row; in rows that share it, as much is as much in the bound's unit. */
  private slackOf(row: number): number {
    const { of, space } = elementAt(this.base, row);
    return of === undefined ? 0 : this.scaleOf(of) / space.scale;
  }

  private missedAt(x: Float64Array): Float64Array {
    const missed = new Float64Array(this.bounds.length);
    for (const [row, { space, of, bound }] of this.base.entries()) {
      if (of === undefined || (bound.restsOn !== undefined && !this.wished)) continue;
      missed[of] = Math.max(elementAt(missed, of), shortfall(space, x) / this.slackOf(row));
    }
    return missed;
  }

  /** Asks, or asks no longer, that every food may be left. */
  private wish(on: boolean): void {
    if (on === this.wished || this.demands.wish === undefined) return;
    this.wished = on;
    const from = this.bounds.length;
    const asked = this.base.slice(from, from + this.demands.whenLeft.length);
    this.model.changeRowsBounds(
      { kind: 'range', from: from + 1, to: from + asked.length },
      Float64Array.from(asked, ({ space }) => (on ? space.h : Number.NEGATIVE_INFINITY)),
      new Float64Array(asked.length).fill(Number.POSITIVE_INFINITY),
    );
  }

  private addPlane(g: Float64Array, h: number, row: number): void {
    const { of = 0 } = elementAt(this.base, row);
    const indices = [...g.keys(), this.n + of];
    this.model.addRow(h, Number.POSITIVE_INFINITY, { indices, values: [...g, 1] });
    this.planes.push(row);
    this.laid++;
  }

  /** Whether the model as it stands has a solution. @throws NoAnswer where the solver cannot tell */
  private run(): boolean {
    const { optimal, infeasible } = this.highs.constants.modelStatus;
    try {
      for (const attempt of ATTEMPTS.keys()) {
        // A basis left from another question can trip the solver; it then starts afresh.
        if (attempt > 0) this.model.clearSolver();
        const { tolerance, presolve } = elementAt(ATTEMPTS, attempt);
        this.tune(tolerance, presolve);
        const status = this.statusOfRun();
        if (status === optimal) return true;
        if (status === infeasible && attempt > 0) return false;
      }
    } finally {
      this.tune(SOLVER_TOLERANCE, 'off');
    }
    throw new NoAnswer();
  }

  /** Status of a run; undefined where the solver broke off. */
  private statusOfRun(): number | undefined {
    try {
      return this.model.run().modelStatus;
    } catch {
      return undefined;
    }
  }

  private tune(tolerance: number, presolve: 'on' | 'off'): void {
    if (this.tuned === `${tolerance} ${presolve}`) return;
    this.tuned = `${tolerance} ${presolve}`;
    this.model.options.set({
      presolve,
      primal_feasibility_tolerance: tolerance,
      dual_feasibility_tolerance: tolerance,
    });
  }

  private renew(): void {
    this.model.dispose();
    this.planes.length = 0;
    this.wished = true;
    this.tuned = '';
    this.model = this.create();
  }

  private create(): Model {
    const { n, base } = this;
    const m = this.bounds.length;
    const sum = Float64Array.from({ length: n + m }, (_, j) => (j < n ? 1 : 0));
    const elastic = base.map(({ space, of }, row) => {
      const wide = new Float64Array(n + m);
      wide.set(space.g);
      if (of !== undefined) wide[n + of] = this.slackOf(row);
      return wide;
    });
    const model = this.highs.createModel({
      numCols: n + m,
      numRows: base.length + 1,
      colCost: new Float64Array(n + m),
      colLower: Float64Array.from({ length: n + m }, (_, j) => this.rules.lower[j] ?? 0),
      colUpper: Float64Array.from(
        { length: n + m },
        (_, j) => this.rules.upper[j] ?? Number.POSITIVE_INFINITY,
      ),
      rowLower: [100, ...base.map(({ space }) => space.h)],
      rowUpper: [100, ...base.map(() => Number.POSITIVE_INFINITY)],
      matrix: sparse([sum, ...elastic], n + m),
    });
    model.options.set({
      output_flag: false,
      presolve: 'off',
      solver: 'simplex',
      small_matrix_value: SMALLEST_FACTOR,
      primal_feasibility_tolerance: SOLVER_TOLERANCE,
      dual_feasibility_tolerance: SOLVER_TOLERANCE,
    });
    return model;
  }
}
