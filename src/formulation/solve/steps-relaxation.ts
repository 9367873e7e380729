/**
 * The nearest whole steps, with their wholeness let go: the distance of each food from its share counts in straight
 * pieces between the steps it may have, so that at whole steps it is the true square and between them more than that.
 * Without rules its least is already whole; with rules no more foods are broken than rules stand at their bound. That
 * makes its least a far better bound than that of the smooth square.
 *
 * A dual simplex method over bounded columns, which passes a column from piece to piece as long as that pays (its
 * long-step rule). What it claims is proven from the rows themselves: see steps-proof.ts.
 */

import type { StepsBox } from './steps-box.ts';
import { noneKeeps, pricedBound, type StepRow, type WeightedRow } from './steps-proof.ts';

/** What a search keeps of a relaxation that it wants to go on from. */
export interface StepBasis {
  readonly at: Float64Array;
  readonly tight: readonly number[];
  readonly basics: readonly Basic[];
}

/** A food that stands between two steps: its piece, and what one step of it costs there. */
interface Basic {
  readonly column: number;
  readonly low: number;
  readonly high: number;
  readonly cost: number;
}

/** "none": no steps in the box keep the rows. "cut": none nearer than the cutoff. "unclear": a bound, and no more. */
type Status = 'optimal' | 'none' | 'cut' | 'unclear';

/** In steps: how far a row or a piece may be missed. */
const MISSED = 1e-9;
/** This near to the end of its piece a food stands there. */
const WHOLE = 1e-7;
const SMALLEST_PIVOT = 1e-8;
/** How many missed rows come in at a time. */
const ROWS_AT_ONCE = 4;

export class StepsRelaxation {
  /** Rows that every answer keeps; the list only grows. The first is the sum, an equality. */
  readonly rows: StepRow[];
  /** Steps of each food in the last answer, broken ones too. */
  readonly x: Float64Array;
  /** What each step of a food saves at the rows' prices: of the last bound. */
  readonly saving: Float64Array;
  /** Least sum of squares in the box, or less. */
  bound = Number.NEGATIVE_INFINITY;
  private readonly n: number;
  private readonly box: StepsBox;

  // The dictionary: each basic variable as a constant and a sum over the columns. Foods are 0 to n - 1, what row r has
  // to spare is n + r.
  private table: Float64Array[] = [];
  private readonly basic: number[] = [];
  private readonly constant: number[] = [];
  private readonly value: number[] = [];
  private readonly pieceLow: number[] = [];
  private readonly pieceHigh: number[] = [];
  private readonly cost: number[] = [];
  private readonly column: Int32Array;
  /** Where each food stands that is no basic variable. */
  private readonly at: Float64Array;
  /** What one more of each column costs through the basic variables. */
  private readonly price: Float64Array;
  private readonly trial: Float64Array;
  /** Of a walk: the columns that bear on what is missing, and when each passes on. */
  private readonly able: Int32Array;
  private readonly passes: Float64Array;

  /** @param box is the relaxation's own from now on @param total steps in all */
  constructor(box: StepsBox, total: number, rows: readonly StepRow[]) {
    this.n = box.target.length;
    this.box = box;
    this.rows = [{ a: new Float64Array(this.n).fill(1), h: total }, ...rows];
    this.x = new Float64Array(this.n);
    this.saving = new Float64Array(this.n);
    this.column = new Int32Array(this.n);
    this.at = new Float64Array(this.n);
    this.price = new Float64Array(this.n);
    this.trial = new Float64Array(this.n);
    this.able = new Int32Array(this.n);
    this.passes = new Float64Array(this.n);
  }

  /** Begins anew in a box, from a basis where there is one. */
  load(low: Float64Array, high: Float64Array, basis?: StepBasis): void {
    const { n } = this;
    this.table = [];
    for (const list of [this.basic, this.constant, this.value, this.pieceLow, this.pieceHigh, this.cost])
      list.length = 0;
    for (let j = 0; j < n; j++) this.column[j] = j;
    this.box.low.set(low);
    this.box.high.set(high);
    if (basis) {
      this.at.set(basis.at);
      for (const r of basis.tight) this.bringIn(r);
      for (const food of basis.basics) this.bringBack(food);
    } else {
      for (let j = 0; j < n; j++) this.at[j] = this.box.nearest(j, this.box.target[j]!);
    }
    this.narrow(low, high);
  }

