/** Errors as the server says them: which field, what it holds, and the way out. */
import type { z } from '@hono/zod-openapi';
import { pointerOf } from '../formulation/problem/json-pointer.ts';
import { BatchOvertaken, type StoreError } from '../household/store.ts';
import type { Batch } from '../kitchen/model.ts';

export interface Refusal {
  readonly status: 400 | 404 | 409 | 412 | 503 | 507;
  readonly body: {
    readonly field: string;
    readonly message: string;
    /** As it stands, where another device went on with it. */
    readonly batch?: Batch;
  };
}

/** The first thing wrong with an input, in words. @param input what was sent */
export function refusalOfInput(error: z.core.$ZodError, input: unknown): Refusal {
  const [first] = error.issues;
  if (!first) throw new Error('an input was refused for no reason', { cause: error });
  const issue = deepest(first);
  const path = issue.code === 'unrecognized_keys' ? [...issue.path, ...issue.keys.slice(0, 1)] : issue.path;
  const field = pointerOf(path);
  const value = path.reduce<unknown>(
    (at, step) => (at as Record<PropertyKey, unknown> | undefined)?.[step],
    input,
  );
  const held = value === undefined ? 'is missing' : `is ${show(value)}`;
  return refusal(400, field, `${field || 'the body'} ${held}: ${hint(issue)}`);
}

const STATUS_OF = {
  missing: 404,
  'in use': 409,
  finished: 409,
  invalid: 400,
  changed: 412,
  busy: 503,
  full: 507,
  'read-only': 503,
  damaged: 503,
} as const satisfies Record<StoreError['kind'], Refusal['status']>;

/** What the store refused. */
export function refusalOfStore(error: StoreError): Refusal {
  const { status, body } = refusal(STATUS_OF[error.kind], error.field, error.message);
  return { status, body: error instanceof BatchOvertaken ? { ...body, batch: error.batch } : body };
}

export function refusal(status: Refusal['status'], field: string, message: string): Refusal {
  return { status, body: { field, message } };
}

/** Of a value that fits none of several shapes, the complaint of the shape that it fits best. */
function deepest(issue: z.core.$ZodIssue): z.core.$ZodIssue {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const misfit = (issues: z.core.$ZodIssue[]) =>
    issues.filter((i) => i.code === 'unrecognized_keys').length * 10 + issues.length;
  const [nearest] = [...issue.errors].sort((a, b) => misfit(a) - misfit(b));
  const inner = nearest?.[0];
  return inner ? deepest({ ...inner, path: [...issue.path, ...inner.path] }) : issue;
}

function hint(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `write ${issue.expected === 'object' || issue.expected === 'array' ? 'an' : 'a'} ${issue.expected}`;
    case 'too_small':
      return issue.origin === 'string'
        ? 'write at least one letter'
        : `it must be ${issue.inclusive === false ? 'above' : 'at least'} ${issue.minimum}${issue.origin === 'array' ? ' long' : ''}`;
    case 'too_big':
      return issue.origin === 'string'
        ? `write at most ${issue.maximum} letters`
        : `it must be ${issue.inclusive === false ? 'below' : 'at most'} ${issue.maximum}${issue.origin === 'array' ? ' long' : ''}`;
    case 'invalid_value':
      return `use one of ${issue.values.slice(0, 10).map(show).join(', ')}${issue.values.length > 10 ? ', ...' : ''}`;
    case 'unrecognized_keys':
      return 'no such field is known here; leave it out or check its spelling';
    case 'invalid_key':
      return 'no INFOODS tagname known here; check its spelling';
    default:
      return issue.message;
  }
}

function show(value: unknown): string {
  const json = JSON.stringify(value) ?? String(value);
  return json.length > 60 ? `${json.slice(0, 57)}...` : json;
}
