import { words } from '../words/words.ts';
import type { KeptRecord } from './records.ts';

/** A write that the household refuses; nothing was changed. */
export class StoreError extends Error {
  readonly kind:
    | 'missing'
    | 'in-use'
    | 'invalid'
    | 'finished'
    | 'changed'
    /** No more of its kind, or no more in all, may be kept. */
    | 'too many'
    /** Of the file: another program holds it, the disk is full, it may not be written, it is damaged. */
    | 'busy'
    | 'full'
    | 'read-only'
    | 'damaged';
  /** JSON pointer into what was to be written, or "/id" for a deletion. */
  readonly field: string;
  constructor(kind: StoreError['kind'], field: string, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StoreError';
    this.kind = kind;
    this.field = field;
  }
}

/** The record stands otherwise than its sender saw it. */
export class Overtaken extends StoreError {
  /** As it stands; version 0 where there is none. */
  readonly stands: KeptRecord;
  constructor(stands: KeptRecord) {
    super('changed', '', overtakenWords(stands));
    this.stands = stands;
  }
}

function overtakenWords({ version, body }: KeptRecord): string {
  const t = words().household.refusal;
  if (version === 0) return t.newRecord;
  return body === null ? t.deletedMeanwhile : t.changedMeanwhile;
}
