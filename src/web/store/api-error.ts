/** A failure of the server's HTTP interface, with words for people. */
import type { KeptRecord } from '../../household/records.ts';

/** Answers that may be another one later: not paired, too many at once. */
const NOT_FOR_GOOD = [401, 403, 408, 421, 425, 429];

/** One thing that is wrong, and where. */
export interface FieldFault {
  readonly field: string;
  readonly message: string;
}

export class ApiError extends Error {
  readonly field?: string;
  /** HTTP status; 0 when the server could not be reached, or what answered is no Pouchful. */
  readonly status: number;
  /** The record as it stands, where it stands at another version. */
  readonly stands?: KeptRecord;
  /** All that is wrong with a file. */
  readonly faults?: readonly FieldFault[];
  constructor(
    status: number,
    message: string,
    { field, stands, faults }: { field?: string; stands?: KeptRecord; faults?: readonly FieldFault[] } = {},
  ) {
    super(message);
    this.name = 'ApiError';
    this.status = status;
    this.field = field;
    this.stands = stands;
    this.faults = faults;
  }

  /** Whether the same request will never be answered otherwise. */
  get isFinal(): boolean {
    return this.status >= 400 && this.status < 500 && !NOT_FOR_GOOD.includes(this.status);
  }
}
