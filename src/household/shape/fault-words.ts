/** What is wrong with a record or a request, in words: which field, what it holds, and the way out. */
import type { z } from '@hono/zod-openapi';
import { pointerOf } from '../../formulation/problem/json-pointer.ts';

export interface Fault {
  /** JSON pointer to what is wrong; empty for the whole. */
  readonly field: string;
  readonly message: string;
}

/** Most characters of a value that a complaint repeats. */
const LONGEST_SHOWN = 60;

/** The first thing wrong with an input, in words. @param input what was checked */
export function faultOf(error: z.core.$ZodError, input: unknown): Fault {
  const [first] = error.issues;
  if (!first) throw new Error('an input was refused for no reason', { cause: error });
  const issue = deepest(first);
  const path = issue.code === 'unrecognized_keys' ? [...issue.path, ...issue.keys.slice(0, 1)] : issue.path;
  const field = pointerOf(path);
  const value = path.reduce<unknown>(
    (at, step) => (at as Record<PropertyKey, unknown> | null | undefined)?.[step],
    input,
  );
  const held = value === undefined ? 'is missing' : `is ${show(value)}`;
  return { field, message: `${field || 'the body'} ${held}: ${hint(issue)}` };
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
      return hintOfKey(issue.issues[0]);
    default:
      return issue.message;
  }
}

/** Keys are tagnames, or ids of foods. */
function hintOfKey(inner: z.core.$ZodIssue | undefined): string {
  return inner === undefined || inner.code === 'invalid_value'
    ? 'no INFOODS tagname known here; check its spelling'
    : hint(inner);
}

function show(value: unknown): string {
  const json = JSON.stringify(value) ?? String(value);
  return json.length > LONGEST_SHOWN ? `${json.slice(0, LONGEST_SHOWN - 3)}...` : json;
}
