/**
 * Whole steps of the scale nearest to given shares, by branch and bound over {@link StepsRelaxation}: every choice that
 * is not looked at is proven to hold nothing nearer. The search goes down to whole steps first, then on from wherever
 * the bound is lowest. It ends when nothing nearer can be left, or after so many boxes; then it says how near, at
 * best, anything could be.
 */
import { Heap } from './heap.ts';
import { largestRemainder } from './largest-remainder.ts';
import { nearestBySwaps } from './step-swaps.ts';
import { StepsBox } from './steps-box.ts';
import type { StepRow } from './steps-proof.ts';
import { type StepBasis, StepsRelaxation } from './steps-relaxation.ts';

/** One counting rule: at least `number` of the columns with `atLeast` steps, or at most `number` with any. */
export interface StepCount {
  readonly counts: 'some' | 'few';
  readonly columns: readonly number[];
  readonly atLeast: number;
  readonly number: number;
}

export interface StepsQuestion {
  /** Steps of each food by its share, of any fineness. */
  readonly target: Float64Array;
  /** Least and most steps of each food, whole. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Steps in all. */
  readonly total: number;
  /** Steps that a food has at the least where it has any; 0 or 1 where any will do. */
  readonly least: Float64Array;
  readonly rows: readonly StepRow[];
  readonly counts: readonly StepCount[];
  /** Rows that every answer keeps and that steps of any fineness miss by more than this: of what is curved. */
  readonly planesAt: (steps: Float64Array, by: number) => StepRow[];
  /** Whether whole steps keep everything: rows, what is curved, what is counted, and what no row tells. */
  readonly keeps: (steps: Float64Array) => boolean;
  readonly mostBoxes: BoxLimits;
}

/** Boxes that are looked at: in all while nothing is found, and in all once something is. */
export interface BoxLimits {
  readonly toFind: number;
  readonly toProve: number;
}

export interface StepsFound {
  /** Undefined where none were found. */
  readonly steps?: Float64Array;
  /** Sum of squared distances from the target, in steps; and what it is at the least for any steps that keep the rules. */
  readonly squares: number;
  readonly least: number;
  /** No steps are nearer; without steps, there are none. */
  readonly proven: boolean;
}

interface Box {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** No steps in the box are nearer. */
  readonly bound: number;
  /** What they probably come to; the box with the least is opened first. */
  readonly cost: number;
  readonly basis?: StepBasis;
}

/** Two sums of squares that differ by less are equally near, relatively. */
const SAME_SQUARES = 1e-9;
/**
 * Steps are also sought by swaps, which find some where going down to them finds none for long: after how many boxes at
 * first, after how many more again, and how many swaps. So while nothing is found, once something is, and at the end.
 */
const SWAPS = {
  toFind: { first: 60, every: 150, most: 250 },
  toBetter: { first: 240, every: 300, most: 250 },
  atLast: { times: 4, most: 400 },
};
/** Planes are laid this often in one box; what they still miss is settled by further boxes. */
const MOST_PLANES = 12;
/** While foods are broken no finer planes are laid than this, in steps, nor for less of a higher bound. */
const COARSE = 1e-3;
/** In steps: what a food may fall short of some steps and still have them. */
const WHOLE = 1e-7;

export function nearestSteps(question: StepsQuestion): StepsFound {
  return new Search(question).run();
}

class Search {
  private readonly question: StepsQuestion;
  private readonly n: number;
  private readonly relaxation: StepsRelaxation;
  private readonly open = new Heap<Box>();
  private best: Float64Array | undefined;
  private squares = Number.POSITIVE_INFINITY;
  private boxes = 0;
  /** Sums of squares from which on nothing is looked for. */
  private cutoff = Number.POSITIVE_INFINITY;

  constructor(question: StepsQuestion) {
    this.question = question;
    this.n = question.target.length;
    this.relaxation = new StepsRelaxation(
      new StepsBox(question.target, question.least),
      question.total,
      question.rows,
    );
  }

  run(): StepsFound {
    this.open.push({ low: this.question.low.slice(), high: this.question.high.slice(), bound: 0, cost: 0 });
    let least = Number.POSITIVE_INFINITY;
    for (let box = this.next(); box; box = this.next()) {
      const left = this.descend(box);
      if (left === undefined) continue;
      least = left;
      let before = this.best;
      for (let k = 0; before && k < SWAPS.atLast.times; k++) {
        this.trySwaps(before, SWAPS.atLast.most);
        if (this.best === before) break;
        before = this.best;
      }
      break;
    }
    // Where the limit was met boxes are left: nothing is nearer than the lowest of their bounds.
    for (let box = this.next(); box; box = this.next()) least = Math.min(least, box.bound);
    const proven = least >= this.cutoff;
    return {
      ...(this.best ? { steps: this.best } : {}),
      squares: this.squares,
      least: proven ? this.squares : least,
      proven,
    };
  }

