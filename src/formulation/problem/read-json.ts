/**
 * JSON read field by field: every complaint names the field, the value and the way out. A field that the format does
 * not know is left alone and listed.
 */
import { isTag, nearestTag, type Tag } from '../../nutrition/nutrients.ts';
import { pointerOf } from './json-pointer.ts';
import { ProblemError } from './problem.ts';

/** Most characters of what was written that a complaint repeats. */
const LONGEST_SHOWN = 60;

/** Most characters of an id, of a name, and of free text (as in `schema.ts`). */
export const LONGEST = { id: 100, name: 200, words: 4000 } as const;

/** More than any amount, price, weight or bound; a larger number is a slip, and would drown all others. */
export const MOST = 1e12;

/** Marks a bare NaN or Infinity that stood where JSON wants a number. */
const NOT_A_NUMBER = '\u0000';

export type Fields = Record<string, unknown>;

/** Deeper than any problem is, fields that are not read included. */
const DEEPEST = 64;

/**
 * JSON text to a value. A byte-order mark before it is passed over (RFC 8259, section 8.1).
 * @throws ProblemError when the text is empty, is not JSON or is nested too deep, saying where
 */
export function parseJson(text: string): unknown {
  const json = text.replace(/^\uFEFF/, '');
  if (json.trim() === '')
    throw new ProblemError('', 'is empty; write a JSON object with "foods" and "rules"');
  try {
    return JSON.parse(marked(json));
  } catch (error) {
    if (error instanceof ProblemError) throw error;
    const [why] = String((error as Error).message).split('\n');
    throw new ProblemError('', `is not JSON (${why}); check commas, quotes and brackets there`);
  }
}

/** The text with a bare NaN or Infinity as a marked text, so that its field can be named. Text in quotes stays. */
function marked(json: string): string {
  const token = /["[\]{}]|[-+]?\b(?:NaN|Infinity)\b/g;
  const parts: string[] = [];
  let [from, depth] = [0, 0];
  for (let found = token.exec(json); found; found = token.exec(json)) {
    const [what] = found;
    if (what === '"') {
      const end = endOfText(json, found.index);
      if (end < 0) break;
      token.lastIndex = end + 1;
    } else if (what === '[' || what === '{') {
      depth++;
      if (depth > DEEPEST) throw new ProblemError('', tooDeep(json, found.index));
    } else if (what === ']' || what === '}') depth--;
    else {
      parts.push(json.slice(from, found.index), JSON.stringify(NOT_A_NUMBER + what));
      from = token.lastIndex;
    }
  }
  return parts.join('') + json.slice(from);
}

/** Where a text in quotes ends that begins at `start`; -1 where it does not. */
function endOfText(json: string, start: number): number {
  for (let end = json.indexOf('"', start + 1); end >= 0; end = json.indexOf('"', end + 1)) {
    let escapes = 0;
    while (json[end - 1 - escapes] === '\\') escapes++;
    if (escapes % 2 === 0) return end;
  }
  return -1;
}

function tooDeep(json: string, at: number): string {
  const lines = json.slice(0, at).split('\n');
  const column = (lines.at(-1)?.length ?? 0) + 1;
  return `is nested more than ${DEEPEST} deep at line ${lines.length}, column ${column}; a problem needs 4; check the brackets there`;
}

/** Pointer of what an object has under a key; a very long key is cut. */
export function fieldIn(at: string, key: string): string {
  return `${at}${pointerOf([key.length > LONGEST_SHOWN ? `${key.slice(0, LONGEST_SHOWN - 3)}...` : key])}`;
}

export function object(json: unknown, at: string, known?: readonly string[], ignored?: string[]): Fields {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    throw new ProblemError(at, `must be an object in braces, not ${show(json)}`);
  }
  if (known && ignored) {
    for (const key of Object.keys(json)) if (!known.includes(key)) ignored.push(fieldIn(at, key));
  }
  return json as Fields;
}

