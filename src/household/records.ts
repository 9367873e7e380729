/**
 * A household as versioned records: each object with the version it stands at, so that two devices that change the same
 * thing find out. Pure; the server sends these, the page keeps them.
 */
import type { Kept, Kind } from './model.ts';

/** One record as the store holds it. */
export interface KeptRecord<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
  /** 1 when it is first kept, one more at every change; a deletion is a change too. */
  readonly version: number;
  /** Number of the change that made it so; grows over the whole household, so "all after n" is what n has not seen. */
  readonly seq: number;
  /** Number of the change that first kept it: lists stand in this order. */
  readonly place: number;
  /** null where it is deleted, or cannot be read. */
  readonly body: Kept<K> | null;
  /** Stored, but not to be shown as what it should be: its raw text, and why. */
  readonly unreadable?: { readonly raw: string; readonly why: string };
}

/** A record as it is sent: what follows from the rest is left out where it does. */
export type SentRecord = Omit<KeptRecord, 'id' | 'version' | 'place'> & {
  /** As its body says, where it has one. */
  readonly id?: string;
  /** 1 */
  readonly version?: number;
  /** As `seq` */
  readonly place?: number;
};

/** A record with all that was left out when it was sent. */
export function recordInFull({ kind, seq, body, unreadable, ...left }: SentRecord): KeptRecord {
  const { id = body?.id ?? '', version = 1, place = seq } = left;
  const record = { kind, id, version, seq, place, body };
  return unreadable ? { ...record, unreadable } : record;
}

/** Kinds of which something is written down every day: after some years they are most of a household. */
export const DAILY = ['feedings', 'weighings'] as const satisfies readonly Kind[];
export type Daily = (typeof DAILY)[number];
/** Part of the kinds, asked for apart. */
export type Section = Daily | 'rest';
export const SECTIONS: readonly Section[] = ['rest', ...DAILY];

/** A part of the household, small enough for one answer. */
export interface RecordsPage {
  /** In the order of their `seq`. */
  readonly records: readonly KeptRecord[];
  /** Ask for what comes after this next. */
  readonly seq: number;
  /** Whether there is more already. */
  readonly more: boolean;
  /** Number of the newest change of the household; where only changes up to a number were asked for, none after that. */
  readonly newest: number;
  /** Changes when a backup is put back or everything is brought in anew: numbers seen before mean nothing then. */
  readonly epoch: string;
  /** Beside the first part of a household that has more: where the whole may be cut. */
  readonly cuts?: Cuts;
}

/**
 * Numbers of changes, growing: what of a section lies between one and the next fits one answer, where it is brief. They stay as
 * the household grows.
 */
export type Cuts = { readonly [section in Section]: readonly number[] };

/** What comes after the first part, section by section; all of one in one piece where it is not said where to cut it. */
export function piecesAfter({
  seq,
  newest,
  cuts,
}: RecordsPage): { of: Section; after: number; upTo: number }[] {
  return SECTIONS.flatMap((of) => {
    const between = cuts?.[of].filter((cut) => cut > seq && cut < newest) ?? [];
    return [...between, newest].map((upTo, k) => ({ of, after: between[k - 1] ?? seq, upTo }));
  });
}

/** A change of one record, asked of the store. */
export interface Write<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
  /** null deletes it. */
  readonly body: Kept<K> | null;
  /** The version that its sender saw; 0 where it is new. */
  readonly basedOn: number;
  /** The same for every try at the same write, so that a repeat is not a second write. */
  readonly writeId?: string;
}

/** Who writes, and when. */
export interface By {
  /** Name of the device, as the keeper reads it in the history. */
  readonly device: string;
  /** ISO 8601 time, UTC. */
  readonly at: string;
}

/** What a write came to. */
export interface Written {
  /** The record as it stands now. */
  readonly record: KeptRecord;
  /** What changed with it: mixes that a deleted animal leaves, versions that go with their mix. */
  readonly along: readonly KeptRecord[];
}

/** One line of the history. */
export interface Change {
  readonly seq: number;
  readonly kind: Kind;
  readonly id: string;
  /** The version that it made. */
  readonly version: number;
  readonly what: 'made' | 'changed' | 'deleted' | 'brought back';
  /** Name of the thing at that time, in the keeper's words. */
  readonly name: string;
  readonly at: string;
  readonly device: string;
  /** Changes with the same number were made together, and are taken back together. */
  readonly together: number;
  /** Whether the record stands as this change left it. */
  readonly newest: boolean;
}

/** A part of the history, newest first. */
export interface HistoryPage {
  readonly changes: readonly Change[];
  readonly more: boolean;
}

/** One change with the record before and after it; null where it was not there. */
export interface ChangeDetail extends Change {
  readonly before: unknown;
  readonly after: unknown;
}
