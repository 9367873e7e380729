/**
 * Long answers, one at a time, each for as long as somebody waits for it. An answer that nobody waits for any more is
 * dropped with the worker that was at it: nothing else ends a solver in the middle of its work.
 */
import type { WorkerLine } from './worker-line.ts';

/** How one who asks hears of a long answer, and leaves it. */
export interface Hearing<Told> {
  /** Told how far the answer is. */
  readonly tell?: (told: Told) => void;
  /** Aborted where the answer is waited for no longer. */
  readonly signal?: AbortSignal;
  /** Whether it gives way to every answer that is asked for by the keeper's own doing, and begins anew after it. */
  readonly aside?: boolean;
}

interface Asker {
  readonly tell: ((told: unknown) => void) | undefined;
  readonly answered: (answer: unknown) => void;
  readonly failed: (why: unknown) => void;
}

interface Question {
  /** Whether all who ask would wait. */
  aside: boolean;
  readonly key: string;
  readonly method: string;
  readonly args: readonly unknown[];
  readonly askers: Set<Asker>;
  /** What was told last. */
  told?: unknown;
}

/** So many answers are kept: the worker that could give them again at once may have been ended since. */
const KEPT = 4;

export class LongLane {
  readonly #line: WorkerLine;
  readonly #known = new Map<string, unknown>();
  #waiting: Question[] = [];
  #running: Question | undefined;

  constructor(line: WorkerLine) {
    this.#line = line;
  }

  /**
   * Asks for a long answer; who asks what is being worked out already waits along, and hears what was told of it.
   * @param args plain data
   * @throws the signal's reason where it is aborted; Error as {@link WorkerLine.ask}
   */
  readonly ask = (
    method: string,
    args: readonly unknown[],
    { tell, signal, aside = false }: Hearing<unknown> = {},
  ): Promise<unknown> => {
    if (signal?.aborted) return Promise.reject(signal.reason);
    const key = JSON.stringify([method, args]);
    if (this.#known.has(key)) return Promise.resolve(this.#known.get(key));
    const question = this.#asked(key) ?? { key, method, args, aside, askers: new Set<Asker>() };
    if (!aside) question.aside = false;
    if (question.askers.size === 0) this.#waiting.push(question);
    return new Promise((answered, failed) => {
      const asker: Asker = { tell, answered, failed };
      question.askers.add(asker);
      signal?.addEventListener('abort', () => {
        failed(signal.reason);
        this.#leave(question, asker);
      });
      if (question.told !== undefined) tell?.(question.told);
      this.#next();
    });
  };

  #asked(key: string): Question | undefined {
    return this.#running?.key === key ? this.#running : this.#waiting.find((q) => q.key === key);
  }

  #leave(question: Question, asker: Asker): void {
    if (!question.askers.delete(asker) || question.askers.size > 0) return;
    this.#waiting = this.#waiting.filter((q) => q !== question);
    if (this.#running !== question) return;
    this.#running = undefined;
    this.#line.drop();
    this.#next();
  }

  #next(): void {
    const first = this.#waiting.find((q) => !q.aside) ?? this.#waiting[0];
    if (!first || (this.#running && (first.aside || !this.#running.aside))) return;
    this.#waiting = this.#waiting.filter((q) => q !== first);
    const gaveWay = this.#running;
    this.#running = first;
    if (gaveWay) {
      this.#waiting.push(gaveWay);
      this.#line.drop();
    }
    void this.#answer(first);
  }

  async #answer(question: Question): Promise<void> {
    const { key, method, args, askers } = question;
    const tell = (told: unknown) => {
      question.told = told;
      for (const asker of askers) asker.tell?.(told);
    };
    let over: (asker: Asker) => void;
    try {
      const answer = await this.#line.ask(method, args, tell);
      this.#keep(key, answer);
      over = (asker) => asker.answered(answer);
    } catch (error) {
      over = (asker) => asker.failed(error);
    }
    // Those of one that gave way wait for its turn.
    if (this.#running !== question) return;
    this.#running = undefined;
    for (const asker of askers) over(asker);
    askers.clear();
    this.#next();
  }

  #keep(key: string, answer: unknown): void {
    this.#known.set(key, answer);
    for (const oldest of this.#known.keys()) {
      if (this.#known.size <= KEPT) break;
      this.#known.delete(oldest);
    }
  }
}
