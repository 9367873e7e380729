/** A change that this device made and the server does not have yet, and what becomes of it when others change the same. */
import { mergeRecord, same } from '../../../household/merge/merge-record.ts';
import type { Kept, Kind } from '../../../household/model.ts';
import type { Batch } from '../../../kitchen/model.ts';

/** One object of the household; null where it is not there. */
export type Body = Kept<Kind> | null;

/** How a record stands on the server. */
export interface Standing {
  /** Of the household that the version belongs to. */
  readonly epoch: string;
  /** 0 where it was never there. */
  readonly version: number;
  readonly body: Body;
}

export interface Change {
  /** Its place in the storage of the device. */
  readonly slot: string;
  readonly kind: Kind;
  readonly id: string;
  /** The same for every try at the same content. */
  readonly writeId: string;
  /** What it was made upon. Its version is {@link FOLLOWS} while that is a change that waits too. */
  readonly base: Standing;
  /** The record as it is to be; null deletes it. */
  readonly body: Body;
  /** ISO 8601 time at which it was made. */
  readonly at: string;
  /** Shown only once the server has it. */
  readonly unseen?: true;
  /** A change of the same record that follows takes its place while it was not sent: sliders make many. */
  readonly joins?: true;
  /** Sent, and nobody knows yet what became of it. */
  readonly sent?: true;
  /** Both changed the same thing: how it stands elsewhere, until the keeper has chosen. */
  readonly theirs?: Standing;
}

/** Stands for the version that the change before it will make. */
export const FOLLOWS = -1;

/** What became of changes of one record when it came to stand otherwise. */
export interface Rebased {
  readonly kept: readonly Change[];
  /** There is nothing left of them to be made: the record stands so already. */
  readonly made: readonly Change[];
  /** They are part of the first of `kept` now. */
  readonly joined: readonly Change[];
}

/**
 * Puts the changes of one record upon how the record stands now. Changes that were not made upon the one before them (of
 * another page, or of a form that was opened earlier) wait until those before are made.
 * @param ask whether the keeper is asked where both changed the same thing; else this device's change stands
 */
export function rebased(
  chain: readonly Change[],
  there: Standing,
  { ask, newId }: { ask: boolean; newId(): string },
): Rebased {
  const made: Change[] = [];
  for (let at = 0; at < chain.length; ) {
    const run = firstRun(chain.slice(at));
    at += run.length;
    const after = runRebased(run, there, { ask, newId });
    made.push(...after.made);
    if (after.kept.length === 0) continue;
    const later = chain.slice(at).map((c) => ({ ...c, base: { ...c.base, version: FOLLOWS } }));
    return { kept: [...after.kept, ...later], made, joined: after.joined };
  }
  return { kept: [], made, joined: [] };
}

/** The first of them and those that were each made upon the one before. */
function firstRun(chain: readonly Change[]): readonly Change[] {
  const end = chain.findIndex((change, i) => i > 0 && !same(change.base.body, chain[i - 1]?.body));
  return end < 0 ? chain : chain.slice(0, end);
}

function runRebased(
  run: readonly Change[],
  there: Standing,
  { ask, newId }: { ask: boolean; newId(): string },
): Rebased {
  const [first] = run;
  const last = run.at(-1);
  if (!first || !last) return { kept: [], made: [], joined: [] };
  const { kind } = first;
  const one = ask && collide(run, there) ? asOne(first, last) : undefined;
  if (one) {
    const { conflicts } = mergeRecord(kind, one.base.body, one.body, there.body);
    if (conflicts.length > 0 && !stillPours(kind, one.base.body, one.body, there.body)) {
      const waiting = { ...one, theirs: there, writeId: newId() };
      return { kept: [waiting], made: [], joined: run.slice(1) };
    }
  }
  const kept: Change[] = [];
  const made: Change[] = [];
  let below = there;
  for (const change of one ? [one] : run) {
    const { merged } = mergeRecord(kind, change.base.body, change.body, below.body);
    if (same(merged, below.body)) {
      made.push(change);
      continue;
    }
    const { sent: _, theirs: __, ...rest } = change;
    kept.push({ ...rest, base: below, body: merged, writeId: newId() });
    below = { epoch: there.epoch, version: FOLLOWS, body: merged };
  }
  const joined = one ? run.slice(1) : [];
  return kept.length > 0 ? { kept, made, joined } : { kept, made: [...made, ...joined], joined: [] };
}

