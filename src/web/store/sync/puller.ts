/** Fetches what changed on the server, from where this page last heard. */
import type { RecordsPage, Section } from '../../../household/records.ts';
import { Replica } from './replica.ts';
import { type Page, wholeHousehold } from './whole-household.ts';

export class Puller {
  readonly #page: Page;
  readonly #taken: (replica: Replica, records: RecordsPage['records']) => void;
  readonly #arrived: (replica: Replica, coming: readonly Section[]) => void;
  readonly #ended: (fault: Error | undefined) => void;
  #replica: Replica | undefined;
  /** A household that began to come in. */
  #begun: { readonly replica: Replica; fetch(): Promise<boolean> } | undefined;
  #running: Promise<void> | undefined;
  #again = false;

  /**
   * @param taken told of each part that came in, with what of it this page did not know; with another replica than before where it is another household, or the first
   * @param arrived told of the first household, while it comes in, each time that a section of it is whole
   * @param ended told once all has come in, or why it could not be had
   */
  constructor(
    page: Page,
    taken: (replica: Replica, records: RecordsPage['records']) => void,
    arrived: (replica: Replica, coming: readonly Section[]) => void,
    ended: (fault: Error | undefined) => void,
  ) {
    this.#page = page;
    this.#taken = taken;
    this.#arrived = arrived;
    this.#ended = ended;
  }

  /** Ready once everything is here that the server had when this was called, or it could not be had. */
  pull(): Promise<void> {
    this.#again = this.#running !== undefined;
    this.#running ??= this.#run().finally(() => {
      this.#running = undefined;
    });
    return this.#running;
  }

  async #run(): Promise<void> {
    do {
      this.#again = false;
      let fault: Error | undefined;
      try {
        await this.#once();
      } catch (error) {
        fault = error instanceof Error ? error : new Error(String(error));
      }
      this.#ended(fault);
    } while (this.#again);
  }

  async #once(): Promise<void> {
    let replica = this.#begun ? await this.#whole() : this.#replica;
    let since: RecordsPage['records'] = [];
    for (let more = true; more; ) {
      const asked = replica?.seq ?? 0;
      const page = await this.#page(asked);
      if (page.epoch !== replica?.epoch) {
        // Another household than the one that was here, or the first: all of it, from its beginning.
        replica = new Replica(page.epoch);
        since = [];
        if (asked > 0) continue;
        this.#begin(page, replica);
        if (await this.#whole()) continue;
      }
      // What this page changed itself is known already, and no news.
      const known = replica;
      const news = page.records.filter((r) => (known.get(r.kind, r.id)?.version ?? 0) < r.version);
      for (const record of page.records) replica.take(record);
      replica.seq = Math.max(replica.seq, page.seq);
      more = page.more;
      if (replica === this.#replica) this.#taken(replica, news);
      else since = [...since, ...news];
    }
    if (!replica || replica === this.#replica) return;
    this.#replica = replica;
    this.#taken(replica, since);
  }

  #begin(part: RecordsPage, replica: Replica): void {
    // Another household than the one that is shown is shown whole.
    const isFirst = this.#replica === undefined;
    const arrived = (coming: readonly Section[]) => isFirst && this.#arrived(replica, coming);
    const fetch = wholeHousehold(this.#page, part, replica, arrived);
    this.#begun = fetch && { replica, fetch };
  }

  /** Fetches the household that began to come in. @returns it, once it is whole; undefined where there is none, or another in its place */
  async #whole(): Promise<Replica | undefined> {
    const begun = this.#begun;
    if (!begun) return undefined;
    const isWhole = await begun.fetch();
    this.#begun = undefined;
    return isWhole ? begun.replica : undefined;
  }
}
