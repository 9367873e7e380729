/**
 * Saves the newest version of one thing, a little after the last change, one request at a time.
 * A failed save is kept, shown and tried again; nothing is dropped but older versions of the same thing.
 */
import { backoff } from './backoff.ts';

export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'failed'; readonly message: string };

/** From the last change to its save, ms. */
const DELAY = 400;

export class Autosave<T> {
  readonly #save: (thing: T, leaving: boolean) => Promise<void>;
  readonly #show: (state: SaveState) => void;
  #pending: { thing: T } | undefined;
  #underWay = 0;
  /** Number of the newest version sent. */
  #newest = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #failures = 0;

  /** @param save stores a version; with `leaving`, by a request that outlives the page */
  constructor(save: (thing: T, leaving: boolean) => Promise<void>, show: (state: SaveState) => void) {
    this.#save = save;
    this.#show = show;
  }

  /** Keeps `thing` as the version to save. */
  queue(thing: T): void {
    this.#pending = { thing };
    this.#show({ is: 'saving' });
    this.#later(DELAY);
  }

  /** Saves now what waits; with `leaving`, by a request that outlives the page. */
  flush(leaving = false): void {
    clearTimeout(this.#timer);
    void this.#run(leaving);
  }

  #later(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#run(false), ms);
  }

  async #run(leaving: boolean): Promise<void> {
    const pending = this.#pending;
    if (!pending || (this.#underWay > 0 && !leaving)) return;
    this.#pending = undefined;
    this.#underWay += 1;
    this.#newest += 1;
    const version = this.#newest;
    try {
      await this.#save(pending.thing, leaving);
      this.#failures = 0;
      if (!this.#pending && version === this.#newest) this.#show({ is: 'saved' });
    } catch (error) {
      // On leaving, a newer version may be on its way already: then this one is saved no more.
      if (version === this.#newest) {
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
