/** What the server has of the household, as far as this page heard. */
import { same } from '../../../household/merge/merge-record.ts';
import type { Kind } from '../../../household/model.ts';
import type { KeptRecord } from '../../../household/records.ts';
import type { Standing } from './change.ts';

export class Replica {
  /** Of the household that the numbers below belong to. */
  readonly epoch: string;
  /** All changes up to this one are here. */
  seq = 0;
  readonly #kinds = new Map<Kind, Map<string, KeptRecord>>();
  /** Of these, by kind and id, what is kept and cannot be shown. */
  readonly #unreadable = new Map<string, KeptRecord>();

  constructor(epoch: string) {
    this.epoch = epoch;
  }

  get(kind: Kind, id: string): KeptRecord | undefined {
    return this.#kinds.get(kind)?.get(id);
  }

  /** How a record stands; at version 0 where there never was one. */
  standing(kind: Kind, id: string): Standing {
    const { version = 0, body = null } = this.get(kind, id) ?? {};
    return { epoch: this.epoch, version, body };
  }

  /** Takes a record as it stands, unless a newer one is here. What did not change stays the very same object. */
  take(record: KeptRecord): void {
    const records = this.#kinds.get(record.kind) ?? new Map<string, KeptRecord>();
    this.#kinds.set(record.kind, records);
    const before = records.get(record.id);
    if (before && before.version > record.version) return;
    const body = before && same(before.body, record.body) ? before.body : record.body;
    const taken = body === record.body ? record : { ...record, body };
    records.set(record.id, taken);
    const key = `${record.kind} ${record.id}`;
    if (record.unreadable) this.#unreadable.set(key, taken);
    else if (before?.unreadable) this.#unreadable.delete(key);
  }

  /** Shows what this page itself changed as the very object that it changed it into. */
  keepObject(kind: Kind, id: string, body: KeptRecord['body']): void {
    const record = this.get(kind, id);
    if (record && same(record.body, body)) this.#kinds.get(kind)?.set(id, { ...record, body });
  }

  /** Records of a kind in the order in which they were first kept; with those that are deleted or unreadable. */
  list(kind: Kind): KeptRecord[] {
    return [...(this.#kinds.get(kind)?.values() ?? [])].sort((a, b) => a.place - b.place);
  }

  /** What is kept and cannot be shown. */
  unreadable(): KeptRecord[] {
    return [...this.#unreadable.values()];
  }
}

/** Before anything of the household is here. */
export const NOWHERE = new Replica('');