  /** The likeliest box that may hold something nearer than the best. */
  private next(): Box | undefined {
    for (;;) {
      const box = this.open.pop();
      if (!box || box.bound < this.cutoff) return box;
    }
  }

  /** Goes down from a box to whole steps or to where nothing is left. @returns a bound where the limit was met */
  private descend(box: Box): number | undefined {
    const { relaxation, question } = this;
    const low = box.low.slice();
    const high = box.high.slice();
    let { bound } = box;
    if (!this.narrow(low, high)) return undefined;
    relaxation.load(low, high, box.basis);
    for (;;) {
      const most = this.best ? question.mostBoxes.toProve : question.mostBoxes.toFind;
      if (this.boxes >= most) return bound;
      this.boxes++;
      this.swapHere();
      let status = relaxation.solve(this.cutoff);
      for (let k = 0; k < MOST_PLANES && status === 'optimal'; k++) {
        const planes = question.planesAt(relaxation.x, relaxation.whole ? 0 : COARSE);
        if (planes.length === 0) break;
        relaxation.rows.push(...planes);
        const before = relaxation.bound;
        status = relaxation.solve(this.cutoff);
        if (relaxation.bound < before + COARSE && !relaxation.whole) break;
      }
      if (status === 'none' || status === 'cut') return undefined;
      bound = Math.max(bound, relaxation.bound);
      if (bound >= this.cutoff) return undefined;
      const split = this.split(low, high, status === 'optimal');
      if (bound >= this.cutoff || !split) return undefined;
      const basis = relaxation.basis();
      const [first, ...others] = split;
      for (const { column, from, to, gain } of others) {
        const box = { low: low.slice(), high: high.slice(), bound, cost: bound + gain, basis };
        box.low[column] = from;
        box.high[column] = to;
        this.open.push(box);
      }
      low[first.column] = first.from;
      high[first.column] = first.to;
      this.trim(low, high);
      if (!this.narrow(low, high)) return undefined;
      relaxation.narrow(low, high);
    }
  }

  /** Foods whose steps lie so far off that nothing nearer than the best is left are brought nearer. */
  private trim(low: Float64Array, high: Float64Array): void {
    if (!this.best) return;
    for (let j = 0; j < this.n; j++) {
      const [from, to] = this.relaxation.within(j, this.cutoff);
      low[j] = Math.max(low[j]!, from);
      high[j] = Math.min(high[j]!, to);
    }
  }

  /** Parts of a box, the likeliest first; undefined where its nearest steps are known. */
  private split(low: Float64Array, high: Float64Array, exact: boolean): [Part, ...Part[]] | undefined {
    const { relaxation } = this;
    // Which foods are in decides more than how much of them.
    const counted = this.byCount(relaxation.x, low, high);
    if (counted) return counted;
    const broken = relaxation.broken();
    if (broken.length > 0) {
      let best = broken[0]!;
      let most = -1;
      for (const b of broken) {
        const worth = (Math.min(b.down, 1e6) + 1e-6) * (Math.min(b.up, 1e6) + 1e-6);
        if (worth > most) {
          most = worth;
          best = b;
        }
      }
      const { column } = best;
      const down = { column, from: low[column]!, to: best.below, gain: best.down };
      const up = { column, from: best.above, to: high[column]!, gain: best.up };
      return best.down <= best.up ? [down, up] : [up, down];
    }
    const steps = relaxation.x.map((v, j) => Math.min(high[j]!, Math.max(low[j]!, Math.round(v))));
    if (steps.reduce((sum, k) => sum + k, 0) === this.question.total && this.question.keeps(steps)) {
      this.take(steps);
      if (exact) return undefined;
    }
    return this.aside(steps, low, high);
  }

  /** Where it is time for it, swaps steps from those between which the foods stand now. */
  private swapHere(): void {
    const { first, every, most } = this.best ? SWAPS.toBetter : SWAPS.toFind;
    if (this.boxes % every !== first) return;
    const { x } = this.relaxation;
    this.trySwaps(Float64Array.from(largestRemainder(Array.from(x), this.question.total)), most);
  }

  /** Swaps keep the sum, so it must be right from the start. */
  private trySwaps(start: Float64Array, most: number): void {
    if (start.reduce((sum, k) => sum + k, 0) !== this.question.total) return;
    const rows = this.relaxation.rows.slice(1);
    const found = nearestBySwaps({ ...this.question, rows }, start, most, this.squares);
    if (found) this.take(found);
  }

