/** Things that the worker loads once; a failure is told to who asked, and the next who asks tries again. */
import { LOAD_ERROR } from './worker-line.ts';

/**
 * Loads at the first call and keeps what came.
 * @param what its name in a sentence: "The solver"
 */
export function loadedOnce<T>(what: string, load: () => Promise<T>): () => Promise<T> {
  let coming: Promise<T> | undefined;
  return () => {
    coming ??= load().catch((error: unknown) => {
      coming = undefined;
      throw loadError(
        `${what} could not be loaded: ${error instanceof Error ? error.message : String(error)}`,
      );
    });
    return coming;
  };
}

/** An error that tells the page to offer loading anew. */
export function loadError(message: string): Error {
  return Object.assign(new Error(/[.!?]$/.test(message) ? message : `${message}.`), { name: LOAD_ERROR });
}