  /** Narrows the box; what stands outside goes to its edge. */
  narrow(low: Float64Array, high: Float64Array): void {
    this.box.low.set(low);
    this.box.high.set(high);
    for (let j = 0; j < this.n; j++) this.at[j] = Math.min(high[j]!, Math.max(low[j]!, this.at[j]!));
    for (let i = 0; i < this.basic.length; i++) {
      const j = this.basic[i]!;
      if (j >= this.n) continue;
      this.pieceLow[i] = Math.min(high[j]!, Math.max(low[j]!, this.pieceLow[i]!));
      this.pieceHigh[i] = Math.min(high[j]!, Math.max(low[j]!, this.pieceHigh[i]!));
    }
  }

  basis(): StepBasis {
    const tight: number[] = [];
    for (const id of this.column) if (id >= this.n) tight.push(id - this.n);
    const basics: Basic[] = [];
    for (let i = 0; i < this.basic.length; i++) {
      const column = this.basic[i]!;
      if (column < this.n)
        basics.push({ column, low: this.pieceLow[i]!, high: this.pieceHigh[i]!, cost: this.cost[i]! });
    }
    return { at: this.at.slice(), tight, basics };
  }

  /** @param cutoff sum of squares from which on nothing is looked for */
  solve(cutoff: number): Status {
    this.bound = Number.NEGATIVE_INFINITY;
    this.dropIdleRows();
    if (!this.isIn(0)) this.bringIn(0);
    const most = 60 + 6 * (this.n + this.basic.length);
    for (let round = 0; round < most; round++) {
      this.refresh();
      const i = this.mostMissed();
      if (i < 0) {
        if (this.bringInMissed()) continue;
        return this.lagrange() >= cutoff ? 'cut' : 'optimal';
      }
      if (round % 8 === 7 && this.lagrange() >= cutoff) return 'cut';
      const below = this.value[i]! < this.pieceLow[i]!;
      const edge = below ? this.pieceLow[i]! : this.pieceHigh[i]!;
      if (this.walk(i, edge, below ? 1 : -1, true) < Number.POSITIVE_INFINITY) continue;
      if (this.lagrange() >= cutoff) return 'cut';
      return this.farkas(i, below ? 1 : -1) ? 'none' : 'unclear';
    }
    this.refresh();
    return this.lagrange() >= cutoff ? 'cut' : 'unclear';
  }

  /** Whether no food of the last answer stands between two steps. */
  get whole(): boolean {
    return this.basic.every((j, i) => j >= this.n || !this.isBroken(i));
  }

  private isBroken(i: number): boolean {
    return this.value[i]! - this.pieceLow[i]! >= WHOLE && this.pieceHigh[i]! - this.value[i]! >= WHOLE;
  }

  /** Foods that stand between two steps, and what going down or up to the next costs at the least. */
  broken(): { column: number; down: number; up: number; below: number; above: number }[] {
    const list = [];
    for (let i = 0; i < this.basic.length; i++) {
      const column = this.basic[i]!;
      if (column >= this.n) continue;
      if (!this.isBroken(i)) continue;
      const below = this.pieceLow[i]!;
      const above = this.pieceHigh[i]!;
      const down = this.walk(i, below, -1, false);
      const up = this.walk(i, above, 1, false);
      list.push({ column, down, up, below, above });
    }
    return list;
  }

  /** How far a food may lie from the best of the last bound and stay under the cutoff: its steps, from and to. */
  within(j: number, cutoff: number): readonly [number, number] {
    const middle = this.box.target[j]! + this.saving[j]! / 2;
    const off = this.box.nearest(j, middle) - middle;
    const reach = Math.sqrt(Math.max(0, cutoff - this.bound) + off * off) + 1e-9;
    return [Math.ceil(middle - reach), Math.floor(middle + reach)];
  }

