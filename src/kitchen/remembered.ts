/** Answers kept for as long as what they follow from. */

/**
 * The same function, remembering its answer for the very same objects, one after the other. For what follows from the
 * lists of a household: these are never written to, a change puts another in their place; so must the answers be.
 * What nobody else holds any more is forgotten.
 */
export function remembered<Given extends readonly [object, ...object[]], Answer>(
  work: (...given: Given) => Answer,
): (...given: Given) => Answer {
  const first = new WeakMap<object, unknown>();
  return (...given) => {
    let at = first;
    for (const one of given.slice(0, -1)) {
      const next = (at.get(one) as WeakMap<object, unknown> | undefined) ?? new WeakMap<object, unknown>();
      at.set(one, next);
      at = next;
    }
    const last = given[given.length - 1] as object;
    if (!at.has(last)) at.set(last, work(...given));
    return at.get(last) as Answer;
  };
}
