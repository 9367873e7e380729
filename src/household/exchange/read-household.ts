/** A household file read and checked as a whole, before anything of it is written. */
import { words } from '../../words/words.ts';
import { type Kept, KINDS, type Kind } from '../model.ts';
import { checkRecord } from '../shape/check-record.ts';
import type { Fault } from '../shape/fault-words.ts';
import { isNestedTooDeep } from '../shape/plain-json.ts';
import { tooFull, tooMany } from '../shape/quotas.ts';
import { FORMAT_VERSION, HOUSEHOLD_FORMAT } from './format.ts';
import { type Gone, goneIn, keyOf, oddFoodOf } from './household-file.ts';
import { upgraded } from './upgrades.ts';

export interface Entry<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
  readonly body: Kept<K>;
}

export interface ReadHousehold {
  readonly entries: readonly Entry[];
  /** What its records name that was gone already when the file was made. */
  readonly gone: readonly Gone[];
  /** Records that were not readable where the file was made: they stay in the file, and are not taken in. */
  readonly unreadable: readonly { readonly kind: string; readonly id: string }[];
}

export type HouseholdReading =
  | { readonly ok: true; readonly household: ReadHousehold }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Most faults told at once. */
const MOST_FAULTS = 20;

/** Records that are looked at in one go. */
const IN_ONE_GO = 50;

export function readHouseholdFile(text: string): HouseholdReading {
  return atOnce(readingHousehold(text));
}

/** Carries through what is done in parts. */
export function atOnce<T>(work: Generator<void, T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value as T;
  }
}

/** As {@link readHouseholdFile}, in parts: whoever carries it through may do other things between them. */
export function* readingHousehold(text: string): Generator<void, HouseholdReading> {
  const file = readJson(text, HOUSEHOLD_FORMAT);
  if ('faults' in file) return { ok: false, faults: file.faults };
  const { records, gone = [] } = file.json;
  if (!Array.isArray(records)) return refused('/records', words().exchange.reading.noRecords);
  if (!Array.isArray(gone)) return refused('/gone', words().exchange.reading.goneList);
  const faults: Fault[] = [];
  const entries: Entry[] = [];
  const unreadable: { kind: string; id: string }[] = [];
  const seen = new Map<string, number>();
  for (const [i, record] of records.entries()) {
    if (faults.length >= MOST_FAULTS) break;
    if (i % IN_ONE_GO === 0) yield;
    const read = readRecord(record, `/records/${i}`);
    if ('field' in read) {
      faults.push(read);
      continue;
    }
    const before = seen.get(keyOf(read));
    if (before !== undefined)
      faults.push({
        field: `/records/${i}/id`,
        message: words().exchange.reading.twice(read.id, read.kind, `/records/${before}`),
      });
    seen.set(keyOf(read), i);
    if (read.body === undefined) unreadable.push({ kind: read.kind, id: read.id });
    else entries.push({ kind: read.kind, id: read.id, body: read.body });
  }
  const named = gone.flatMap((g: unknown, i): Gone[] => {
    if (isGone(g)) return [{ kind: g.kind, id: g.id }];
    faults.push({ field: `/gone/${i}`, message: words().exchange.reading.needsKindAndId });
    return [];
  });
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, household: { entries, gone: named, unreadable } };
}

/**
 * What is wrong between records: names of what is not there, foods that a batch does not have, more than a household
 * holds.
 * @param entries as the household would stand
 * @param added whose names are looked at
 */
