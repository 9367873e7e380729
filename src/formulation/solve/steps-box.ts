/** Whole steps that each food may have, between a least and a most, and what they cost: the square of the distance from its share. */
export class StepsBox {
  readonly target: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  private readonly least: Float64Array;

  /** @param least steps that a food has where it has any; 0 or 1 where any will do */
  constructor(target: Float64Array, least: Float64Array) {
    this.target = target;
    this.least = least;
    this.low = new Float64Array(target.length);
    this.high = new Float64Array(target.length);
  }

  /** Steps of a food nearest to a place on its line. */
  nearest(j: number, place: number): number {
    const low = this.low[j]!;
    const high = this.high[j]!;
    const k = Math.min(high, Math.max(low, Math.round(place)));
    const least = this.least[j]!;
    if (k <= 0 || k >= least) return k;
    if (low > 0) return least;
    if (high < least) return 0;
    return place > least / 2 ? least : 0;
  }

  /** The next steps that a food may have above k, and below. */
  after(j: number, k: number): number {
    return k === 0 ? Math.max(1, this.least[j]!) : k + 1;
  }

  before(j: number, k: number): number {
    return k <= this.least[j]! ? 0 : k - 1;
  }

  /** What each step costs on the way from one number of steps to another: the square counts in straight pieces. */
  slope(j: number, from: number, to: number): number {
    return from + to - 2 * this.target[j]!;
  }

  /** What each step costs on the way up from k; infinite where the box ends. */
  slopeUp(j: number, k: number): number {
    return k >= this.high[j]! ? Number.POSITIVE_INFINITY : this.slope(j, k, this.after(j, k));
  }

  slopeDown(j: number, k: number): number {
    return k <= this.low[j]! ? Number.NEGATIVE_INFINITY : this.slope(j, k, this.before(j, k));
  }
}
