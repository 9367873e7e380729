/**
 * A household as one open file: JSON with a line for each record. The same household gives the same bytes, so the
 * file holds no time of its making. See docs/export.md.
 */

import { isReferenceNumber } from '../../foods/reference-number.ts';
import type { Batch } from '../../kitchen/model.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { KINDS } from '../model.ts';
import type { KeptRecord } from '../records.ts';
import { foodOutOfProblem, foodsNamedBy, type Named, referencesOf } from '../shape/references.ts';
import { canonicalJson } from './canonical-json.ts';
import { FORMAT_VERSION, HOUSEHOLD_FORMAT } from './format.ts';

/** A record as it goes into the file. */
export type Outgoing = Pick<KeptRecord, 'kind' | 'id' | 'body' | 'unreadable'>;
/**
 * A thing that a record names and that is not there any more, such as the animal of an old batch. Of kind "batches": a
 * batch with foods that its own problem lacks, kept since before that was refused.
 */
export interface Gone {
  readonly kind: Named['kind'] | 'batches';
  readonly id: string;
}

/** The file in pieces, so that a large household is never one text in memory. @param records in the order of their places */
export function* householdFile(records: readonly Outgoing[]): Generator<string> {
  yield `{"format":"${HOUSEHOLD_FORMAT}","version":${FORMAT_VERSION},\n"gone":[`;
  yield goneIn(records)
    .map((g) => `\n${canonicalJson(g)}`)
    .join(',');
  yield '],\n"records":[';
  let first = true;
  for (const kind of KINDS)
    for (const record of records) {
      if (record.kind !== kind || (record.body === null && !record.unreadable)) continue;
      yield `${first ? '' : ','}\n${lineOf(record)}`;
      first = false;
    }
  yield ']}\n';
}

function lineOf({ kind, id, body, unreadable }: Outgoing): string {
  const what = unreadable
    ? `"unreadable":${JSON.stringify(unreadable.raw)}`
    : `"body":${canonicalJson(body)}`;
  return `{"kind":"${kind}","id":${JSON.stringify(id)},${what}}`;
}

/** What records name that is not among them, once each, in a fixed order. */
export function goneIn(records: readonly Outgoing[]): Gone[] {
  const there = new Set(PROFILES.map((p) => keyOf({ kind: 'profiles', id: p.id })));
  for (const { kind, id, body, unreadable } of records) {
    if (body) for (const food of foodsNamedBy(kind, body)) there.add(keyOf({ kind: 'food', id: food }));
    if (body || unreadable)
      there.add(keyOf({ kind: kind === 'foods' ? 'food' : (kind as Gone['kind']), id }));
  }
  const gone = new Map<string, Gone>();
  for (const record of records) {
    const { kind, id, body } = record;
    if (!body) continue;
    if (oddFoodOf(record)) gone.set(keyOf({ kind: 'batches', id }), { kind: 'batches', id });
    for (const named of referencesOf(kind, body)) {
      const known = there.has(keyOf(named)) || (named.kind === 'food' && isReferenceNumber(named.id));
      if (!known) gone.set(keyOf(named), { kind: named.kind, id: named.id });
    }
  }
  return [...gone].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, g]) => g);
}

/** The food of a batch that its own problem lacks. */
export function oddFoodOf(record: Outgoing): { field: string; message: string } | undefined {
  return record.kind === 'batches' && record.body ? foodOutOfProblem(record.body as Batch, null) : undefined;
}

export function keyOf({ kind, id }: { readonly kind: string; readonly id: string }): string {
  return `${kind} ${id}`;
}
