/** Many records brought in from a file at once, in the order of the file. What they hold was checked as a whole before. */
import { randomUUID } from 'node:crypto';
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';
import { StoreError } from '../store-error.ts';
import { recordOf, type Session } from './session.ts';
import { writeRecord } from './write.ts';

export interface BringIn {
  /** What is to stand, in the order in which each names what stands before it. */
  readonly put: readonly { readonly kind: Kind; readonly id: string; readonly body: Kept<Kind> }[];
  /** What is to go. */
  readonly remove: readonly { readonly kind: Kind; readonly id: string }[];
  /** All that then stands, by kind in the order of its lists; absent where the order stays as it is. */
  readonly order?: readonly { readonly kind: Kind; readonly id: string }[];
  /** Number of the newest change when it was checked: a household that changed since is not touched. */
  readonly seen: number;
}

/** @param stood number of the newest change as the transaction began @throws StoreError where the household changed since */
export async function bringIn(
  session: Session,
  { put, remove, order, seen }: BringIn,
  stood: number,
): Promise<void> {
  if (stood !== seen) throw new StoreError('changed', '', words().household.refusal.householdChanged);
  // What was deleted comes back in its old place; the file's order is given below.
  const anew: Session = { ...session, anew: true };
  for (const { kind, id, body } of put) {
    const { version } = await recordOf(anew, kind, id);
    await writeRecord(anew, { kind, id, body, basedOn: version });
  }
  for (const { kind, id } of [...remove].reverse()) {
    const { version, body } = await recordOf(anew, kind, id);
    if (body !== null) await writeRecord(anew, { kind, id, body: null, basedOn: version });
  }
  if (order && (await reordered(session, order)))
    await session.tx
      .updateTable('households')
      .set(({ eb }) => ({ epoch: randomUUID(), seq: eb('seq', '+', 1) }))
      .where('id', '=', session.household)
      .execute();
}

/** Gives the places of each kind to its records in a new order. @returns whether any place changed */
async function reordered({ tx, household }: Session, order: NonNullable<BringIn['order']>): Promise<boolean> {
  const rows = await tx
    .selectFrom('records')
    .select(['kind', 'id', 'place'])
    .where('household', '=', household)
    .where('body', 'is not', null)
    .orderBy('place')
    .execute();
  const places = new Map<string, number[]>();
  const now = new Map(rows.map((r) => [`${r.kind} ${r.id}`, r.place]));
  const wanted = new Set(order.map((o) => `${o.kind} ${o.id}`));
  for (const r of rows) if (wanted.has(`${r.kind} ${r.id}`)) into(places, r.kind, r.place);
  let changed = false;
  const next = new Map<string, number>();
  for (const { kind, id } of order) {
    const i = next.get(kind) ?? 0;
    next.set(kind, i + 1);
    const place = places.get(kind)?.[i];
    if (place === undefined || place === now.get(`${kind} ${id}`)) continue;
    changed = true;
    await tx
      .updateTable('records')
      .set({ place })
      .where('household', '=', household)
      .where('kind', '=', kind)
      .where('id', '=', id)
      .execute();
  }
  return changed;
}

function into(lists: Map<string, number[]>, kind: string, place: number): void {
  const list = lists.get(kind);
  if (list) list.push(place);
  else lists.set(kind, [place]);
}