  /**
   * Brings basic variable i to an edge of its piece by the dual simplex method: other columns pass from piece to piece
   * while that costs less than what it brings. @param sign 1: i goes up to the edge, -1: down
   * @param moves false: only asks what it costs @returns the cost; infinite where nothing brings i there
   */
  private walk(i: number, edge: number, sign: 1 | -1, moves: boolean): number {
    const { n, trial, column, box, able, passes } = this;
    const row = this.table[i]!;
    const own = this.basic[i]!;
    let missing = sign * (edge - this.value[i]!);
    let reached = 0;
    let gain = 0;
    let many = 0;
    for (let q = 0; q < n; q++) {
      const id = column[q]!;
      trial[q] = id < n ? this.at[id]! : 0;
      const w = sign * row[q]!;
      if (w < SMALLEST_PIVOT && w > -SMALLEST_PIVOT) continue;
      if (id >= n && (id === n || w < 0)) continue;
      able[many++] = q;
      passes[q] = this.passesAt(q, w);
    }
    for (;;) {
      let best = Number.POSITIVE_INFINITY;
      let who = -1;
      let size = 0;
      for (let k = 0; k < many; k++) {
        const q = able[k]!;
        const t = Math.max(passes[q]!, reached);
        if (t === Number.POSITIVE_INFINITY || t > best + 1e-12) continue;
        const w = Math.abs(row[q]!);
        if (t < best - 1e-12 || w > size) {
          best = t;
          who = q;
          size = w;
        }
      }
      let self = false;
      // The piece below or above is open too, unless the food is asked to come to this very edge.
      if (moves && own < n) {
        const t =
          sign > 0 ? this.cost[i]! - box.slopeDown(own, edge) : box.slopeUp(own, edge) - this.cost[i]!;
        if (t < best) {
          best = Math.max(t, reached);
          self = true;
        }
      }
      if (best === Number.POSITIVE_INFINITY) return best;
      gain += (best - reached) * missing;
      reached = best;
      if (self) {
        const on = sign > 0 ? box.before(own, edge) : box.after(own, edge);
        missing -= Math.abs(on - edge);
        if (missing <= 0) {
          if (moves) {
            this.stand(trial);
            this.pieceLow[i] = Math.min(on, edge);
            this.pieceHigh[i] = Math.max(on, edge);
            this.cost[i] = box.slope(own, on, edge);
          }
          return gain;
        }
        edge = on;
        continue;
      }
      const id = column[who]!;
      if (id < n) {
        const k = trial[who]!;
        const on = sign * row[who]! > 0 ? box.after(id, k) : box.before(id, k);
        missing -= size * Math.abs(on - k);
        if (missing > 0) {
          trial[who] = on;
          passes[who] = this.passesAt(who, sign * row[who]!);
          continue;
        }
      }
      if (moves) {
        this.stand(trial);
        this.pivot(i, who, sign, edge);
      }
      return gain;
    }
  }

  /** At which price of what is missing a column passes on from where the trial has it. */
  private passesAt(q: number, w: number): number {
    const { box } = this;
    const id = this.column[q]!;
    const price = this.price[q]!;
    if (id >= this.n) return price / w;
    const k = this.trial[q]!;
    return w > 0 ? (box.slopeUp(id, k) + price) / w : (box.slopeDown(id, k) + price) / w;
  }

  private stand(trial: Float64Array): void {
    for (let q = 0; q < this.n; q++) {
      const id = this.column[q]!;
      if (id < this.n) this.at[id] = trial[q]!;
    }
  }

  /** Basic variable i leaves to an edge, a column enters on the piece that it was about to pass. */
  private pivot(i: number, q: number, sign: 1 | -1, edge: number): void {
    const { n, box } = this;
    const enters = this.column[q]!;
    const leaves = this.basic[i]!;
    const up = sign * this.table[i]![q]! > 0;
    this.swap(i, q);
    if (leaves < n) this.at[leaves] = edge;
    if (enters < n) {
      const k = this.at[enters]!;
      const on = up ? box.after(enters, k) : box.before(enters, k);
      this.pieceLow[i] = Math.min(k, on);
      this.pieceHigh[i] = Math.max(k, on);
      this.cost[i] = box.slope(enters, k, on);
    } else {
      this.pieceLow[i] = 0;
      this.pieceHigh[i] = Number.POSITIVE_INFINITY;
      this.cost[i] = 0;
    }
  }

  /** Rewrites the dictionary with column q basic in place of row i. */
  private swap(i: number, q: number): void {
    const { n, table } = this;
    const row = table[i]!;
    const inverse = 1 / row[q]!;
    for (let p = 0; p < n; p++) row[p] = -row[p]! * inverse;
    row[q] = inverse;
    this.constant[i] = -this.constant[i]! * inverse;
    for (let k = 0; k < table.length; k++) {
      if (k === i) continue;
      const other = table[k]!;
      const factor = other[q]!;
      if (factor === 0) continue;
      other[q] = 0;
      for (let p = 0; p < n; p++) other[p]! += factor * row[p]!;
      this.constant[k]! += factor * this.constant[i]!;
    }
    const enters = this.column[q]!;
    this.column[q] = this.basic[i]!;
    this.basic[i] = enters;
  }

