/** Sends what waits, one change after the other, in the order in which they were made; tries again until it is answered. */
import type { KeptRecord, Written } from '../../../household/records.ts';
import { ApiError } from '../api-error.ts';
import { backoff } from './backoff.ts';
import { type Change, FOLLOWS } from './change.ts';
import type { Outbox } from './outbox.ts';

/** From the last of many small changes to their being sent, ms. */
const PAUSE = 400;
/** What browsers send for a page that is left: 64 KiB in all. */
const MOST_LEAVING = 60_000;

/** What the server said to a change. */
export interface Answered {
  made(change: Change, written: Written): void;
  /** The record stands at another version. */
  overtaken(change: Change, stands: KeptRecord): void;
  /** It will not be made, however often it is sent. */
  refused(change: Change, error: ApiError): void;
  /** Nobody answered, or not now: it is sent again. */
  failed(): void;
  /** After any of these. */
  settled(): void;
}

export class Sender {
  readonly #outbox: Outbox;
  readonly #request: (change: Change, leaving: boolean) => Promise<Written>;
  readonly #answered: Answered;
  #trouble: string | undefined;
  #failures = 0;
  #busy = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param request makes a change on the server; with `leaving`, by a request that outlives the page */
  constructor(
    outbox: Outbox,
    request: (change: Change, leaving: boolean) => Promise<Written>,
    answered: Answered,
  ) {
    this.#outbox = outbox;
    this.#request = request;
    this.#answered = answered;
  }

  /** Why nothing can be sent at present, in words; undefined while all goes well. */
  get trouble(): string | undefined {
    return this.#trouble;
  }

  /** Sends what waits as soon as one may: a little later where more small changes may come, or where it just failed. */
  soon(): void {
    this.#wait(this.#failures > 0 ? backoff(this.#failures) : PAUSE);
  }

  /** Sends what can be sent, unless that is under way or comes soon. */
  wake(): void {
    if (this.#timer === undefined) this.now();
  }

  /** Sends now what waits. */
  now(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const next = this.#outbox.all().find((change) => this.#mayGo(change));
    if (!next || this.#busy) return;
    this.#busy = true;
    void this.#send(next, false).then(() => {
      this.#busy = false;
      const waits = this.#outbox.all().find((change) => this.#mayGo(change));
      if (!waits) return;
      if (this.#failures > 0 || waits.joins) this.soon();
      else this.now();
    });
  }

  /**
   * The page is left: sends what waits by requests that outlive it, as far as browsers do that. Where the server just did
   * not answer, the page that is opened next sends it.
   */
  leave(): void {
    if (this.#failures > 0) return;
    let room = MOST_LEAVING;
    for (const change of this.#outbox.all()) {
      if (!this.#mayGo(change)) continue;
      room -= JSON.stringify(change.body).length;
      if (room < 0) return;
      void this.#send(change, true);
    }
  }

  /** Whether a change can be sent: none of the same record waits before it, and the keeper has nothing to choose. */
  #mayGo(change: Change): boolean {
    const [first] = this.#outbox.chain(change.kind, change.id);
    return first === change && !change.theirs && change.base.version !== FOLLOWS;
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.now(), ms);
  }

  async #send(change: Change, leaving: boolean): Promise<void> {
    this.#outbox.replace([change], [{ ...change, sent: true }]);
    let written: Written | undefined;
    let error: unknown;
    try {
      written = await this.#request(change, leaving);
    } catch (caught) {
      error = caught;
    }
    const { slot, writeId } = change;
    const still = this.#outbox.all().find((c) => c.slot === slot && c.writeId === writeId);
    // Sent twice and answered already, or changed meanwhile.
    if (!still) return;
    if (written) {
      this.#goesWell();
      this.#answered.made(still, written);
    } else if (error instanceof ApiError && error.stands) {
      this.#goesWell();
      this.#answered.overtaken(still, error.stands);
    } else if (error instanceof ApiError && error.isFinal) {
      this.#goesWell();
      this.#answered.refused(still, error);
    } else {
      this.#failures += 1;
      this.#trouble = error instanceof Error ? error.message : String(error);
      this.#answered.failed();
    }
    this.#answered.settled();
  }

  #goesWell(): void {
    this.#failures = 0;
    this.#trouble = undefined;
  }
}
