/** Everything that bringing a file in would do, worked out before any of it is done. */
import type { Fault } from '../shape/fault-words.ts';
import { type Comparison, compare } from './compare.ts';
import { goneIn, keyOf } from './household-file.ts';
import {
  atOnce,
  type Entry,
  faultsTogether,
  type ReadHousehold,
  readingHousehold,
} from './read-household.ts';
import type { ImportMode } from './wire.ts';

export type ImportPlan =
  | { readonly ok: false; readonly faults: readonly Fault[] }
  | ({
      readonly ok: true;
      readonly leftOut: ReadHousehold['unreadable'];
      readonly entries: readonly Entry[];
    } & Comparison);

/**
 * @param text the file
 * @param here what the household holds and can be read
 */
export function planImport(text: string, here: readonly Entry[], mode: ImportMode): ImportPlan {
  return atOnce(planningImport(text, here, mode));
}

/** As {@link planImport}, in parts: a large file takes seconds, in which others want to be answered too. */
export function* planningImport(
  text: string,
  here: readonly Entry[],
  mode: ImportMode,
): Generator<void, ImportPlan> {
  const reading = yield* readingHousehold(text);
  if (!reading.ok) return reading;
  const { entries, gone, unreadable } = reading.household;
  const comparison = compare(here, entries, mode);
  const replaced = new Map(comparison.put.map((e) => [keyOf(e), e]));
  const there = new Set(here.map(keyOf));
  const asItWouldStand =
    mode === 'replace'
      ? entries
      : [
          ...here.map((e) => replaced.get(keyOf(e)) ?? e),
          ...comparison.put.filter((e) => !there.has(keyOf(e))),
        ];
  const known = mode === 'replace' ? gone : [...gone, ...goneIn(here)];
  const added = mode === 'replace' ? entries : comparison.put;
  const faults = faultsTogether(asItWouldStand, added, known, unreadable);
  return faults.length > 0
    ? { ok: false, faults }
    : { ok: true, leftOut: unreadable, entries, ...comparison };
}
