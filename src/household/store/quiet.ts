/** Work that can wait gives way to people. */

/** How long such work waits, ms, our own choice: where people never cease to ask, it is done among what they ask for. */
const PATIENCE = 10_000;

/** Knows when nobody asks for anything. */
export class Quiet {
  readonly #rest: number;
  #asking = 0;
  /** When somebody asked for something for the last time; whoever opens the household is about to. */
  #last = performance.now();
  /** Since when work waits for quiet that has not come. */
  #since: number | undefined;

  /** @param rest how long nobody must have asked for anything, ms: the questions of a page that opens come one upon the other */
  constructor(rest: number) {
    this.#rest = rest;
  }

  /** Does what somebody asked for. */
  async asked<T>(work: () => Promise<T>): Promise<T> {
    this.#asking++;
    try {
      return await work();
    } finally {
      this.#asking--;
      this.#last = performance.now();
    }
  }

  /** Comes back once it is quiet, or patience is at its end. */
  async comes(): Promise<void> {
    for (let ms = this.#left(); ms > 0; ms = this.#left()) {
      this.#since ??= performance.now();
      if (performance.now() - this.#since >= PATIENCE) return;
      await new Promise<void>((done) => setTimeout(done, ms).unref());
    }
    this.#since = undefined;
  }

  /** How long it is not quiet for certain, ms. */
  #left(): number {
    if (this.#asking > 0) return Math.max(1, this.#rest);
    return this.#last + this.#rest - performance.now();
  }
}