  /** Takes row r into the dictionary, what it has to spare as basic variable. */
  private bringIn(r: number): void {
    const { n } = this;
    const { a, h } = this.rows[r]!;
    const row = new Float64Array(n);
    let constant = -h;
    for (let q = 0; q < n; q++) if (this.column[q]! < n) row[q] = a[this.column[q]!]!;
    for (let k = 0; k < this.table.length; k++) {
      const j = this.basic[k]!;
      const factor = j < n ? a[j]! : 0;
      if (factor === 0) continue;
      const other = this.table[k]!;
      for (let q = 0; q < n; q++) row[q]! += factor * other[q]!;
      constant += factor * this.constant[k]!;
    }
    this.table.push(row);
    this.basic.push(n + r);
    this.constant.push(constant);
    this.value.push(0);
    this.pieceLow.push(0);
    this.pieceHigh.push(r === 0 ? 0 : Number.POSITIVE_INFINITY);
    this.cost.push(0);
  }

  /** Makes a food basic again, as it was, in place of whichever row serves best. */
  private bringBack({ column, low, high, cost }: Basic): void {
    const q = this.column.indexOf(column);
    let best = -1;
    for (let i = 0; i < this.table.length; i++) {
      if (this.basic[i]! < this.n) continue;
      if (best < 0 || Math.abs(this.table[i]![q]!) > Math.abs(this.table[best]![q]!)) best = i;
    }
    if (best < 0 || Math.abs(this.table[best]![q]!) < SMALLEST_PIVOT) return;
    this.swap(best, q);
    this.pieceLow[best] = low;
    this.pieceHigh[best] = high;
    this.cost[best] = cost;
  }

  private isIn(r: number): boolean {
    return this.basic.includes(this.n + r) || this.column.includes(this.n + r);
  }

  /** Rows with something to spare need not be carried along. */
  private dropIdleRows(): void {
    for (let i = this.basic.length - 1; i >= 0; i--) {
      if (this.basic[i]! <= this.n) continue;
      this.table.splice(i, 1);
      for (const list of [this.basic, this.constant, this.value, this.pieceLow, this.pieceHigh, this.cost])
        list.splice(i, 1);
    }
  }

  private bringInMissed(): boolean {
    const { n, x } = this;
    const missed: { r: number; by: number }[] = [];
    for (let r = 1; r < this.rows.length; r++) {
      const { a, h } = this.rows[r]!;
      let by = h - MISSED;
      for (let j = 0; j < n; j++) by -= a[j]! * x[j]!;
      if (by > 0 && !this.isIn(r)) missed.push({ r, by });
    }
    missed.sort((a, b) => b.by - a.by);
    for (const { r } of missed.slice(0, ROWS_AT_ONCE)) this.bringIn(r);
    return missed.length > 0;
  }

  /** Values of the basic variables, and prices of the columns. */
  private refresh(): void {
    const { n, column, at, price, x } = this;
    price.fill(0);
    for (let j = 0; j < n; j++) x[j] = at[j]!;
    for (let i = 0; i < this.table.length; i++) {
      const row = this.table[i]!;
      const cost = this.cost[i]!;
      let v = this.constant[i]!;
      for (let q = 0; q < n; q++) {
        const id = column[q]!;
        if (id < n) v += row[q]! * at[id]!;
        price[q]! += cost * row[q]!;
      }
      this.value[i] = v;
      if (this.basic[i]! < n) x[this.basic[i]!] = v;
    }
  }

  /** The basic variable that is farthest outside its piece; -1 where all are inside. */
  private mostMissed(): number {
    let worst = MISSED;
    let which = -1;
    for (let i = 0; i < this.value.length; i++) {
      const by = Math.max(this.pieceLow[i]! - this.value[i]!, this.value[i]! - this.pieceHigh[i]!);
      if (by > worst) {
        worst = by;
        which = i;
      }
    }
    return which;
  }

  /** The bound that the rows' prices prove. */
  private lagrange(): number {
    this.bound = pricedBound(
      this.box,
      this.weights((q) => this.price[q]!),
      this.saving,
    );
    return this.bound;
  }

  /** Whether row i, which nothing brings to its edge, proves that no steps in the box keep the rows. */
  private farkas(i: number, sign: 1 | -1): boolean {
    const row = this.table[i]!;
    const weights = this.weights((q) => -sign * row[q]!);
    const own = this.rows[this.basic[i]! - this.n];
    if (own) weights.push({ row: own, weight: sign });
    return noneKeeps(this.box, weights);
  }

  /** The rows that stand at their bound, each weighted by its column; a weight that may not be negative is 0 at least. */
  private weights(of: (q: number) => number): WeightedRow[] {
    const list: WeightedRow[] = [];
    for (let q = 0; q < this.n; q++) {
      const r = this.column[q]! - this.n;
      const row = r < 0 ? undefined : this.rows[r];
      if (row) list.push({ row, weight: r === 0 ? of(q) : Math.max(0, of(q)) });
    }
    return list;
  }
}
