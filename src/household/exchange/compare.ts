/** What bringing a file in would change: new, the same, different field by field, and gone. */

import { pointerOf } from '../../formulation/problem/json-pointer.ts';
import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { KINDS } from '../model.ts';
import { canonicalJson } from './canonical-json.ts';
import { keyOf } from './household-file.ts';
import type { Entry } from './read-household.ts';
import type { FieldChange, ImportMode, RecordChange } from './wire.ts';

export interface Comparison {
  readonly put: readonly Entry[];
  readonly remove: readonly Entry[];
  readonly changes: readonly RecordChange[];
  /** Records that stand as in the file. */
  readonly same: number;
}

const MOST_FIELDS = 12;
const MOST_SHOWN = 80;

export function compare(here: readonly Entry[], file: readonly Entry[], mode: ImportMode): Comparison {
  const there = new Map(here.map((e) => [keyOf(e), e]));
  const incoming = new Set(file.map(keyOf));
  const put: Entry[] = [];
  const changes: RecordChange[] = [];
  let same = 0;
  for (const entry of inFileOrder(file)) {
    const now = there.get(keyOf(entry));
    const about = { kind: entry.kind, id: entry.id, name: nameOf(entry) };
    if (!now) {
      put.push(entry);
      changes.push({ ...about, what: 'new' });
    } else if (canonicalJson(now.body) === canonicalJson(entry.body)) same++;
    else {
      const fields = differences(now.body, entry.body);
      const listed = {
        fields: fields.slice(0, MOST_FIELDS),
        ...(fields.length > MOST_FIELDS && { moreFields: fields.length - MOST_FIELDS }),
      };
      const finished =
        mode === 'update' && entry.kind === 'batches' && (now.body as Batch).finishedAt !== undefined;
      if (mode === 'add' || finished)
        changes.push({
          ...about,
          what: 'kept',
          ...listed,
          ...(finished && { why: words().exchange.reading.finished }),
        });
      else {
        put.push(entry);
        changes.push({ ...about, what: 'different', ...listed });
      }
    }
  }
  const remove = mode === 'replace' ? here.filter((e) => !incoming.has(keyOf(e))) : [];
  for (const e of inFileOrder(remove))
    changes.push({ kind: e.kind, id: e.id, name: nameOf(e), what: 'gone' });
  return { put, remove, changes, same };
}

function inFileOrder(entries: readonly Entry[]): Entry[] {
  return KINDS.flatMap((kind) => entries.filter((e) => e.kind === kind));
}

/** What the keeper calls it. */
export function nameOf({ kind, id, body }: Entry): string {
  if ('name' in body) return body.name;
  return kind === 'kitchen' ? words().exchange.reading.theKitchen : id;
}

function differences(before: unknown, after: unknown): FieldChange[] {
  const found: FieldChange[] = [];
  walk(before, after, []);
  return found;

  function walk(a: unknown, b: unknown, path: readonly (string | number)[]): void {
    if (canonicalJson(a) === canonicalJson(b) && (a === undefined) === (b === undefined)) return;
    const deeper = isTree(a) && isTree(b) && Array.isArray(a) === Array.isArray(b);
    if (!deeper) {
      found.push({
        field: pointerOf(path),
        ...(a !== undefined && { before: short(a) }),
        ...(b !== undefined && { after: short(b) }),
      });
      return;
    }
    const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
    for (const key of keys) walk(at(a, key), at(b, key), [...path, key]);
  }
}

function isTree(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

function at(tree: object, key: string): unknown {
  return Object.hasOwn(tree, key) ? (tree as Record<string, unknown>)[key] : undefined;
}

function short(value: unknown): string {
  const json = canonicalJson(value);
  return json.length > MOST_SHOWN ? `${json.slice(0, MOST_SHOWN - 3)}...` : json;
}
