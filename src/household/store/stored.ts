/** From a row to the record it holds. */
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';
import type { KeptRecord } from '../records.ts';
import { checkRecord } from '../shape/check-record.ts';
import { type Fittable, FoundFit } from './found-fit.ts';
import type { RecordRow } from './tables.ts';

/** Reads the rows of one household. What it found fit to be shown once, it does not look through again. */
export class RowReader {
  readonly #found: FoundFit;

  constructor(found = new FoundFit()) {
    this.#found = found;
  }

  /** A row as a record. What cannot be read comes with its raw text, and why. */
  record(row: RecordRow): KeptRecord {
    const { kind, id, version, seq, place, body: raw } = row;
    const where = { kind, id, version, seq, place };
    if (raw === null) return { ...where, body: null };
    const fit = this.isFit(row);
    const read = readBody(kind, id, raw, fit);
    if ('why' in read) return { ...where, body: null, unreadable: { raw, why: read.why } };
    if (!fit) this.#found.add(row);
    return { ...where, body: read.body };
  }

  /** Whether the row was found fit to be shown as it stands. */
  isFit(row: Fittable): boolean {
    return this.#found.has(row);
  }
}

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
