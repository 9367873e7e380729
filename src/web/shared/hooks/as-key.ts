/**
 * What a question rests on, as text for the key of its answer: written once for each object. A key of batches and packs
 * as they are would be gone through with every drawing.
 */
import { remembered } from '../../../kitchen/remembered.ts';

/** @param one of the household, or put together of its objects and kept while they are the same: it is never written to */
export function asKey(one: object): string {
  return written(one);
}

const written = remembered((one: object) => JSON.stringify(one));
