/**
 * Saves a batch being weighed, one entry after the other. An entry counts as made once the server has it. Until
 * then it is tried again, and kept on this device too, so that closing the page loses nothing.
 */
import type { Batch } from '../../kitchen/model.ts';
import { backoff } from './backoff.ts';
import type { BatchChange, ChangeOutcome } from './batch-change.ts';

export type BatchSave =
  | { readonly is: 'idle' }
  | { readonly is: 'saving'; readonly next: Batch }
  | { readonly is: 'failed'; readonly next: Batch; readonly message: string }
  /** Another device went on with the batch: its entry stands, this one's was not made. */
  | { readonly is: 'overtaken'; readonly next: Batch };

export interface BatchSaverParts {
  /** Makes a change on the server; rejects where nobody knows whether it was made. */
  send(change: BatchChange): Promise<ChangeOutcome>;
  /** Takes the batch as it stands on the server. */
  show(batch: Batch): void;
  tell(save: BatchSave): void;
  /** What stays on this device when the page is closed. */
  readonly storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
}

export class BatchSaver {
  readonly #slot: string;
  readonly #parts: BatchSaverParts;
  /** Changes that the server does not have yet, each made upon the one before it. */
  #waiting: readonly BatchChange[] = [];
  #busy = false;
  #open = false;
  #failures = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param id of the batch */
  constructor(id: string, parts: BatchSaverParts) {
    this.#slot = `pouchful.batch.${id}`;
    this.#parts = parts;
  }

  /** The page is open: what was left on this device is made now. */
  open(): void {
    this.#open = true;
    const left = this.#parts.storage.getItem(this.#slot);
    // An older page left one change, not a list.
    if (left !== null && this.#waiting.length === 0)
      this.#take([JSON.parse(left) as BatchChange | BatchChange[]].flat());
    else void this.#attempt();
  }

  /** The page is closed: what is on its way is still heard, a failure is tried again when it is opened next. */
  close(): void {
    this.#open = false;
    clearTimeout(this.#timer);
  }

  /** Keeps `next` in the place of `base`. */
  keep(base: Batch, next: Batch): void {
    this.#take([...this.#waiting, { base, next }]);
  }

  /** Tries now what waits. */
  retry(): void {
    void this.#attempt();
  }

  #take(changes: readonly BatchChange[]): void {
    this.#leave(changes);
    const last = changes.at(-1);
    if (last) this.#parts.tell({ is: 'saving', next: last.next });
    void this.#attempt();
  }

  /** What waits from now on, on this device too. */
  #leave(changes: readonly BatchChange[]): void {
    this.#waiting = changes;
    if (changes.length > 0) this.#parts.storage.setItem(this.#slot, JSON.stringify(changes));
    else this.#parts.storage.removeItem(this.#slot);
  }

  async #attempt(): Promise<void> {
    const [change] = this.#waiting;
    if (!change || this.#busy) return;
    clearTimeout(this.#timer);
    this.#busy = true;
    const outcome = await this.#parts.send(change).catch((error: unknown) => ({ error }));
    this.#busy = false;
    const { next } = this.#waiting.at(-1) ?? change;
    if ('error' in outcome) {
      const { error } = outcome;
      this.#failures += 1;
      this.#parts.tell({
        is: 'failed',
        next,
        message: error instanceof Error ? error.message : String(error),
      });
      if (this.#open) this.#timer = setTimeout(() => void this.#attempt(), backoff(this.#failures));
      return;
    }
    this.#failures = 0;
    // What was made upon a change that does not stand, does not stand either.
    this.#leave(outcome.overtaken ? [] : this.#waiting.slice(1));
    this.#parts.show(outcome.batch);
    if (this.#waiting.length > 0) void this.#attempt();
    else this.#parts.tell(outcome.overtaken ? { is: 'overtaken', next } : { is: 'idle' });
  }
}