  private take(steps: Float64Array): void {
    let squares = 0;
    for (let j = 0; j < this.n; j++) squares += (steps[j]! - this.question.target[j]!) ** 2;
    if (squares >= this.squares) return;
    this.best = steps;
    this.squares = squares;
    this.cutoff = squares - SAME_SQUARES * Math.max(1, squares);
  }

  /** Steps, broken ones too, that miss a counting rule: one of its foods is in or out. */
  private byCount(steps: Float64Array, low: Float64Array, high: Float64Array): [Part, Part] | undefined {
    for (const { counts, columns, atLeast, number } of this.question.counts) {
      const from = counts === 'few' ? 1 : atLeast;
      // Between two steps a food that is used at all counts as used, one that falls short as short.
      const reaches = (j: number) => steps[j]! >= (counts === 'few' ? WHOLE : from - WHOLE);
      const reach = columns.filter(reaches);
      if (counts === 'few' ? reach.length <= number : reach.length >= number) continue;
      const undecided = columns.filter((j) => low[j]! < from && high[j]! >= from && from > 0);
      // Of too many the largest, of too few the one that comes nearest: it is likely in.
      const open = undecided.filter((j) => reaches(j) === (counts === 'few'));
      const [first] = open.sort((i, j) => steps[j]! - steps[i]!);
      if (first === undefined) continue;
      return [
        { column: first, from, to: high[first]!, gain: 0 },
        { column: first, from: low[first]!, to: from - 1, gain: 0 },
      ];
    }
    return undefined;
  }

  /** Steps that miss something no row tells: they alone are set aside. */
  private aside(steps: Float64Array, low: Float64Array, high: Float64Array): [Part, ...Part[]] | undefined {
    let column = -1;
    let widest = 0;
    for (let j = 0; j < this.n; j++) {
      if (high[j]! - low[j]! <= widest) continue;
      widest = high[j]! - low[j]!;
      column = j;
    }
    if (column < 0) return undefined;
    const k = steps[column]!;
    const parts: Part[] = [{ column, from: k, to: k, gain: 0 }];
    if (k > low[column]!) parts.push({ column, from: low[column]!, to: k - 1, gain: 0 });
    if (k < high[column]!) parts.push({ column, from: k + 1, to: high[column]!, gain: 0 });
    const [first, ...others] = parts;
    return first && [first, ...others];
  }

  /** Narrows a box by its sum, by what a used food has at the least, and by the counts. @returns whether any is left */
  private narrow(low: Float64Array, high: Float64Array): boolean {
    const { total, least, counts } = this.question;
    for (let changed = true; changed; ) {
      changed = false;
      let sumLow = 0;
      let sumHigh = 0;
      for (let j = 0; j < this.n; j++) {
        if (low[j]! > 0 && low[j]! < least[j]!) {
          low[j] = least[j]!;
          changed = true;
        }
        if (high[j]! > 0 && high[j]! < least[j]!) {
          high[j] = 0;
          changed = true;
        }
        if (low[j]! > high[j]!) return false;
        sumLow += low[j]!;
        sumHigh += high[j]!;
      }
      if (sumLow > total || sumHigh < total) return false;
      for (let j = 0; j < this.n; j++) {
        const most = total - (sumLow - low[j]!);
        const fewest = total - (sumHigh - high[j]!);
        if (high[j]! > most) {
          sumHigh += most - high[j]!;
          high[j] = most;
          changed = true;
        }
        if (low[j]! < fewest) {
          sumLow += fewest - low[j]!;
          low[j] = fewest;
          changed = true;
        }
      }
      for (const { counts: kind, columns, atLeast, number } of counts) {
        if (kind === 'few') {
          const used = columns.filter((j) => low[j]! > 0);
          if (used.length > number) return false;
          if (used.length < number) continue;
          for (const j of columns) {
            if (low[j]! > 0 || high[j]! === 0) continue;
            high[j] = 0;
            changed = true;
          }
        } else {
          const able = columns.filter((j) => high[j]! >= atLeast);
          if (able.length < number) return false;
          if (able.length > number) continue;
          for (const j of able) {
            if (low[j]! >= atLeast) continue;
            low[j] = atLeast;
            changed = true;
          }
        }
      }
    }
    return true;
  }
}

/** A part of a box: one food between these steps. `gain`: by how much its bound is likely higher. */
interface Part {
  readonly column: number;
  readonly from: number;
  readonly to: number;
  readonly gain: number;
}
