/**
 * How much one household keeps at most: far more than a home or a shelter has, little enough that the page, which holds
 * all of it, stays quick, and that no record is too large for one answer.
 */
import { words } from '../../words/words.ts';
import type { Kind } from '../model.ts';
import type { Fault } from './fault-words.ts';

/** Bytes of one record as JSON in UTF-8; an answer holds 200 kB. */
export const MOST_RECORD_BYTES = 150_000;

/** Bytes of all records of a household together. */
const MOST_HOUSEHOLD_BYTES = 100_000_000;

interface Quota {
  readonly most: number;
  /** How to make room. */
  readonly instead: 'delete' | 'beginNew' | 'changeKitchen' | 'changeKeeper';
}

/** Of each kind, those that are there now; deleted ones do not count. */
const QUOTAS: Readonly<Record<Kind, Quota>> = {
  foods: { most: 2_000, instead: 'delete' },
  profiles: { most: 500, instead: 'delete' },
  animals: { most: 500, instead: 'delete' },
  mixes: { most: 1_000, instead: 'delete' },
  versions: { most: 3_000, instead: 'delete' },
  lots: { most: 20_000, instead: 'beginNew' },
  offers: { most: 5_000, instead: 'delete' },
  dryingRuns: { most: 10_000, instead: 'beginNew' },
  batches: { most: 10_000, instead: 'beginNew' },
  kitchen: { most: 1, instead: 'changeKitchen' },
  weighings: { most: 100_000, instead: 'beginNew' },
  feedings: { most: 100_000, instead: 'beginNew' },
  trials: { most: 10_000, instead: 'beginNew' },
  notes: { most: 50_000, instead: 'delete' },
  photos: { most: 500, instead: 'delete' },
  keeper: { most: 1, instead: 'changeKeeper' },
};

const encoder = new TextEncoder();

/** Why a record is too large to be kept; undefined where it is not. @param json the record as it would be stored */
export function tooLarge(json: string): Fault | undefined {
  // No letter takes more than three bytes of UTF-8 per unit of a string.
  if (json.length * 3 <= MOST_RECORD_BYTES) return undefined;
  const bytes = encoder.encode(json).length;
  if (bytes <= MOST_RECORD_BYTES) return undefined;
  const kB = (n: number) => Math.ceil(n / 1000);
  return {
    field: '',
    message: words().household.refusal.tooLarge(kB(bytes), kB(MOST_RECORD_BYTES)),
  };
}

/** Why a household is too full for one more of a kind; undefined where it is not. @param there how many it has now */
export function tooMany(kind: Kind, there: number): Fault | undefined {
  const { most, instead } = QUOTAS[kind];
  if (there < most) return undefined;
  const { many, refusal } = words().household;
  return { field: '', message: refusal.withWay(refusal.tooMany(there, many[kind], most), refusal[instead]) };
}

/** Why a household is too large to take so much more; undefined where it is not. @param bytes with what is to be added */
export function tooFull(bytes: number): Fault | undefined {
  if (bytes <= MOST_HOUSEHOLD_BYTES) return undefined;
  const MB = Math.round(MOST_HOUSEHOLD_BYTES / 1_000_000);
  return {
    field: '',
    message: words().household.refusal.tooFull(MB),
  };
}
