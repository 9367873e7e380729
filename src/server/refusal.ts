/** Errors as the server says them: which field, what it holds, and the way out. */
import type { z } from '@hono/zod-openapi';
import type { KeptRecord } from '../household/records.ts';
import { faultOf } from '../household/shape/fault-words.ts';
import { Overtaken, type StoreError } from '../household/store.ts';

export interface Refusal {
  readonly status: 400 | 404 | 409 | 503 | 507;
  readonly body: {
    readonly field: string;
    readonly message: string;
    /** As it stands, where it was changed meanwhile. */
    readonly stands?: KeptRecord;
  };
}

/** The first thing wrong with an input, in words. @param input what was sent */
export function refusalOfInput(error: z.core.$ZodError, input: unknown): Refusal {
  const { field, message } = faultOf(error, input);
  return refusal(400, field, message);
}

const STATUS_OF = {
  missing: 404,
  'in-use': 409,
  finished: 409,
  invalid: 400,
  changed: 409,
  'too many': 409,
  busy: 503,
  full: 507,
  'read-only': 503,
  damaged: 503,
} as const satisfies Record<StoreError['kind'], Refusal['status']>;

/** What the store refused. */
export function refusalOfStore(error: StoreError): Refusal {
  const { status, body } = refusal(STATUS_OF[error.kind], error.field, error.message);
  return { status, body: error instanceof Overtaken ? { ...body, stands: error.stands } : body };
}

export function refusal(status: Refusal['status'], field: string, message: string): Refusal {
  return { status, body: { field, message } };
}
