/** What is wrong with a record or a request, in words: which field, what it holds, and the way out. */
import type { z } from '@hono/zod-openapi';
import { pointerOf } from '../../formulation/problem/json-pointer.ts';
import { words } from '../../words/words.ts';

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
  const t = words().household.fault;
  const place = placeOf(path, field);
  const way = hint(issue);
  return { field, message: value === undefined ? t.missing(place, way) : t.holds(place, show(value), way) };
}

/** A field of the record itself as forms call it; what lies deeper by its pointer. */
function placeOf(path: readonly PropertyKey[], field: string): string {
  const { fields, fault } = words().household;
  const [key, ...deeper] = path;
  if (key === undefined) return fault.body;
  const isNamed = deeper.length === 0 && typeof key === 'string' && Object.hasOwn(fields, key);
  return isNamed ? fields[key as keyof typeof fields] : field;
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
  const t = words().household.fault;
  switch (issue.code) {
    case 'invalid_type':
      return t.write(issue.expected);
    case 'too_small': {
      const least = Number(issue.minimum);
      if (issue.origin === 'string') return t.letter;
      if (issue.origin === 'array') return t.atLeastLong(least);
      return issue.inclusive === false ? t.above(least) : t.atLeast(least);
    }
    case 'too_big': {
      const most = Number(issue.maximum);
      if (issue.origin === 'string') return t.letters(most);
      if (issue.origin === 'array') return t.atMostLong(most);
      return issue.inclusive === false ? t.below(most) : t.atMost(most);
    }
    case 'invalid_value':
      return t.oneOf(
        `${issue.values.slice(0, 10).map(show).join(', ')}${issue.values.length > 10 ? ', ...' : ''}`,
      );
    case 'unrecognized_keys':
      return t.unknownField;
    case 'invalid_key':
      return hintOfKey(issue.issues[0]);
    default:
      return issue.message;
  }
}

/** Keys are tagnames, or ids of foods. */
function hintOfKey(inner: z.core.$ZodIssue | undefined): string {
  return inner === undefined || inner.code === 'invalid_value'
    ? words().household.fault.tagname
    : hint(inner);
}

function show(value: unknown): string {
  const json = JSON.stringify(value) ?? String(value);
  return json.length > LONGEST_SHOWN ? `${json.slice(0, LONGEST_SHOWN - 3)}...` : json;
}
