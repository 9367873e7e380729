/** What must hold of any JSON before its shape is looked at: not nested deep, and no key that is more than a key. */

import { pointerOf } from '../../formulation/problem/json-pointer.ts';
import { words } from '../../words/words.ts';
import type { Fault } from './fault-words.ts';

/** Deeper than any record is, a whole household in one file included. */
export const DEEPEST = 32;

/** Keys that turn an object into another one where a program copies it carelessly. */
const FORBIDDEN = new Set(['__proto__', 'prototype', 'constructor']);

/** Whether a JSON text nests deeper than {@link DEEPEST}, found in one pass without reading it as JSON. */
export function isNestedTooDeep(json: string): boolean {
  let depth = 0;
  let quoted = false;
  for (let i = 0; i < json.length; i++) {
    const sign = json[i];
    if (quoted) {
      if (sign === '\\') i++;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '{' || sign === '[') {
      depth++;
      if (depth > DEEPEST) return true;
    } else if (sign === '}' || sign === ']') depth--;
  }
  return false;
}

/** The first key or depth that no record may have; undefined where there is none. */
export function plainFault(value: unknown, path: readonly PropertyKey[] = []): Fault | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if (path.length >= DEEPEST)
    return { field: pointerOf(path), message: words().household.refusal.tooDeep(DEEPEST) };
  for (const [key, inner] of Object.entries(value)) {
    if (FORBIDDEN.has(key))
      return {
        field: pointerOf([...path, key]),
        message: words().household.refusal.reservedKey(key),
      };
    const fault = plainFault(inner, [...path, key]);
    if (fault) return fault;
  }
  return undefined;
}
