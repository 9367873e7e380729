/** Work that can wait gives way to people. */

/** How long such work waits in all, ms: where people never cease to ask, it takes its turn among them. */
const PATIENCE = 10_000;

/** Knows when nobody asks for anything. */
export class Quiet {
  readonly #rest: number;
  #asking = 0;
  #last = Number.NEGATIVE_INFINITY;
  #patience = PATIENCE;

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
    for (let ms = this.#left(); ms > 0 && this.#patience > 0; ms = this.#left()) {
      this.#patience -= ms;
      await new Promise<void>((done) => setTimeout(done, ms).unref());
    }
  }

  /** How long it is not quiet for certain, ms. */
  #left(): number {
    if (this.#asking > 0) return Math.max(1, this.#rest);
    return this.#last + this.#rest - performance.now();
  }
}
