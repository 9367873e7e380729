/** A server without network or disk that keeps the contract of docs/keeping.md, for tests of what a page keeps. */
import { same } from '../../src/household/merge/merge-record.ts';
import type { Kept, Kind, PourEntry } from '../../src/household/model.ts';
import {
  type Cuts,
  DAILY,
  type KeptRecord,
  type RecordsPage,
  type Section,
  type Written,
} from '../../src/household/records.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { ApiError } from '../../src/web/store/api-error.ts';
import type { Change } from '../../src/web/store/sync/change.ts';
import { requestFor } from '../../src/web/store/sync/request.ts';

const isOf = (kind: Kind, of?: Section) =>
  of === undefined || (of === 'rest' ? !DAILY.some((daily) => daily === kind) : kind === of);

export class FakeServer {
  epoch = 'first';
  seq = 0;
  /** Records in an answer at most. */
  readonly part: number;
  readonly #records = new Map<string, KeptRecord>();
  readonly #writes = new Set<string>();
  /** Told of every change that is made. */
  changed: (change: { kind: Kind; id: string; before: Kept<Kind> | null; after: Kept<Kind> | null }) => void =
    () => {};

  constructor(part = 3) {
    this.part = part;
  }

  /** What stands there now, by kind. */
  list<K extends Kind>(kind: K): Kept<K>[] {
    return this.#sorted('place').flatMap((r) => (r.kind === kind && r.body ? [r.body as Kept<K>] : []));
  }

  get(kind: Kind, id: string): KeptRecord | undefined {
    return this.#records.get(`${kind} ${id}`);
  }

  page(after: number, upTo?: number, of?: Section): RecordsPage {
    const all = this.#sorted('seq').filter(
      (r) =>
        isOf(r.kind, of) &&
        r.seq > after &&
        r.seq <= (upTo ?? r.seq) &&
        ((after > 0 && upTo === undefined) || r.body || r.unreadable),
    );
    const records = all.slice(0, this.part);
    const more = records.length < all.length;
    const seq = more ? (records.at(-1)?.seq ?? this.seq) : Math.min(this.seq, upTo ?? this.seq);
    const newest = Math.min(this.seq, upTo ?? this.seq);
    const isFirst = after === 0 && upTo === undefined && of === undefined;
    const cuts = isFirst && more && this.cuts();
    return structuredClone({ records, seq, more, newest, epoch: this.epoch, ...(cuts && { cuts }) });
  }

  /** So that each piece fits an answer. */
  cuts(): Cuts {
    const of = (section: Section) =>
      this.#sorted('seq')
        .filter((r) => isOf(r.kind, section) && (r.body || r.unreadable))
        .flatMap((r, k) => ((k + 1) % this.part === 0 ? [r.seq] : []));
    return { rest: of('rest'), feedings: of('feedings'), weighings: of('weighings') };
  }

  /** Another device's change, made at once. */
  put<K extends Kind>(kind: K, body: Kept<K>): KeptRecord {
    return this.#keep(kind, body.id, body);
  }
  delete(kind: Kind, id: string): void {
    this.#keep(kind, id, null);
  }
  spoil(kind: Kind, id: string): void {
    const record = this.#keep(kind, id, null);
    const unreadable = { raw: '{', why: 'It is no JSON.' };
    this.#records.set(`${kind} ${id}`, { ...record, unreadable });
  }
  /** Puts back what is there now as if it came from a backup: every number means something else. */
  restore(change: () => void): void {
    this.epoch = `${this.epoch} again`;
    const all = this.#sorted('place').filter((r) => r.body);
    this.#records.clear();
    this.#writes.clear();
    this.seq = 0;
    for (const { kind, id, body } of all) this.#keep(kind, id, body);
    change();
  }

  /** Answers a change as it would come over the network. @throws ApiError */
  receive(change: Change): Written {
    const sent = JSON.parse(JSON.stringify(change)) as Change;
    const { kind, id, body, base, writeId } = sent;
    const now = this.get(kind, id) ?? { kind, id, version: 0, seq: 0, place: 0, body: null };
    const { method, body: text } = requestFor(sent, 'test');
    if (method === 'POST' && now.body) {
      const batch = now.body as Batch;
      if (this.#writes.has(writeId)) return this.#answer(now);
      const { pours, stock } = JSON.parse(text ?? '') as PourEntry;
      const missing = pours.filter((p) => !batch.pours.some((there) => same(there, p)));
      if (missing.length > 0 && batch.finishedAt !== undefined)
        throw new ApiError(409, 'the batch is finished');
      this.#writes.add(writeId);
      if (missing.length === 0) return this.#answer(now);
      const next = { ...batch, pours: [...batch.pours, ...missing], ...(stock && { stock }) };
      return this.#answer(this.#keep(kind, id, next));
    }
    if (this.#writes.has(writeId)) return this.#answer(now);
    if (base.version !== now.version) {
      if (body !== null && same(body, now.body)) return this.#answer(now);
      throw new ApiError(409, 'it was changed meanwhile', { stands: structuredClone(now) });
    }
    if (body === null && now.body === null) throw new ApiError(404, 'it is not there');
    this.#writes.add(writeId);
    return this.#answer(this.#keep(kind, id, body));
  }

  #answer(record: KeptRecord): Written {
    return structuredClone({ record, along: [] });
  }

  #keep(kind: Kind, id: string, body: KeptRecord['body']): KeptRecord {
    const before = this.get(kind, id);
    this.seq += 1;
    const record = {
      kind,
      id,
      version: (before?.version ?? 0) + 1,
      seq: this.seq,
      place: before?.place ?? this.seq,
      body: structuredClone(body),
    };
    this.#records.set(`${kind} ${id}`, record);
    this.changed({ kind, id, before: before?.body ?? null, after: record.body });
    return record;
  }

  #sorted(by: 'seq' | 'place'): KeptRecord[] {
    return [...this.#records.values()].sort((a, b) => a[by] - b[by]);
  }
}
