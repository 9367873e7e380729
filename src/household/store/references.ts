/** What records name in one another: a new name must be there, and what is named may not be deleted. */

import { isReferenceNumber } from '../../foods/reference-number.ts';
import type { Batch } from '../../kitchen/model.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';
import { foodOutOfProblem, newReferences } from '../shape/references.ts';
import { StoreError } from '../store-error.ts';
import { called } from './called.ts';
import { recordOf, rowOf, type Session } from './session.ts';
import type { NamedKind } from './tally.ts';

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
  return (await session.tally()).isNamed('food', id);
}

/** Where a record of a kind may be named so that it must stay. */
const USERS: Partial<Record<Kind, { readonly as: NamedKind; readonly by: readonly Kind[] }>> = {
  foods: { as: 'food', by: ['mixes'] },
  profiles: { as: 'profiles', by: ['mixes', 'animals'] },
  lots: { as: 'lots', by: ['batches', 'dryingRuns', 'feedings'] },
};

/** Of what uses a thing, so many are named. */
const MOST_NAMED = 5;

/** @throws StoreError naming what still needs the record */
export async function refuseInUse(session: Session, kind: Kind, id: string): Promise<void> {
  const how = USERS[kind];
  if (!how || isBuiltIn(kind, id)) return;
  const users = (await session.tally()).usersOf(how.as, id, how.by);
  if (users.length === 0) return;
  const { body: named } = await recordOf(session, kind, id);
  const t = words().household.refusal;
  const some: string[] = [];
  for (const user of users.slice(0, MOST_NAMED))
    some.push(called(user.kind, (await recordOf(session, user.kind, user.id)).body));
  const what = t.inUse(called(kind, named), some, users.length - some.length);
  const ways: Partial<Record<Kind, string>> = t.instead;
  throw new StoreError('in-use', '/id', t.withWay(what, ways[kind] ?? t.delete));
}

/** Whether a profile comes with Pouchful, and so is always there. */
function isBuiltIn(kind: Kind, id: string): boolean {
  return kind === 'profiles' && PROFILES.some((p) => p.id === id);
}
