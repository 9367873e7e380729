/** A weight as packs print it, typed by hand. */
import { readPack, WeightError } from '../../../kitchen/shopping/pack-weight.ts';

/** The weight, or the sentence that says why it is none. */
export function packOf(text: string): ReturnType<typeof readPack> | string {
  try {
    return readPack(text);
  } catch (error) {
    if (error instanceof WeightError) return error.message;
    throw error;
  }
}
