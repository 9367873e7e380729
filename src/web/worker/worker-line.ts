/**
 * The line to a worker that may fail: what waits for its answer is told, and a new worker takes its place when the keeper
 * asks for one. Nothing waits for ever without a word.
 */
import { words } from '../../words/words.ts';

/** What there is of a `Worker` that matters here. */
export interface WorkerEnd {
  /**
   * Asks the worker; its answer may never come.
   * @param tell is told how far the answer is; the worker's method takes it as its last argument
   */
  ask(method: string, args: readonly unknown[], tell?: (told: unknown) => void): Promise<unknown>;
  /** Hears of the worker's failure, with why. */
  onFailure(failed: (why: string) => void): void;
  end(): void;
}

/**
 * "gone": the worker has stopped; "lacking": something that it works with could not be loaded; "slow": an answer takes
 * longer than it should.
 */
export type LineState =
  | { readonly is: 'well' }
  | { readonly is: 'gone'; readonly why: string }
  | { readonly is: 'lacking'; readonly why: string; readonly method: string }
  | { readonly is: 'slow' };

const WELL: LineState = { is: 'well' };

/** Name of the errors that tell of something that could not be loaded, or that broke and has to be loaded anew. */
export const LOAD_ERROR = 'LoadError';

export class WorkerLine {
  readonly #open: () => WorkerEnd;
  readonly #slowAfter: number;
  readonly #listeners = new Set<() => void>();
  /** Those who wait, each with how to tell that no answer comes. */
  readonly #waiting = new Map<object, (error: Error) => void>();
  #late = 0;
  #end: WorkerEnd | undefined;
  #state: LineState = WELL;
  #generation = 0;

  /** @param open starts a worker, when it is first asked @param slowAfter after how long without a word an answer is late, ms */
  constructor(open: () => WorkerEnd, slowAfter: number) {
    this.#open = open;
    this.#slowAfter = slowAfter;
  }

  readonly state = (): LineState => this.#state;

  /** Which worker it is: one more with every restart. */
  readonly generation = (): number => this.#generation;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Starts the worker, where it does not run, so that it is at hand when it is asked. */
  readonly warm = (): void => {
    if (!this.#end && this.#state.is !== 'gone') this.#start();
  };

  /**
   * Asks the worker.
   * @param tell told how far the answer is
   * @throws Error where it is gone, goes before it answers, or its answer is an error
   */
  readonly ask = async (
    method: string,
    args: readonly unknown[],
    tell?: (told: unknown) => void,
  ): Promise<unknown> => {
    this.warm();
    const end = this.#end;
    if (!end) throw gone();
    const call = {};
    let late = false;
    const inTime = () => {
      clearTimeout(timer);
      if (late) this.#late -= 1;
      late = false;
      if (this.#late === 0 && this.#state.is === 'slow') this.#become(WELL);
    };
    const wait = () =>
      setTimeout(() => {
        late = true;
        this.#late += 1;
        if (this.#state.is === 'well') this.#become({ is: 'slow' });
      }, this.#slowAfter);
    let timer = wait();
    const heard = (told: unknown) => {
      if (!this.#waiting.has(call)) return;
      inTime();
      timer = wait();
      tell?.(told);
    };
    try {
      const answer = await new Promise((answered, failed) => {
        this.#waiting.set(call, failed);
        end.ask(method, args, tell && heard).then(answered, failed);
      });
      if (this.#state.is === 'lacking' && this.#state.method === method) this.#become(WELL);
      return answer;
    } catch (error) {
      if (error instanceof Error && error.name === LOAD_ERROR && end === this.#end)
        this.#become({ is: 'lacking', why: error.message, method });
      throw error;
    } finally {
      this.#waiting.delete(call);
      inTime();
    }
  };

  /** Ends the worker and starts another; what waits is told that no answer comes. */
  readonly restart = (): void => {
    this.drop();
    this.#generation += 1;
    this.#start();
  };

  /** Ends the worker: what it was at goes with it, and what waits is told so. The next who asks starts another. */
  readonly drop = (): void => {
    this.#end?.end();
    this.#end = undefined;
    if (this.#state.is !== 'well') this.#become(WELL);
    this.#tellWaiting(new Error(words().store.worker.endedEarly));
  };

  #start(): void {
    this.#state = WELL;
    try {
      const end = this.#open();
      this.#end = end;
      end.onFailure((why) => this.#end === end && this.#fail(why));
    } catch (error) {
      this.#fail(error instanceof Error ? error.message : String(error));
    }
    this.#become(this.#state);
  }

  #fail(why: string): void {
    this.#end?.end();
    this.#end = undefined;
    this.#become({ is: 'gone', why });
    this.#tellWaiting(gone());
  }

  #tellWaiting(error: Error): void {
    for (const failed of this.#waiting.values()) failed(error);
    this.#waiting.clear();
  }

  #become(state: LineState): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}

const gone = () => new Error(words().store.worker.stopped);
