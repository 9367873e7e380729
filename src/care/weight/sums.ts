/**
 * A two-sided cumulative sum of standardised differences from the base (Page 1954, Biometrika 41:100-115). Readings of
 * neighbouring days are alike, so each is first freed of what the one before it lets expect.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */

/** Reference and decision value, standard deviations. */
export const SUM_K = 0.75;
/** "far": of readings that are days apart, of which a year has fewer. */
export const SUM_H = { near: 5, far: 3.5 } as const;
const FAR_DAYS = 4;
/** How alike readings a day apart are taken to be. */
const ALIKE_A_DAY = 0.5;
/** A sum grows no higher than this above its decision value, so that it comes down when the weight is back. */
const ROOM = 4;
/** One reading counts for no more than this. */
const MOST = 4;

export class Sums {
  low = 0;
  high = 0;
  /** The day before which the sums were last at rest; undefined at rest. */
  since: number | undefined;
  sinceHigh: number | undefined;
  /** Days between readings of late. */
  #gaps = 1;
  #before: { day: number; below: number; above: number } | undefined;

  take(r: { day: number; below: number; above: number }): void {
    const gap = this.#before ? r.day - this.#before.day : Number.POSITIVE_INFINITY;
    const alike = ALIKE_A_DAY ** gap;
    const free = Math.sqrt(1 - alike ** 2);
    const own = (now: number, before = 0) => Math.max(-MOST, Math.min(MOST, (now - alike * before) / free));
    this.low = Math.min(SUM_H.near + ROOM, Math.max(0, this.low - own(r.below, this.#before?.below) - SUM_K));
    this.high = Math.min(
      SUM_H.near + ROOM,
      Math.max(0, this.high + own(r.above, this.#before?.above) - SUM_K),
    );
    this.since = this.low === 0 ? undefined : (this.since ?? r.day);
    this.sinceHigh = this.high === 0 ? undefined : (this.sinceHigh ?? r.day);
    this.#gaps += (Math.min(gap, 10) - this.#gaps) / 4;
    this.#before = r;
  }

  /** What a sum must come to. */
  get decision(): number {
    return this.#gaps > FAR_DAYS ? SUM_H.far : SUM_H.near;
  }

  /** Half way to a decision or further: the scatter is not learned from such readings. */
  get away(): boolean {
    return this.low > SUM_H.near / 2 || this.high > SUM_H.near / 2;
  }

  /** The weight is back: what was gathered is put down. */
  settle(): void {
    this.low = 0;
    this.high = 0;
    this.since = undefined;
    this.sinceHigh = undefined;
  }
}