/**
 * How a record stands with changes that wait, each laid upon the one before it; the later one stands where they changed
 * the same thing. Changes of another page may not know of each other: none of them takes away what it did not see.
 * @param chain changes of one record, in their order
 */
export function laidOver(chain: readonly Change[]): Body {
  const [first, ...rest] = chain;
  return rest.reduce<Body>((below, change) => laidUpon(below, change), first?.body ?? null);
}

/** @param below the record with all that waits before the change */
export function laidUpon(below: Body, { kind, base, body }: Change): Body {
  return same(base.body, below) ? body : mergeRecord(kind, base.body, body, below).merged;
}

/** Whether one of them changes what was changed otherwise there. */
function collide(chain: readonly Change[], there: Standing): boolean {
  let below = there.body;
  for (const { kind, base, body } of chain) {
    const { merged, conflicts } = mergeRecord(kind, base.body, body, below);
    if (conflicts.length > 0) return true;
    below = merged;
  }
  return false;
}

/** All of them as one change. */
function asOne({ sent: _, theirs: __, ...first }: Change, last: Change): Change {
  return { ...first, body: last.body };
}

/** Whether food went into a bowl whose record was deleted elsewhere: what is in the bowl is kept, unasked. */
function stillPours(kind: Kind, base: Body, mine: Body, theirs: Body): boolean {
  if (kind !== 'batches' || theirs !== null || mine === null) return false;
  return (mine as Batch).pours.length > ((base as Batch | null)?.pours.length ?? 0);
}

/** Fields that only name or note a thing: nothing else of a record goes by them. */
const ASIDE = ['name', 'note'];

/**
 * Many small changes that became one, without the name that is the only thing refused of them; undefined where they have
 * to be refused whole.
 * @param field JSON pointer to what was refused
 */
export function withoutRefused(
  change: Change,
  field: string | undefined,
  newId: () => string,
): Change | undefined {
  const { base, body, joins } = change;
  const key = ASIDE.find((k) => field === `/${k}`);
  if (!joins || key === undefined || base.body === null || body === null) return undefined;
  const before = base.body as object as Record<string, unknown>;
  const { [key]: refused, ...rest } = body as object as Record<string, unknown>;
  if (same(refused, before[key])) return undefined;
  const left: Record<string, unknown> = { ...rest, ...(key in before && { [key]: before[key] }) };
  // When it was changed says nothing where nothing was.
  if (same({ ...left, updatedAt: '' }, { ...before, updatedAt: '' })) return undefined;
  const { sent: _, ...kept } = change;
  return { ...kept, writeId: newId(), body: left as object as Body };
}

/** What both changed differently, as JSON pointers; "" where one of them deleted the record. */
export function collisions({ kind, base, body, theirs }: Change): readonly string[] {
  return theirs ? mergeRecord(kind, base.body, body, theirs.body).conflicts : [];
}

/** The change once the keeper has chosen; undefined where nothing is left of it. */
export function chosen(change: Change, side: 'mine' | 'theirs', newId: () => string): Change | undefined {
  const { theirs, sent: _, ...rest } = change;
  if (!theirs) return change;
  const { merged } = mergeRecord(change.kind, change.base.body, change.body, theirs.body, side);
  return same(merged, theirs.body) ? undefined : { ...rest, base: theirs, body: merged, writeId: newId() };
}
