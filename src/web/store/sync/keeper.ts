/**
 * Keeps the household of this page and the server's the same: what this device changes stands on the device at once and is
 * sent one after the other until the server has it; what others change comes in and is merged with what waits.
 */
import { mergeRecord, same } from '../../../household/merge/merge-record.ts';
import type { Kept, Kind } from '../../../household/model.ts';
import type { KeptRecord, Written } from '../../../household/records.ts';
import type { ApiError } from '../api-error.ts';
import { type Change, chosen, FOLLOWS, laidOver, rebased, type Standing, withoutRefused } from './change.ts';
import { FirstHousehold } from './first-household.ts';
import { Hearers } from './hearers.ts';
import { householdView } from './household-view.ts';
import {
  type KeeperParts,
  type KeeperView,
  NOTHING,
  type Outcome,
  type Refusal,
  type WriteOptions,
} from './keeper-parts.ts';
import { Outbox } from './outbox.ts';
import { Puller } from './puller.ts';
import { afterMade, withRefusal } from './refusals.ts';
import { NOWHERE, type Replica } from './replica.ts';
import { Sender } from './sender.ts';

export class Keeper {
  readonly #parts: KeeperParts;
  readonly #outbox: Outbox;
  readonly #sender: Sender;
  readonly #puller: Puller;
  readonly #listeners = new Set<() => void>();
  readonly #hearers = new Hearers();
  /** Kinds whose lists are to be drawn anew. */
  readonly #changed = new Set<Kind>();
  #replica: Replica | undefined;
  /** While the first household comes in: what is here of it. */
  readonly #first = new FirstHousehold();
  #view = NOTHING;
  #fault: Error | undefined;
  #refusals: readonly Refusal[] = [];
  #news = 0;

