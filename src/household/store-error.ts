import type { Batch } from '../kitchen/model.ts';

/** A write that the household refuses; nothing was changed. */
export class StoreError extends Error {
  readonly kind:
    | 'missing'
    | 'in use'
    | 'invalid'
    | 'finished'
    | 'changed'
    // The file is at fault: see file/file-fault.ts.
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

/** A batch that another device went on with: what was to be written does not fit it any more. */
export class BatchOvertaken extends StoreError {
  /** As it stands. */
  readonly batch: Batch;
  constructor(batch: Batch) {
    super('changed', '', 'another device went on with this batch; look at how it stands now');
    this.batch = batch;
  }
}