/** @param ifLeftOut what a list that is left out counts as; without it the field must be there */
export function list(json: unknown, at: string, most: number, ifLeftOut?: unknown[]): unknown[] {
  if (json === undefined && ifLeftOut) return ifLeftOut;
  if (json === undefined) throw new ProblemError(at, 'is missing; write a list in square brackets');
  if (!Array.isArray(json))
    throw new ProblemError(
      at,
      `must be a list in square brackets, not ${show(json)}${ifLeftOut ? '; leave it out for none' : ''}`,
    );
  if (json.length > most) throw new ProblemError(at, `has ${json.length} entries; ${most} is the most`);
  return json;
}

export function text(json: unknown, at: string, most: number = LONGEST.name): string {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a text in quotes');
  if (typeof json !== 'string' || json.trim() === '' || json.startsWith(NOT_A_NUMBER))
    throw new ProblemError(at, `must be a text in quotes, not ${show(json)}`);
  if (json.length > most)
    throw new ProblemError(at, `has ${json.length} characters; ${most} is the most, so shorten it`);
  return json;
}

/** Less than this of anything is no figure but a slip, and too small to reckon with beside others. */
const NOTHING = 1e-12;

export function number(json: unknown, at: string, least: number, most: number): number {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a number');
  if (typeof json === 'string') {
    if (json.startsWith(NOT_A_NUMBER))
      throw new ProblemError(at, `${json.slice(1)} is not a number; write one, or leave the field out`);
    throw new ProblemError(at, `must be a number, not the text ${show(json)}; write it without quotes`);
  }
  if (typeof json !== 'number' || !Number.isFinite(json))
    throw new ProblemError(at, `must be a number, not ${show(json)}`);
  if (json !== 0 && Math.abs(json) < NOTHING)
    throw new ProblemError(at, `is ${json}, which nobody can tell from 0; write 0`);
  if (json < least) throw new ProblemError(at, `is ${json}; it must be ${least} or more`);
  if (json > most) {
    throw new ProblemError(
      at,
      most === 0.999999
        ? `is ${json}; it must be below 1 (0.9 means 90 %)`
        : `is ${json}; it must be ${most} or less`,
    );
  }
  return json;
}

export function optional(json: unknown, at: string, least: number, most: number): number | undefined {
  return json === undefined || json === null ? undefined : number(json, at, least, most);
}

export function flag(json: unknown, at: string): boolean | undefined {
  if (json !== undefined && typeof json !== 'boolean')
    throw new ProblemError(at, `must be true or false, not ${show(json)}`);
  return json;
}

export function positive(json: unknown, at: string): number {
  const value = number(json, at, 0, 1e9);
  if (value === 0) throw new ProblemError(at, 'is 0; it must be above 0');
  return value;
}

export function choice<T extends string>(json: unknown, at: string, allowed: readonly T[]): T {
  if (!allowed.includes(json as T)) {
    throw new ProblemError(
      at,
      `must be one of ${allowed.map((a) => `"${a}"`).join(', ')}, not ${show(json)}`,
    );
  }
  return json as T;
}

export function tagname(key: string, at: string): Tag {
  if (isTag(key)) return key;
  const near = nearestTag(key);
  throw new ProblemError(
    at,
    `${show(key)} is no INFOODS tagname known here${near ? `; did you mean "${near}"?` : '; see: npx pouchful foods show sr28:20038'}`,
  );
}

export function ordered(min: number | undefined, max: number | undefined, at: string): void {
  if (min !== undefined && max !== undefined && min > max) {
    throw new ProblemError(`${at}/min`, `is ${min}, above "max" ${max}; swap them or change one`);
  }
}

export function unique(items: readonly { id: string }[], at: string): void {
  const seen = new Set<string>();
  items.forEach(({ id }, i) => {
    if (seen.has(id))
      throw new ProblemError(`${at}/${i}/id`, `${show(id)} is used twice; give each its own id`);
    seen.add(id);
  });
}

/** What was written, in few characters: no list or object is spelled out. */
export function show(value: unknown): string {
  if (typeof value === 'string') {
    if (value.startsWith(NOT_A_NUMBER)) return value.slice(1);
    return value.length > LONGEST_SHOWN
      ? `${JSON.stringify(value.slice(0, LONGEST_SHOWN - 3))}...`
      : JSON.stringify(value);
  }
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

/** Drops absent fields, so that a problem written out again reads as it was written in. */
export function strip<T extends object>(fields: T): T {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as T;
}
