/**
 * Saves the newest version of one object, a little after the last change, one request at a time.
 * A failed save is kept, shown and tried again; nothing is dropped but older versions of the same object.
 */
import { backoff } from './backoff.ts';

export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'failed'; readonly message: string };

/** From the last change to its save, ms. */
const DELAY = 400;

export class Autosave<T> {
  readonly #save: (version: T, leaving: boolean) => Promise<void>;
  readonly #show: (state: SaveState) => void;
  #pending: { version: T } | undefined;
  #underWay = 0;
  /** Number of the newest version sent. */
  #newest = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #failures = 0;
  #lastRun: Promise<void> | undefined;

  /** @param save stores a version; with `leaving`, by a request that outlives the page */
  constructor(save: (version: T, leaving: boolean) => Promise<void>, show: (state: SaveState) => void) {
    this.#save = save;
    this.#show = show;
  }

  /** Keeps `version` as the one to save. */
  queue(version: T): void {
    this.#pending = { version };
    this.#show({ is: 'saving' });
    this.#later(DELAY);
  }

  /** Saves now what waits; with `leaving`, by a request that outlives the page. */
  flush(leaving = false): void {
    clearTimeout(this.#timer);
    this.#lastRun = this.#run(leaving);
  }

  /** Saves now what waits. Ready once all is saved, or a save has failed, which is tried again later as ever. */
  async settled(): Promise<void> {
    await this.#lastRun;
    do {
      this.flush();
      await this.#lastRun;
    } while (this.#pending && this.#failures === 0);
  }

  #later(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#lastRun = this.#run(false);
    }, ms);
  }

  async #run(leaving: boolean): Promise<void> {
    const pending = this.#pending;
    if (!pending || (this.#underWay > 0 && !leaving)) return;
    this.#pending = undefined;
    this.#underWay += 1;
    this.#newest += 1;
    const number = this.#newest;
    try {
      await this.#save(pending.version, leaving);
      this.#failures = 0;
      if (!this.#pending && number === this.#newest) this.#show({ is: 'saved' });
    } catch (error) {
      // On leaving, a newer version may be on its way already: then this one is saved no more.
      if (number === this.#newest) {
        this.#pending ??= pending;
        this.#failures += 1;
        this.#show({ is: 'failed', message: error instanceof Error ? error.message : String(error) });
      }
    } finally {
      this.#underWay -= 1;
      if (this.#pending) this.#later(this.#failures > 0 ? backoff(this.#failures) : DELAY);
    }
  }
}
