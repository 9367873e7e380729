/**
 * One record changed in two places: what only one side changed is taken from it; what both changed differently is a
 * conflict that a person decides.
 */
import { pointerOf } from '../../formulation/problem/json-pointer.ts';
import type { Kept, Kind } from '../model.ts';
import { identityAt, isWhole, laterWins } from './rules.ts';

export interface Merged<T> {
  /** Both changes together; where they collide, the preferred side's. */
  readonly merged: T | null;
  /** JSON pointers to what both changed differently, deepest first known; "" where one side deleted the record. */
  readonly conflicts: readonly string[];
}

type Side = 'mine' | 'theirs';
type Json = unknown;
type Fields = { readonly [key: string]: Json };
/** A thing that is not there, told apart from null. */
const NOTHING = undefined;

/**
 * Merges two changes of one record.
 * @param base the record before both; null where it was not there
 * @param mine as one side left it; null where it deleted the record
 * @param theirs as the other left it
 * @param prefer whose value stands in `merged` where both changed the same thing
 */
export function mergeRecord<K extends Kind>(
  kind: K,
  base: Kept<K> | null,
  mine: Kept<K> | null,
  theirs: Kept<K> | null,
  prefer: Side = 'mine',
): Merged<Kept<K>> {
  if (mine === null || theirs === null) {
    if (same(mine, theirs) || same(mine, base)) return { merged: theirs, conflicts: [] };
    if (same(theirs, base)) return { merged: mine, conflicts: [] };
    return { merged: prefer === 'mine' ? mine : theirs, conflicts: [''] };
  }
  const conflicts: string[] = [];
  const merged = merge(base ?? {}, mine, theirs, []);
  return { merged: merged as Kept<K>, conflicts };

  function merge(base: Json, mine: Json, theirs: Json, path: readonly (string | number)[]): Json {
    if (same(mine, theirs) || same(base, theirs)) return mine;
    if (same(base, mine)) return theirs;
    if (laterWins(path)) return String(mine) > String(theirs) ? mine : theirs;
    if (!isWhole(kind, path)) {
      if (isFields(mine) && isFields(theirs) && (isFields(base) || base === NOTHING))
        return mergeFields(base ?? {}, mine, theirs, path);
      if (Array.isArray(mine) && Array.isArray(theirs) && (Array.isArray(base) || base === NOTHING)) {
        const list = mergeLists(base ?? [], mine, theirs, path);
        if (list) return list;
      }
    }
    conflicts.push(pointerOf(path));
    return prefer === 'mine' ? mine : theirs;
  }

  function mergeFields(base: Fields, mine: Fields, theirs: Fields, path: readonly (string | number)[]): Json {
    const merged: [string, Json][] = [];
    for (const key of new Set([...Object.keys(theirs), ...Object.keys(mine)])) {
      const value = merge(own(base, key), own(mine, key), own(theirs, key), [...path, key]);
      if (value !== NOTHING) merged.push([key, value]);
    }
    return Object.fromEntries(merged);
  }

  /** Merges lists whose items are told apart by something of their own; undefined where they are not. */
  function mergeLists(
    base: readonly Json[],
    mine: readonly Json[],
    theirs: readonly Json[],
    path: readonly (string | number)[],
  ): Json[] | undefined {
    const identity = identityAt(path);
    const [was, here, there] = [base, mine, theirs].map((list) => keyed(list, identity));
    if (!was || !here || !there) return undefined;
    const reordered = (list: ReadonlyMap<string, Json>) => !sameOrder([...was.keys()], [...list.keys()]);
    // Both put things in another order: nobody can say which is meant.
    if (reordered(here) && reordered(there) && !sameOrder([...here.keys()], [...there.keys()]))
      return undefined;
    const [first, second] = reordered(here) ? [here, there] : [there, here];
    const merged: Json[] = [];
    for (const key of new Set([...first.keys(), ...second.keys()])) {
      const value = merge(was.get(key), here.get(key), there.get(key), [...path, placeOf(key, mine, theirs)]);
      if (value !== NOTHING) merged.push(value);
    }
    return merged;

    function placeOf(key: string, ...lists: (readonly Json[])[]): number {
      for (const list of lists) {
        const at = list.findIndex((item) => identity(item) === key);
        if (at >= 0) return at;
      }
      return 0;
    }
  }
}

/** Items of a list by what tells them apart; undefined where an item has nothing of the kind or two have the same. */
export function keyed(
  list: readonly Json[],
  identity: (item: Json) => string | undefined,
): ReadonlyMap<string, Json> | undefined {
  const items = new Map<string, Json>();
  for (const item of list) {
    const key = identity(item);
    if (key === undefined || items.has(key)) return undefined;
    items.set(key, item);
  }
  return items;
}

/** Whether what two lists have in common stands in the same order in both. */
function sameOrder(a: readonly string[], b: readonly string[]): boolean {
  const inA = new Set(a);
  const inB = new Set(b);
  const commonA = a.filter((key) => inB.has(key));
  const commonB = b.filter((key) => inA.has(key));
  return commonA.every((key, i) => key === commonB[i]);
}

/** Equal as JSON, whatever the order of fields. */
export function same(a: Json, b: Json): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((item, i) => same(item, b[i]));
  if (!isFields(a) || !isFields(b)) return false;
  const keys = Object.keys(a).filter((key) => a[key] !== NOTHING);
  const others = Object.keys(b).filter((key) => b[key] !== NOTHING);
  return keys.length === others.length && keys.every((key) => same(a[key], own(b, key)));
}

function own(fields: Fields, key: string): Json {
  return Object.hasOwn(fields, key) ? fields[key] : NOTHING;
}

/** Whether a value of JSON is an object with fields. */
export function isFields(value: Json): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
