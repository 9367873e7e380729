/** A write that the household refuses; nothing was changed. */
export class StoreError extends Error {
  readonly kind: 'missing' | 'in use' | 'invalid';
  /** JSON pointer into what was to be written, or "/id" for a deletion. */
  readonly field: string;
  constructor(kind: StoreError['kind'], field: string, message: string) {
    super(message);
    this.name = 'StoreError';
    this.kind = kind;
    this.field = field;
  }
}
