/** The reference foods from disk, for Node. */
import { readFileSync } from 'node:fs';
import { decodeReference, type Reference } from '../foods/reference.ts';

let loaded: Reference | undefined;

/**
 * The reference foods, read once per process (some 5 ms, blocking); foods are decoded when they are asked for.
 * Throws when the file is missing; `npm run reference` makes it.
 */
export function loadReference(): Reference {
  // The same relative path holds in src/ and, since the build copies the data folder, in dist/.
  loaded ??= decodeReference(readFileSync(new URL('../foods/data/reference.bin', import.meta.url)));
  return loaded;
}
