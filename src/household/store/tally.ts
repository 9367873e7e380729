/**
 * What is known of all records of a household without reading them again: how many there are, how much room they take,
 * and which names what. Each change has a number, so that only what changed since is read; a household of ten years costs
 * a write no more than a new one.
 */
import type { Kept, Kind } from '../model.ts';
import { foodsNamedBy, referencesOf } from '../shape/references.ts';
import type { RowReader } from './stored.ts';
import type { RecordsTable, Tx } from './tables.ts';

/** Rows read at once, at most, and about how many bytes of text: what takes a few milliseconds, since others wait meanwhile. */
const MOST_ROWS = 200;
const LEAST_ROWS = 10;
const SLICE_BYTES = 60_000;

/** What may not go while it is named, and foods that are called so by a record. */
export type NamedKind = 'food' | 'profiles' | 'lots';

interface Known {
  readonly kind: Kind;
  readonly id: string;
  /** Number of the change that made it as it is known. */
  readonly seq: number;
  readonly place: number;
  /** Of its text; 0 where it is deleted. */
  readonly bytes: number;
  /** Keys of what it names. */
  readonly names: readonly string[];
}

interface Room {
  /** How many of a kind there are. */
  readonly of: Map<Kind, number>;
  /** Bytes of all of them. */
  bytes: number;
}

export class Tally {
  #epoch: string | undefined;
  #seq = 0;
  /** As many rows as the last ones let expect to be a slice. */
  #limit = MOST_ROWS;
  #records = new Map<string, Known>();
  #users = new Map<string, Set<string>>();
  #room: Room = { of: new Map(), bytes: 0 };

  /** One that goes its own way from here: for a transaction that asks in the middle of its own changes. */
  copy(): Tally {
    const copy = new Tally();
    copy.#epoch = this.#epoch;
    copy.#seq = this.#seq;
    copy.#records = new Map(this.#records);
    copy.#users = new Map([...this.#users].map(([key, users]) => [key, new Set(users)]));
    copy.#room = this.room();
    return copy;
  }

  /** Reads what changed since it last did. */
  async catchUp(tx: Tx, household: string, reader: RowReader): Promise<void> {
    while (await this.readSlice(tx, household, reader));
  }

  /** Reads a part of what changed since it last did. @returns whether there is more */
  async readSlice(tx: Tx, household: string, reader: RowReader): Promise<boolean> {
    const { seq, epoch } = await tx
      .selectFrom('households')
      .select(['seq', 'epoch'])
      .where('id', '=', household)
      .executeTakeFirstOrThrow();
    if (epoch !== this.#epoch) this.#begin(epoch);
    if (this.#seq >= seq) return false;
    const limit = this.#limit;
    const rows = await tx
      .selectFrom('records')
      .selectAll()
      .where('household', '=', household)
      .where('seq', '>', this.#seq)
      .orderBy('seq')
      .limit(limit)
      .execute();
    let bytes = 0;
    let taken = 0;
    for (const row of rows) {
      if (bytes >= SLICE_BYTES) break;
      bytes += this.#take(row, reader);
      taken++;
    }
    this.#limit = Math.min(MOST_ROWS, Math.max(LEAST_ROWS, Math.ceil((taken * SLICE_BYTES) / (bytes || 1))));
    const more = taken < rows.length || rows.length === limit;
    // Where there is nothing more, the numbers that are left were taken by changes of the same records.
    this.#seq = Math.max(this.#seq, more ? (rows[taken - 1]?.seq ?? seq) : seq);
    return more;
  }

  /** How much there is now; its holder may count on. */
  room(): Room {
    return { of: new Map(this.#room.of), bytes: this.#room.bytes };
  }

  /** Whether any record names a thing. */
  isNamed(kind: NamedKind, id: string): boolean {
    return (this.#users.get(keyOf(kind, id))?.size ?? 0) > 0;
  }

  /** The records of some kinds that name a thing, kind by kind, each in the order of its list. */
  usersOf(kind: NamedKind, id: string, by: readonly Kind[]): readonly Pick<Known, 'kind' | 'id'>[] {
    const users = [...(this.#users.get(keyOf(kind, id)) ?? [])].flatMap(
      (key) => this.#records.get(key) ?? [],
    );
    return by.flatMap((of) => users.filter((u) => u.kind === of).sort((a, b) => a.place - b.place));
  }

  /** Another household stands there than the one that is known. */
  #begin(epoch: string): void {
    this.#epoch = epoch;
    this.#seq = 0;
    this.#records = new Map();
    this.#users = new Map();
    this.#room = { of: new Map(), bytes: 0 };
  }

  /** Two that read at the same time may come to a row in any order: the newer one counts. @returns bytes of its text */
  #take(row: RecordsTable, reader: RowReader): number {
    const { kind, id, seq, place, body: raw } = row;
    const key = keyOf(kind, id);
    const before = this.#records.get(key);
    if (before && before.seq >= seq) return before.bytes;
    const { body } = reader.record(row);
    const now = {
      ...{ kind, id, seq, place },
      bytes: raw === null ? 0 : Buffer.byteLength(raw),
      names: body === null ? [] : namesOf(kind, body),
    };
    this.#records.set(key, now);
    this.#count(before, -1);
    this.#count(now, 1);
    for (const name of before?.names ?? []) this.#users.get(name)?.delete(key);
    for (const name of now.names) {
      const users = this.#users.get(name) ?? new Set();
      this.#users.set(name, users);
      users.add(key);
    }
    return now.bytes;
  }

  #count(known: Known | undefined, by: 1 | -1): void {
    if (!known || known.bytes === 0) return;
    const { of } = this.#room;
    of.set(known.kind, (of.get(known.kind) ?? 0) + by);
    this.#room.bytes += by * known.bytes;
  }
}

/** A kind has no space in it, so that no two things have one key. */
const keyOf = (kind: Kind | NamedKind, id: string) => `${kind} ${id}`;

function namesOf(kind: Kind, body: Kept<Kind>): readonly string[] {
  const foods = foodsNamedBy(kind, body).map((id) => keyOf('food', id));
  const kept = referencesOf(kind, body).flatMap((named) =>
    named.kind === 'profiles' || named.kind === 'lots' ? keyOf(named.kind, named.id) : [],
  );
  return [...new Set([...foods, ...kept])];
}
