/**
 * The cheapest choice that meets every one of some sets, by branch and bound: the choices go through the members of a set
 * that is not met, and sets that share no member bound from below what is still needed.
 */
import { elementAt } from '../solve/vectors.ts';

/** Choices looked at before it is left open: so many are met by no sets but ones made to be hard. */
const MOST_LOOKED_AT = 100_000;
const DEARER = 1e-9;

/**
 * @param sets of columns @param cost of each column, 1 or more
 * @param below what the choice must cost less than
 * @returns columns; undefined where none costs less, or where that was left open
 */
export function cheapestHit(
  sets: readonly (readonly number[])[],
  cost: readonly number[],
  below: number,
): number[] | undefined {
  return new Search(sets, cost, below).run();
}

class Search {
  private readonly sets: readonly (readonly number[])[];
  private readonly cost: readonly number[];
  /** The sets of each column. */
  private readonly setsOf: readonly (readonly number[])[];
  /** How many chosen columns each set has. */
  private readonly met: Int32Array;
  private readonly out: Uint8Array;
  private readonly chosen: number[] = [];
  private best: number[] | undefined;
  private bestCost: number;
  private looked = 0;

  constructor(sets: readonly (readonly number[])[], cost: readonly number[], below: number) {
    this.sets = sets;
    this.cost = cost;
    this.bestCost = below;
    this.met = new Int32Array(sets.length);
    this.out = new Uint8Array(cost.length);
    const setsOf: number[][] = cost.map(() => []);
    for (const [s, set] of sets.entries()) for (const k of set) elementAt(setsOf, k).push(s);
    this.setsOf = setsOf;
  }

  run(): number[] | undefined {
    this.choose(0);
    return this.looked > MOST_LOOKED_AT ? undefined : this.best;
  }

  private choose(spent: number): void {
    if (++this.looked > MOST_LOOKED_AT) return;
    const { sets, met, out } = this;
    let least: number[] | undefined;
    for (const [s, set] of sets.entries()) {
      if (met[s]! > 0) continue;
      const open = set.filter((k) => out[k] === 0);
      if (!least || open.length < least.length) least = open;
    }
    if (!least) {
      this.best = [...this.chosen];
      this.bestCost = spent;
      return;
    }
    if (spent + this.needed() >= this.bestCost - DEARER) return;
    const worth = (k: number) => elementAt(this.setsOf, k).filter((s) => met[s] === 0).length;
    const order = least.map((k) => [k, worth(k)] as const).sort((a, b) => b[1] - a[1]);
    for (const [k] of order) {
      const after = spent + elementAt(this.cost, k);
      if (after < this.bestCost - DEARER) {
        for (const s of elementAt(this.setsOf, k)) met[s]!++;
        this.chosen.push(k);
        this.choose(after);
        this.chosen.pop();
        for (const s of elementAt(this.setsOf, k)) met[s]!--;
      }
      // What follows does without it.
      out[k] = 1;
    }
    for (const [k] of order) out[k] = 0;
  }

  /** At the least what sets that are not met still cost: of sets without a common member, each its cheapest. */
  private needed(): number {
    const { sets, met, out, cost } = this;
    const taken = new Uint8Array(cost.length);
    let sum = 0;
    for (const [s, set] of sets.entries()) {
      if (met[s]! > 0) continue;
      let cheapest = Number.POSITIVE_INFINITY;
      let apart = true;
      for (const k of set) {
        if (out[k] === 1) continue;
        if (taken[k] === 1) {
          apart = false;
          break;
        }
        cheapest = Math.min(cheapest, cost[k]!);
      }
      if (!apart) continue;
      sum += cheapest;
      for (const k of set) taken[k] = 1;
    }
    return sum;
  }
}
