import { expect } from 'vitest';

/** Every number and text of what a screen is given, with where it stands. */
function* told(value: unknown, at = ''): Generator<readonly [at: string, part: number | string]> {
  if (typeof value === 'number' || typeof value === 'string') yield [at, value];
  else if (value instanceof Map) yield* told([...value], at);
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) yield* told(inner, `${at}/${key}`);
}

/** What a breach comes to stands in its sentence; the number beside it is for programs, and may be none. */
const FOR_PROGRAMS = /\/breaches\/\d+\/actual$/;

/** That nothing of it is a number that is none, or a text made of one. @param what it is, for the complaint */
export function expectShown(what: string, value: unknown): void {
  for (const [at, part] of told(value)) {
    const odd =
      typeof part === 'number'
        ? !Number.isFinite(part)
        : /\bNaN\b|\bInfinity\b|\bundefined\b|Invalid Date|\[object/.test(part);
    if (odd && !FOR_PROGRAMS.test(at)) expect.fail(`${what}${at} is ${part}`);
  }
}
