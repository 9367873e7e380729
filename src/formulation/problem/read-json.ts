/**
 * JSON read field by field: every complaint names the field, the value and the way out. A field that the format does
 * not know is left alone and listed.
 */
import { isTag, nearestTag, type Tag } from '../../nutrition/nutrients.ts';
import { ProblemError } from './problem.ts';

/** Marks a bare NaN or Infinity that stood where JSON wants a number. */
const NOT_A_NUMBER = '\u0000';

export type Fields = Record<string, unknown>;

/**
 * JSON text to a value.
 * @throws ProblemError when the text is empty or is not JSON, saying where
 */
export function parseJson(text: string): unknown {
  if (text.trim() === '')
    throw new ProblemError('', 'is empty; write a JSON object with "foods" and "rules"');
  const marked = text.replace(/"(?:[^"\\]|\\.)*"|[-+]?\b(?:NaN|Infinity)\b/g, (token) =>
    token.startsWith('"') ? token : JSON.stringify(NOT_A_NUMBER + token),
  );
  try {
    return JSON.parse(marked);
  } catch (error) {
    const why = String((error as Error).message).split('\n')[0];
    throw new ProblemError('', `is not JSON (${why}); check commas, quotes and brackets there`);
  }
}

export function object(json: unknown, at: string, known?: readonly string[], ignored?: string[]): Fields {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    throw new ProblemError(at, `must be an object in braces, not ${show(json)}`);
  }
  if (known && ignored) {
    for (const key of Object.keys(json)) if (!known.includes(key)) ignored.push(`${at}/${key}`);
  }
  return json as Fields;
}

export function list(json: unknown, at: string, most: number): unknown[] {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a list in square brackets');
  if (!Array.isArray(json))
    throw new ProblemError(at, `must be a list in square brackets, not ${show(json)}`);
  if (json.length > most) throw new ProblemError(at, `has ${json.length} entries; ${most} is the most`);
  return json;
}

export function text(json: unknown, at: string): string {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a text in quotes');
  if (typeof json !== 'string' || json.trim() === '')
    throw new ProblemError(at, `must be a text in quotes, not ${show(json)}`);
  return json;
}

export function number(json: unknown, at: string, least: number, most: number): number {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a number');
  if (typeof json === 'string') {
    if (json.startsWith(NOT_A_NUMBER))
      throw new ProblemError(at, `${json.slice(1)} is not a number; write one, or leave the field out`);
    throw new ProblemError(at, `must be a number, not the text ${show(json)}; write it without quotes`);
  }
  if (typeof json !== 'number' || !Number.isFinite(json))
    throw new ProblemError(at, `must be a number, not ${show(json)}`);
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

export function show(value: unknown): string {
  if (typeof value === 'string' && value.startsWith(NOT_A_NUMBER)) return value.slice(1);
  const json = JSON.stringify(value) ?? String(value);
  return json.length > 60 ? `${json.slice(0, 57)}...` : json;
}

/** Drops absent fields, so that a problem written out again reads as it was written in. */
export function strip<T extends object>(fields: T): T {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as T;
}
