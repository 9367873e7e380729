/** What records name in one another: a new name must be there, and what is named may not be deleted. */

import { isReferenceNumber } from '../../foods/reference-number.ts';
import type { Batch } from '../../kitchen/model.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { words } from '../../words/words.ts';
import type { Kept, Kind, Mix, MixVersion } from '../model.ts';
import { foodOutOfProblem, foodsNamedBy, newReferences, referencesOf } from '../shape/references.ts';
import { StoreError } from '../store-error.ts';
import { called } from './called.ts';
import { recordOf, rowOf, rowsOf, type Session } from './session.ts';

/**
 * Refuses names of things that are not there. What the record named before may have gone since: a batch that was fed
 * keeps its animals.
 * @throws StoreError naming the field
 */
export async function requireReferences(
  session: Session,
  kind: Kind,
  body: Kept<Kind>,
  before: Kept<Kind> | null,
): Promise<void> {
  const found = new Set<string>();
  for (const named of newReferences(kind, body, before)) {
    const key = `${named.kind} ${named.id}`;
    if (found.has(key)) continue;
    found.add(key);
    if (
      named.kind === 'food' ? await isKnown(session, named.id) : await isThere(session, named.kind, named.id)
    )
      continue;
    const { kinds, refusal } = words().household;
    const noun = named.kind === 'food' ? refusal.food : kinds[named.kind];
    throw new StoreError('invalid', named.field, refusal.noSuch(noun, named.id));
  }
  if (kind !== 'batches') return;
  const odd = foodOutOfProblem(body as Batch, before as Batch | null);
  if (odd) throw new StoreError('invalid', odd.field, odd.message);
}

async function isThere(session: Session, kind: Kind, id: string): Promise<boolean> {
  return isBuiltIn(kind, id) || (await rowOf(session, kind, id))?.body != null;
}

async function isKnown(session: Session, food: string): Promise<boolean> {
  const { foods } = session.known;
  const known = foods.get(food) ?? (await isKnownFood(session, food));
  foods.set(food, known);
  return known;
}

/** Whether a food is one of the tables, the keeper's own, or one that a record calls so. */
async function isKnownFood(session: Session, id: string): Promise<boolean> {
  if (isReferenceNumber(id) || (await isThere(session, 'foods', id))) return true;
  for (const kind of ['mixes', 'versions', 'batches'] as const)
    for (const row of await rowsNaming(session, kind, id)) {
      const { body } = session.reader.record(row);
      if (body && foodsNamedBy(kind, body as Mix | MixVersion | Batch).includes(id)) return true;
    }
  return false;
}

/** Rows of a kind that have the id in them somewhere: most have not, and need not be read. */
async function rowsNaming(session: Session, kind: Kind, id: string) {
  const inText = JSON.stringify(id);
  return (await rowsOf(session, kind)).filter((row) => row.body?.includes(inText));
}

/** Where a record of a kind may be named so that it must stay. */
const USERS: Partial<Record<Kind, readonly Kind[]>> = {
  foods: ['mixes'],
  profiles: ['mixes', 'animals'],
  lots: ['batches', 'dryingRuns', 'feedings'],
};

/** Of what uses a thing, so many are named. */
const MOST_NAMED = 5;

/** @throws StoreError naming what still needs the record */
export async function refuseInUse(session: Session, kind: Kind, id: string): Promise<void> {
  const { body: named } = await recordOf(session, kind, id);
  if (isBuiltIn(kind, id)) return;
  const users: string[] = [];
  for (const other of USERS[kind] ?? []) {
    for (const row of await rowsNaming(session, other, id)) {
      const { body } = session.reader.record(row);
      if (body && names(other, body, kind, id)) users.push(called(other, body));
    }
  }
  if (users.length === 0) return;
  const t = words().household.refusal;
  const some = users.slice(0, MOST_NAMED);
  const what = t.inUse(called(kind, named), some, users.length - some.length);
  const ways: Partial<Record<Kind, string>> = t.instead;
  throw new StoreError('in-use', '/id', t.withWay(what, ways[kind] ?? t.delete));
}

function names(other: Kind, body: Kept<Kind>, kind: Kind, id: string): boolean {
  if (kind === 'foods') return foodsNamedBy(other, body).includes(id);
  return referencesOf(other, body).some((named) => named.kind === kind && named.id === id);
}

/** Whether a profile comes with Pouchful, and so is always there. */
function isBuiltIn(kind: Kind, id: string): boolean {
  return kind === 'profiles' && PROFILES.some((p) => p.id === id);
}
