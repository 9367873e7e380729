/**
 * Whole steps that keep everything, sought by giving one food a step and taking one from another: quick where a search
 * by halves finds nothing for long, and proof of nothing. Rows that are missed weigh ever more, so that it leaves places
 * where no swap helps (Morris 1993, The breakout method for escaping from local minima, AAAI-93, 40-45), and foods just
 * swapped rest (Glover 1989, Tabu search, ORSA J. Comput. 1:190-206).
 */
import type { StepRow } from './steps-proof.ts';

export interface SwapQuestion {
  /** Steps of each food by its share, of any fineness. */
  readonly target: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Steps that a food has at the least where it has any; 0 or 1 where any will do. */
  readonly least: Float64Array;
  /** Rows that every answer keeps, but for the sum. */
  readonly rows: readonly StepRow[];
  readonly keeps: (steps: Float64Array) => boolean;
}

/** What a step's worth of a missed row weighs at first, in squared steps; and by how much more with each swap that misses it. */
const WEIGHT = 50;
const HEAVIER = 1.2;
const LIGHTER = 0.95;
/** Swaps that a food rests. */
const REST = 4;
/** Foods that are worth most to give a step, or to take one from, are tried with each other. */
const MOST_TRIED = 16;
const MISSED = 1e-9;

/**
 * @param start whole steps that come to the sum; where some lie beyond their bounds they are brought back first
 * @param most swaps
 * @returns the nearest steps met that keep everything and are nearer than `squares`; undefined where none were met
 */
export function nearestBySwaps(
  question: SwapQuestion,
  start: Float64Array,
  most: number,
  squares: number,
): Float64Array | undefined {
  const within = broughtBack(question, start);
  return within && new Swaps(question, within).run(most, squares);
}

/** Steps within their bounds that come to the same; undefined where there is no room for them. */
function broughtBack({ target, low, high }: SwapQuestion, start: Float64Array): Float64Array | undefined {
  const steps = start.map((k, j) => Math.min(high[j]!, Math.max(low[j]!, k)));
  let missing = 0;
  for (let j = 0; j < steps.length; j++) missing += start[j]! - steps[j]!;
  while (missing !== 0) {
    const way = Math.sign(missing);
    let best = -1;
    for (let j = 0; j < steps.length; j++) {
      if (way > 0 ? steps[j]! >= high[j]! : steps[j]! <= low[j]!) continue;
      if (best < 0 || way * (target[j]! - steps[j]!) > way * (target[best]! - steps[best]!)) best = j;
    }
    if (best < 0) return undefined;
    steps[best]! += way;
    missing -= way;
  }
  return steps;
}

class Swaps {
  private readonly question: SwapQuestion;
  private readonly n: number;
  private readonly m: number;
  private readonly steps: Float64Array;
  /** What each row comes to, between which ends it is kept, and what missing it weighs. */
  private readonly value: Float64Array;
  private readonly from: Float64Array;
  private readonly to: Float64Array;
  private readonly weight: Float64Array;
  /** The rows' factors, food by food. */
  private readonly factors: Float64Array;
  private readonly tried: Float64Array;
  /** Until when each food rests. */
  private readonly rests: Int32Array;
  /** What a step more, or less, costs by itself. */
  private readonly up: Float64Array;
  private readonly down: Float64Array;

  constructor(question: SwapQuestion, start: Float64Array) {
    const windows = windowsOf(question.rows);
    this.question = question;
    this.n = question.target.length;
    this.m = windows.length;
    this.steps = start.slice();
    this.value = new Float64Array(this.m);
    this.from = Float64Array.from(windows, ({ from }) => from);
    this.to = Float64Array.from(windows, ({ to }) => to);
    this.tried = new Float64Array(this.m);
    this.weight = new Float64Array(this.m).fill(WEIGHT);
    this.factors = new Float64Array(this.n * this.m);
    this.rests = new Int32Array(this.n);
    this.up = new Float64Array(this.n);
    this.down = new Float64Array(this.n);
    for (const [r, { a }] of windows.entries()) {
      for (let j = 0; j < this.n; j++) {
        this.factors[j * this.m + r] = a[j]!;
        this.value[r]! += a[j]! * this.steps[j]!;
      }
    }
  }

