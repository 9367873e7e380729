/** From a row to the record it holds. */
import { crc32 } from 'node:zlib';
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';
import type { KeptRecord } from '../records.ts';
import { checkRecord } from '../shape/check-record.ts';
import type { RecordRow } from './tables.ts';

/** Reads the rows of one household. What it found fit to be shown once, it does not look through again. */
export class RowReader {
  /** By kind and id, which state of the record was found fit. */
  readonly #fit = new Map<string, string>();

  /** A row as a record. What cannot be read comes with its raw text, and why. */
  record({ kind, id, version, seq, place, body: raw }: RecordRow): KeptRecord {
    const where = { kind, id, version, seq, place };
    if (raw === null) return { ...where, body: null };
    const read = readBody(kind, id, raw, this.isFit({ kind, id, seq, body: raw }));
    if ('why' in read) return { ...where, body: null, unreadable: { raw, why: read.why } };
    this.#fit.set(`${kind} ${id}`, stateOf(seq, raw));
    return { ...where, body: read.body };
  }

  /** Whether the row was found fit to be shown as it stands. */
  isFit({ kind, id, seq, body }: Pick<RecordRow, 'kind' | 'id' | 'seq' | 'body'>): boolean {
    return body !== null && this.#fit.get(`${kind} ${id}`) === stateOf(seq, body);
  }
}

/** Tells a text from what stood there; a program that writes past the store may leave the number of the change as it was. */
const stateOf = (seq: number, raw: string) => `${seq} ${raw.length} ${crc32(raw)}`;

/** What a stored text says, or why it cannot be shown. @param fit whether it is known to be fit to be shown */
export function readBody(
  kind: Kind,
  id: string,
  raw: string,
  fit = false,
): { body: Kept<Kind> } | { why: string } {
  let body: Kept<Kind>;
  try {
    body = JSON.parse(raw);
  } catch {
    return { why: words().household.refusal.noJson };
  }
  const wrong = fit ? undefined : checkRecord(kind, body);
  if (wrong) return { why: wrong.message };
  if (body.id !== id) return { why: words().household.refusal.otherId(body.id, id) };
  return { body };
}