export function faultsTogether(
  entries: readonly Entry[],
  added: readonly Entry[],
  gone: readonly Gone[],
  unreadable: ReadHousehold['unreadable'] = [],
): Fault[] {
  const faults: Fault[] = [];
  const known = new Set(gone.map(keyOf));
  const left = unreadable.map(({ kind, id }) => ({
    kind: kind as Kind,
    id,
    body: null,
    unreadable: { raw: '', why: '' },
  }));
  const lacking = goneIn([...entries, ...left]).filter((g) => !known.has(keyOf(g)));
  const missing = new Set(lacking.map(keyOf));
  for (const entry of added) {
    if (faults.length >= MOST_FAULTS) return faults;
    if (missing.size > 0)
      for (const g of goneIn([entry]))
        if (g.kind !== 'batches' && missing.has(keyOf(g)))
          faults.push({
            field: `${entry.kind} "${entry.id}"`,
            message:
              g.kind === 'food'
                ? words().exchange.reading.namesFood(g.id)
                : words().exchange.reading.names(g.kind, g.id),
          });
    const odd = oddFoodOf(entry);
    if (odd && !known.has(keyOf({ kind: 'batches', id: entry.id })))
      faults.push({ field: `${entry.kind} "${entry.id}" ${odd.field}`, message: odd.message });
  }
  for (const kind of KINDS) {
    const n = entries.filter((e) => e.kind === kind).length;
    const many = n > 0 ? tooMany(kind, n - 1) : undefined;
    if (many) faults.push(many);
  }
  const full = tooFull(entries.reduce((sum, e) => sum + JSON.stringify(e.body).length, 0));
  return full ? [...faults, full] : faults;
}

/** The JSON of a file of a format, brought to the newest version; or what is wrong with it as a whole. */
export function readJson(
  text: string,
  format: string,
): { json: Record<string, unknown> } | { faults: readonly Fault[] } {
  const t = words().exchange.reading;
  const wrong = (field: string, message: string) => ({ faults: [{ field, message }] });
  if (text.trim() === '') return wrong('', t.empty);
  if (isNestedTooDeep(text)) return wrong('', t.deep);
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    return wrong('', t.noJson((error as Error).message));
  }
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return wrong('', t.noExport);
  const file = json as Record<string, unknown>;
  if (file.format !== format) {
    const told =
      typeof file.format === 'string' ? t.otherFormat(file.format.slice(0, 60), format) : t.noFormat(format);
    return wrong('/format', told);
  }
  const { version } = file;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return wrong('/version', t.noVersion);
  if (version > FORMAT_VERSION) return wrong('/version', t.tooNew(version, FORMAT_VERSION));
  return { json: upgraded(file, version) };
}

function refused(field: string, message: string): HouseholdReading {
  return { ok: false, faults: [{ field, message }] };
}

function readRecord(record: unknown, at: string): Fault | { kind: Kind; id: string; body?: Kept<Kind> } {
  const t = words().exchange.reading;
  if (typeof record !== 'object' || record === null || Array.isArray(record))
    return { field: at, message: t.needsKindIdBody };
  const { kind, id, body, unreadable } = record as Record<string, unknown>;
  if (!isKind(kind))
    return {
      field: `${at}/kind`,
      message: t.noKind(short(kind), KINDS.join(', ')),
    };
  if (typeof id !== 'string' || id === '') return { field: `${at}/id`, message: t.noId(short(id)) };
  if (typeof unreadable === 'string' && body === undefined) return { kind, id };
  const fault = checkRecord(kind, body);
  if (fault) return { field: `${at}/body${fault.field}`, message: `${kind} "${id}": ${fault.message}` };
  const kept = body as Kept<Kind>;
  if (kept.id !== id)
    return {
      field: `${at}/body/id`,
      message: t.otherId(kept.id, id),
    };
  return { kind, id, body: kept };
}

function isKind(kind: unknown): kind is Kind {
  return KINDS.some((k) => k === kind);
}

const NAMED_KINDS: readonly string[] = [
  'profiles',
  'animals',
  'mixes',
  'lots',
  'dryingRuns',
  'food',
  'batches',
];

function isGone(g: unknown): g is Gone {
  if (typeof g !== 'object' || g === null) return false;
  const { kind, id } = g as Record<string, unknown>;
  return typeof kind === 'string' && NAMED_KINDS.includes(kind) && typeof id === 'string' && id.length <= 200;
}

function short(value: unknown): string {
  return (JSON.stringify(value) ?? 'nothing').slice(0, 60);
}