  constructor(parts: KeeperParts) {
    this.#parts = parts;
    this.#outbox = new Outbox(parts.storage, parts.tab);
    this.#sender = new Sender(this.#outbox, parts.send, {
      made: (change, written) => this.#made(change, written),
      overtaken: (change, stands) => this.#overtaken(change, stands),
      refused: (change, error) => this.#refused(change, error),
      failed: () => this.#failed(),
      settled: () => this.#publish(),
    });
    this.#puller = new Puller(
      parts.page,
      (replica, records) => this.#pulled(replica, records),
      (replica, sections) => this.#publish(this.#first.arrived(replica, sections)),
      (fault) => {
        this.#fault = fault;
        this.#publish();
        if (!fault && this.#sender.trouble !== undefined) this.retry();
        else if (!fault) this.#sender.wake();
      },
    );
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly view = (): KeeperView => this.#view;

  /** How far this page has heard; undefined before it first did. */
  heard(): { readonly epoch: string; readonly seq: number } | undefined {
    return this.#replica && { epoch: this.#replica.epoch, seq: this.#replica.seq };
  }

  /** How often changes came in that this page did not make. */
  news(): number {
    return this.#news;
  }

  /** One object as this page shows it this moment. */
  shown<K extends Kind>(kind: K, id: string): Kept<K> | undefined {
    const list: readonly Kept<K>[] | undefined = this.#view.household?.[kind];
    return list?.find((object) => object.id === id);
  }

  /**
   * Changes a record: on the device at once, on the server as soon as it can be.
   * @param body null deletes it
   * @param heard told what became of it: once it is sent or refused, or has to wait for longer
   */
  write<K extends Kind>(
    kind: K,
    id: string,
    body: Kept<K> | null,
    { base, unseen, joins }: WriteOptions<K>,
    heard?: (outcome: Outcome) => void,
  ): void {
    const chain = this.#outbox.chain(kind, id);
    const last = chain.at(-1);
    const there = this.#standing(kind, id);
    const now = (last ? laidOver(chain) : there.body) as Kept<K> | null;
    const { merged, conflicts } = mergeRecord(kind, base, body, now);
    if (same(merged, now)) {
      heard?.({ is: 'made' });
      return;
    }
    // The keeper did not see what stands there now: once all before it is made, they are asked.
    const collides = conflicts.length > 0;
    const at = this.#parts.now();
    if (last && !collides && (last.theirs || (last.joins && joins && !last.sent && same(now, last.body)))) {
      this.#outbox.replace([last], [{ ...last, body: merged, at, writeId: this.#parts.newId() }]);
      this.#hearers.add(last.slot, heard);
      if (last.theirs) this.#rebase(this.#outbox.chain(kind, id), last.theirs, true);
    } else {
      const upon = last ? { ...there, version: FOLLOWS } : there;
      const slot = this.#outbox.slot();
      this.#outbox.add({
        slot,
        kind,
        id,
        writeId: this.#parts.newId(),
        // Just as they made it: put upon what waits, it would undo what the keeper saw and that does not have yet.
        base: { ...upon, body: collides ? base : now },
        body: collides ? body : merged,
        at,
        ...(unseen && { unseen }),
        ...(joins && { joins }),
      });
      this.#hearers.add(slot, heard);
      const all = this.#outbox.chain(kind, id);
      // Where the first of them may have been made, its answer decides.
      if (collides && !all[0]?.sent) this.#rebase(all, there, true);
    }
    this.#changed.add(kind);
    this.#publish();
    if (joins) this.#sender.soon();
    else this.retry();
  }

  /** The keeper has chosen between what they changed and how the record stands elsewhere. */
  choose({ slot, kind }: Change, side: 'mine' | 'theirs'): void {
    const change = this.#outbox.all().find((c) => c.slot === slot);
    if (!change) return;
    const next = chosen(change, side, this.#parts.newId);
    this.#outbox.replace([change], next ? [next] : []);
    this.#changed.add(kind);
    this.#bringAllOnto();
    this.#publish();
    this.retry();
  }

  /** The keeper has read of a refusal. */
  forget(refusal: Refusal): void {
    this.#refusals = this.#refusals.filter((r) => r !== refusal);
    this.#publish();
  }

  /** Takes over what pages that are gone left on this device. @param isOpen whether a page is still there */
  adopt(isOpen: (tab: string) => boolean): void {
    for (const { kind } of this.#outbox.adopt(isOpen)) this.#changed.add(kind);
    this.#bringAllOnto();
    this.#publish();
    this.retry();
  }

  /** Sends now what waits. */
  retry(): void {
    if (this.#replica) this.#sender.now();
  }

  /** The page is left: what waits is sent by requests that outlive it. */
  leave(): void {
    this.#sender.leave();
  }

  /** Fetches what changed on the server since this page last heard. */
  pull(): Promise<void> {
    return this.#puller.pull();
  }

  #pulled(replica: Replica, records: readonly KeptRecord[]): void {
    const other = replica !== this.#replica;
    this.#replica = replica;
    if (other || records.length > 0) this.#news += 1;
    for (const kind of other ? this.#first.ended(replica) : []) this.#changed.add(kind);
    for (const { kind } of records) this.#changed.add(kind);
    this.#bringAllOnto();
  }

  #here(): Replica | undefined {
    return this.#replica ?? this.#first.replica;
  }

  /** How a record stands on the server, as far as this page knows. */
  #standing(kind: Kind, id: string): Standing {
    return (this.#here() ?? NOWHERE).standing(kind, id);
  }

  /** Puts what waits upon how the records stand on the server. What may have been made already is left as it is. */
  #bringAllOnto(): void {
    if (!this.#replica) return;
    const records = new Map(this.#outbox.all().map((c) => [`${c.kind} ${c.id}`, c]));
    for (const { kind, id } of records.values()) {
      const chain = this.#outbox.chain(kind, id);
      const [first] = chain;
      const there = this.#standing(kind, id);
      if (!first) continue;
      const { version, epoch } = first.theirs ?? first.base;
      if (first.sent && version !== FOLLOWS && epoch === there.epoch) continue;
      if (version !== there.version || epoch !== there.epoch) this.#rebase(chain, there, true);
    }
  }

  #rebase(chain: readonly Change[], there: Standing, ask: boolean): void {
    const after = rebased(chain, there, { ask, newId: this.#parts.newId });
    const [first] = after.kept;
    this.#outbox.replace(chain, after.kept);
    for (const { kind } of chain) this.#changed.add(kind);
    for (const change of after.made) this.#hearers.tell(change, { is: 'made' });
    for (const change of after.joined) this.#hearers.tell(change, { is: 'waiting' });
    if (first?.theirs) this.#hearers.tell(first, { is: 'waiting' });
  }

  #made(change: Change, { record, along }: Written): void {
    const { kind, id } = change;
    this.#refusals = afterMade(this.#refusals, change);
    this.#take([record, ...along]);
    this.#here()?.keepObject(kind, id, change.body);
    this.#hearers.tell(change, { is: 'made' });
    this.#outbox.remove(change);
    this.#rebase(this.#outbox.chain(kind, id), this.#standing(kind, id), true);
    this.#bringAllOnto();
  }

  #overtaken({ kind, id, base }: Change, stands: KeptRecord): void {
    this.#take([stands]);
    const there = { epoch: base.epoch, version: stands.version, body: stands.body };
    this.#rebase(this.#outbox.chain(kind, id), there, true);
    // Where the numbers went back, an older household was put back, of which this page has not heard yet.
    if (this.#standing(kind, id).version <= stands.version) this.#bringAllOnto();
    void this.pull();
  }

  #refused(change: Change, error: ApiError): void {
    const { kind, id } = change;
    const left = withoutRefused(change, error.field, this.#parts.newId);
    this.#outbox.replace([change], left ? [left] : []);
    this.#changed.add(kind);
    // It alone is taken back: what was changed after it stays.
    const rest = this.#outbox.chain(kind, id);
    if (!left && rest[0] && same(rest[0].base.body, change.body)) this.#rebase(rest, change.base, false);
    this.#bringAllOnto();
    if (!this.#hearers.tell(change, { is: 'refused', error }))
      this.#refusals = withRefusal(this.#refusals, change, error);
  }

  #failed(): void {
    for (const change of this.#outbox.all()) {
      if (change.unseen && change.body === null) {
        const { unseen: _, ...seen } = change;
        this.#outbox.replace([change], [seen]);
        this.#changed.add(change.kind);
      }
      this.#hearers.tell(change, { is: 'waiting' });
    }
  }

  /** Takes records as the server just gave them. */
  #take(records: readonly KeptRecord[]): void {
    for (const record of records) {
      this.#here()?.take(record);
      this.#changed.add(record.kind);
    }
  }

  #publish(redrawn: readonly Kind[] = []): void {
    for (const kind of redrawn) this.#changed.add(kind);
    const { household: before, unreadable: seen } = this.#view;
    const [replica, { coming }] = [this.#here(), this.#first];
    const unreadable = this.#changed.size > 0 ? (replica?.unreadable() ?? []) : seen;
    const household = replica && householdView(replica, this.#outbox, this.#changed, before, coming);
    this.#changed.clear();
    const isWhole = household !== undefined && coming.size === 0;
    this.#view = {
      household,
      isWhole,
      fault: isWhole ? undefined : this.#fault,
      unreadable: same(unreadable, seen) ? seen : unreadable,
      waiting: this.#outbox.all(),
      onDevice: this.#outbox.onDevice(),
      trouble: this.#sender.trouble,
      refusals: this.#refusals,
    };
    for (const listener of this.#listeners) listener();
  }
}
