/** The household as this page shows it: what the server has, laid over with what this device changed since. */
import { type Household, KINDS, type Kind } from '../../../household/model.ts';
import { type Body, laidUpon } from './change.ts';
import type { Outbox } from './outbox.ts';
import type { Replica } from './replica.ts';

/**
 * @param before the household as it was shown last; lists of kinds that are not in `changed` stay the same objects
 * @param coming lists that have not come yet: who reads one while drawing is drawn once it is here (React's `Suspense`), so
 * that nothing is ever worked out from a part of them
 */
export function householdView(
  replica: Replica,
  outbox: Outbox,
  changed: ReadonlySet<Kind>,
  before: Household | undefined,
  coming: ReadonlyMap<Kind, Promise<void>>,
): Household {
  if (before && changed.size === 0) return before;
  const household = {};
  for (const kind of KINDS) {
    const wait = coming.get(kind);
    if (wait)
      Object.defineProperty(household, kind, {
        enumerable: true,
        get() {
          throw wait;
        },
      });
    else {
      const value = before && !changed.has(kind) ? before[kind] : listOf(kind, replica, outbox);
      Object.defineProperty(household, kind, { enumerable: true, value });
    }
  }
  return household as Household;
}

function listOf(kind: Kind, replica: Replica, outbox: Outbox): Body[] {
  /** By id, each record with all that waits of it, and with what is to be seen of that. */
  const all = new Map<string, Body>();
  const seen = new Map<string, Body>();
  for (const change of outbox.all()) {
    if (change.kind !== kind) continue;
    const below = all.get(change.id);
    const body = below === undefined ? change.body : laidUpon(below, change);
    all.set(change.id, body);
    if (!change.unseen) seen.set(change.id, body);
  }
  const list: Body[] = [];
  for (const record of replica.list(kind)) {
    const waiting = seen.get(record.id);
    seen.delete(record.id);
    const body = waiting === undefined ? record.body : waiting;
    if (body !== null && !record.unreadable) list.push(body);
  }
  for (const body of seen.values()) if (body !== null) list.push(body);
  return list;
}