  run(most: number, squares: number): Float64Array | undefined {
    const { steps, value, from, to, weight, m } = this;
    let nearest = squares;
    let best: Float64Array | undefined;
    for (let swap = 0; swap < most; swap++) {
      let kept = true;
      for (let r = 0; r < m; r++) {
        if (value[r]! >= from[r]! - MISSED && value[r]! <= to[r]! + MISSED) continue;
        kept = false;
        weight[r]! *= HEAVIER;
      }
      if (kept) {
        for (let r = 0; r < m; r++) weight[r]! *= LIGHTER;
        const off = this.squares();
        if (off < nearest && this.isEnough() && this.question.keeps(steps)) {
          nearest = off;
          best = steps.slice();
        }
      }
      if (!this.swap(swap)) break;
    }
    return best;
  }

  /** Whether foods that are in have as many steps as they are to have at the least. */
  private isEnough(): boolean {
    const { least } = this.question;
    return this.steps.every((k, j) => k === 0 || k >= least[j]!);
  }

  private squares(): number {
    let sum = 0;
    for (let j = 0; j < this.n; j++) sum += (this.steps[j]! - this.question.target[j]!) ** 2;
    return sum;
  }

  /** The best swap of a food that does not rest. @returns whether there was any */
  private swap(now: number): boolean {
    const { n, m, steps, value, from, to, tried, weight, factors, rests, up, down } = this;
    const { target, low, high, least } = this.question;
    for (let j = 0; j < n; j++) {
      const k = steps[j]!;
      const off = 2 * (k - target[j]!);
      // To come in or to go out would take several steps at a time there.
      const alone = least[j]! > 1;
      const canUp = k < high[j]! && !(alone && k === 0);
      const canDown = k > low[j]! && !(alone && k === least[j]!);
      up[j] = canUp ? 1 + off + this.missedWith(j, 1) : Number.POSITIVE_INFINITY;
      down[j] = canDown ? 1 - off + this.missedWith(j, -1) : Number.POSITIVE_INFINITY;
    }
    const gainers = likeliest(up);
    const givers = likeliest(down);
    let bestCost = Number.POSITIVE_INFINITY;
    let gains = -1;
    let gives = -1;
    for (const i of gainers) {
      const own = 1 + 2 * (steps[i]! - target[i]!);
      for (let r = 0; r < m; r++) tried[r] = value[r]! + factors[i * m + r]!;
      for (const j of givers) {
        if (i === j || (rests[i]! > now && rests[j]! > now)) continue;
        let cost = own + 1 - 2 * (steps[j]! - target[j]!);
        for (let r = 0; r < m && cost < bestCost; r++) {
          const v = tried[r]! - factors[j * m + r]!;
          if (v < from[r]!) cost += weight[r]! * (from[r]! - v);
          else if (v > to[r]!) cost += weight[r]! * (v - to[r]!);
        }
        if (cost < bestCost) {
          bestCost = cost;
          gains = i;
          gives = j;
        }
      }
    }
    if (gains < 0) return false;
    steps[gains]!++;
    steps[gives]!--;
    for (let r = 0; r < m; r++) value[r]! += factors[gains * m + r]! - factors[gives * m + r]!;
    rests[gains] = now + REST + (now % REST);
    rests[gives] = rests[gains]!;
    return true;
  }

  /** What the rows that are missed weigh with a step of one food more or less. */
  private missedWith(j: number, sign: 1 | -1): number {
    const { m, value, from, to, weight, factors } = this;
    let cost = 0;
    for (let r = 0; r < m; r++) {
      const v = value[r]! + sign * factors[j * m + r]!;
      if (v < from[r]!) cost += weight[r]! * (from[r]! - v);
      else if (v > to[r]!) cost += weight[r]! * (v - to[r]!);
    }
    return cost;
  }
}

interface Window {
  readonly a: Float64Array;
  readonly from: number;
  to: number;
}

/** Rows, two that bound the same from below and from above as one. */
function windowsOf(rows: readonly StepRow[]): Window[] {
  const windows: Window[] = [];
  for (const { a, h } of rows) {
    const before = windows.at(-1);
    if (before && before.to === Number.POSITIVE_INFINITY && before.a.every((v, j) => v === -a[j]!))
      before.to = -h;
    else windows.push({ a, from: h, to: Number.POSITIVE_INFINITY });
  }
  return windows;
}

/** The foods of least cost. */
function likeliest(cost: Float64Array): number[] {
  const last = cost.length <= MOST_TRIED ? undefined : cost.slice().sort()[MOST_TRIED - 1];
  const able: number[] = [];
  for (let j = 0; j < cost.length && able.length < MOST_TRIED; j++)
    if (cost[j]! < Number.POSITIVE_INFINITY && (last === undefined || cost[j]! <= last)) able.push(j);
  return able;
}
