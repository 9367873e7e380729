/** JSON pointers (RFC 6901): "/rules/0/max" says by which steps a value is reached inside a document. */

/** The steps of a pointer, unescaped; none where it names the whole document. */
export function pointerSteps(pointer: string): string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The pointer made of steps, each escaped. */
export function pointerOf(steps: readonly PropertyKey[]): string {
  return steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** A copy of the document with another value at the pointer; undefined takes it out. A row that is not there stays so. */
export function setAtPointer<T>(document: T, pointer: string, value: unknown): T {
  return replaced(document, pointerSteps(pointer), value) as T;
}

function replaced(at: unknown, [head, ...rest]: readonly string[], value: unknown): unknown {
  if (head === undefined) return value;
  if (Array.isArray(at)) return at.map((v, i) => (String(i) === head ? replaced(v, rest, value) : v));
  const object = (at ?? {}) as Record<string, unknown>;
  return { ...object, [head]: replaced(object[head], rest, value) };
}
