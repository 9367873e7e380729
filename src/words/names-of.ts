/** The names of some things as a table that is read in the language spoken when it is asked, not when it is made. */
export function namesOf<K extends string>(
  keys: readonly K[],
  name: (key: K) => string,
): Readonly<Record<K, string>> {
  const table = {};
  for (const key of keys) Object.defineProperty(table, key, { enumerable: true, get: () => name(key) });
  return table as Record<K, string>;
}
