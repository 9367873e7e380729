/** From a row to the record it holds. */

import type { Kept, Kind } from '../model.ts';
import type { KeptRecord } from '../records.ts';
import { checkRecord } from '../shape/check-record.ts';
import type { RecordsTable } from './tables.ts';

/** A row as a record. What cannot be read comes with its raw text, and why. */
export function recordFrom({ kind, id, version, seq, place, body: raw }: RecordsTable): KeptRecord {
  const where = { kind, id, version, seq, place };
  if (raw === null) return { ...where, body: null };
  const read = readBody(kind, id, raw);
  return 'why' in read
    ? { ...where, body: null, unreadable: { raw, why: read.why } }
    : { ...where, body: read.body };
}

/** What a stored text says, or why it cannot be shown. */
export function readBody(kind: Kind, id: string, raw: string): { body: Kept<Kind> } | { why: string } {
  let body: Kept<Kind>;
  try {
    body = JSON.parse(raw);
  } catch {
    return { why: 'it is no JSON' };
  }
  const wrong = checkRecord(kind, body);
  if (wrong) return { why: wrong.message };
  if (body.id !== id) return { why: `it says that its id is "${body.id}", but is kept as "${id}"` };
  return { body };
}
