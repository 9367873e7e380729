/**
 * Saves the newest version of one thing, a little after the last change, one request at a time.
 * A failed save is kept, shown and tried again; nothing is dropped but older versions of the same thing.
 */
export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'failed'; readonly message: string };

export class Autosave<T> {
  readonly #save: (thing: T, leaving: boolean) => Promise<void>;
  readonly #show: (state: SaveState) => void;
  readonly #delay: number;
  #pending: { thing: T } | undefined;
  #busy = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #failures = 0;

  constructor(
    save: (thing: T, leaving: boolean) => Promise<void>,
    show: (state: SaveState) => void,
    delay = 400,
  ) {
    this.#save = save;
    this.#show = show;
    this.#delay = delay;
  }

  /** Keeps `thing` as the version to save. */
  queue(thing: T): void {
    this.#pending = { thing };
    this.#show({ is: 'saving' });
    this.#later(this.#delay);
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
    if (!pending || (this.#busy && !leaving)) return;
    this.#pending = undefined;
    this.#busy = true;
    try {
      await this.#save(pending.thing, leaving);
      this.#failures = 0;
      if (!this.#pending) this.#show({ is: 'saved' });
    } catch (error) {
      this.#pending ??= pending;
      this.#failures += 1;
      this.#show({ is: 'failed', message: error instanceof Error ? error.message : String(error) });
    } finally {
      this.#busy = false;
      if (this.#pending)
        this.#later(this.#failures ? Math.min(30_000, 1000 * 2 ** this.#failures) : this.#delay);
    }
  }
}
