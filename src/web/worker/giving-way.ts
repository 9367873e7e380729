/**
 * A proof gives way to the hand. While a slider is moved, the page, the worker that follows it and the browser itself need
 * what the machine has; so the worker of the long answers waits between the steps of its work until the hand rests.
 *
 * It hears of nothing while it works, so page and worker share a piece of memory, which browsers allow to a page that is
 * isolated from all others (`crossOriginIsolated`); elsewhere nothing waits. The worker goes on by itself where no move
 * comes for a while: a page that lets go of the slider without a word, or ends, keeps nobody waiting.
 */

/** The numbers that are shared: the last move of the hand, 0 while it rests; how many steps were taken. */
const MOVE = 0;
const STEPS = 1;
const NUMBERS = 2;
/** A hand that did not move for so long holds still, ms; our own choice. */
const STILL_MS = 300;

/** The page's end: what its hand does. */
export class Hand {
  /** What the worker is given; undefined where the browser shares nothing. */
  readonly shared: Int32Array | undefined;
  #moves = 0;

  /** @param isolated whether the browser lets page and worker share memory */
  constructor(isolated: boolean) {
    if (isolated) this.shared = new Int32Array(new SharedArrayBuffer(NUMBERS * Int32Array.BYTES_PER_ELEMENT));
  }

  /** It takes hold of a slider, or moves it. */
  readonly moves = (): void => {
    if (this.shared) Atomics.store(this.shared, MOVE, ++this.#moves);
  };

  /** It has let go. */
  readonly rests = (): void => {
    if (this.shared && Atomics.exchange(this.shared, MOVE, 0) !== 0) Atomics.notify(this.shared, MOVE);
  };
}

/**
 * The worker's end: to be called between the steps of its work, returns once the hand rests or holds still.
 * @param stillMs a hand that did not move for so long holds still
 */
export function givingWay(shared: Int32Array, stillMs = STILL_MS): () => void {
  /** The move after which the hand was seen to hold still. */
  let still = 0;
  return () => {
    for (let move = Atomics.load(shared, MOVE); move !== 0 && move !== still; ) {
      Atomics.wait(shared, MOVE, move, stillMs);
      const now = Atomics.load(shared, MOVE);
      if (now === move) still = move;
      move = now;
    }
    Atomics.add(shared, STEPS, 1);
  };
}

/**
 * Has whatever looks at the clock in this worker pause first. The solver does between all steps of its work, many times a
 * millisecond, and no answer of it depends on what it sees there; at its own checkpoints it can be silent for half a
 * second (measured).
 */
export function atEveryLook(pause: () => void, clock: Pick<Performance, 'now'> = performance): void {
  const now = clock.now.bind(clock);
  clock.now = () => {
    pause();
    return now();
  };
}
