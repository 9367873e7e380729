/** Limits on wrong pairing codes from one address: a few are free, after that each makes the wait longer. */

/** Slips of a keeper's finger, before the first wait (common practice, no source). */
const FREE = 5;
const FIRST_WAIT = 30_000;
const LONGEST_WAIT = 60 * 60_000;
/** After this long without a wrong try an address begins anew, ms. */
const FORGOTTEN = 24 * 60 * 60_000;
/** Most addresses remembered, so that a flood from many cannot fill the memory. */
const MOST_ADDRESSES = 1000;

export class WrongTries {
  readonly #clock: () => number;
  /** Oldest wrong try first. */
  readonly #tries = new Map<string, { count: number; last: number }>();

  /** @param clock the time in ms */
  constructor(clock: () => number) {
    this.#clock = clock;
  }

  /** How long an address must wait before its next code is looked at, ms; 0 when it need not. */
  wait(address: string): number {
    const tries = this.#tries.get(address);
    if (!tries || tries.count < FREE) return 0;
    const wait = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (tries.count - FREE));
    return Math.max(0, tries.last + wait - this.#clock());
  }

  add(address: string): void {
    const last = this.#clock();
    const before = this.#tries.get(address);
    const count = before && last - before.last < FORGOTTEN ? before.count + 1 : 1;
    this.#tries.delete(address);
    this.#tries.set(address, { count, last });
    const [oldest] = this.#tries.keys();
    if (this.#tries.size > MOST_ADDRESSES && oldest !== undefined) this.#tries.delete(oldest);
  }

  forget(address: string): void {
    this.#tries.delete(address);
  }
}
