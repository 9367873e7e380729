/** Ids of new things. Browsers give `crypto.randomUUID` to secure pages only; a phone may come over plain http. */

/** A random id of 128 bits, lower case. */
export function newId(): string {
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('');
}
