/** Things that the worker loads once; a failure is told to who asked, and the next who asks tries again. */
import { words } from '../../words/words.ts';
import { LOAD_ERROR } from './worker-line.ts';

/**
 * Loads at the first call and keeps what came.
 * @param what its name at the head of a sentence, asked for when it is told
 */
export function loadedOnce<T>(what: () => string, load: () => Promise<T>): () => Promise<T> {
  let coming: Promise<T> | undefined;
  return () => {
    coming ??= load().catch((error: unknown) => {
      coming = undefined;
      const why = error instanceof Error ? error.message : String(error);
      throw loadError(words().store.worker.couldNotLoad(what(), why));
    });
    return coming;
  };
}

/** An error that tells the page to offer loading anew. */
export function loadError(message: string): Error {
  return Object.assign(new Error(/[.!?]$/.test(message) ? message : `${message}.`), { name: LOAD_ERROR });
}
