/** What changed from one state of a record to another, as deep as it can be told. */

import type { Kind } from '../model.ts';
import { isFields, keyed, same } from './merge-record.ts';
import { identityAt, isWhole } from './rules.ts';

/** One thing that changed. */
export interface Difference {
  /** Names of fields, and items of lists as they are (or were), from the record inward. */
  readonly path: readonly (string | { readonly item: unknown })[];
  /** undefined where it was not there. */
  readonly was: unknown;
  /** undefined where it is not there any more. */
  readonly is: unknown;
}

/** @param before null where the record was not there @param after null where it is not there any more */
export function differencesOf(kind: Kind, before: unknown, after: unknown): Difference[] {
  const found: Difference[] = [];
  compare(before ?? undefined, after ?? undefined, [], []);
  return found;

  function compare(was: unknown, is: unknown, path: Difference['path'], steps: readonly string[]): void {
    if (same(was, is)) return;
    if (!isWhole(kind, steps) || steps.at(-1) === 'shares') {
      if (isFields(was) && isFields(is)) {
        for (const key of new Set([...Object.keys(was), ...Object.keys(is)]))
          compare(was[key], is[key], [...path, key], [...steps, key]);
        return;
      }
      if (Array.isArray(was) && Array.isArray(is)) {
        const [before, after] = [was, is].map((list) => keyed(list, identityAt(steps)));
        // Lists of plain words are told as lists.
        const told = [...was, ...is].every((item) => typeof item === 'object');
        if (before && after && told) {
          const changed = found.length;
          for (const key of new Set([...before.keys(), ...after.keys()])) {
            const item = after.get(key) ?? before.get(key);
            compare(before.get(key), after.get(key), [...path, { item }], [...steps, key]);
          }
          if (found.length > changed) return;
        }
      }
    }
    found.push({ path, was, is });
  }
}
