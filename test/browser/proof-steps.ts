/** How far a proof has come, seen from outside: what the page shares with its second worker. */
import type { Page } from 'playwright-core';

/** Finds the memory that the page gives to a worker. Needed before the page is opened. */
const FIND_SHARED = `{
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message, ...rest) {
    const [given] = message?.argumentList ?? [];
    if (window.crossOriginIsolated && given?.value?.buffer instanceof SharedArrayBuffer) window.sharedWithProof = given.value;
    return post.call(this, message, ...rest);
  };
}`;

/** What is shared, as src/web/worker/giving-way.ts has it; undefined where nothing is. */
export interface SharedWithProof {
  /** The last move of the hand, 0 while it rests. */
  readonly move: number;
  /** How many steps were taken. */
  readonly steps: number;
}

export async function watchProof(page: Page): Promise<void> {
  await page.addInitScript({ content: FIND_SHARED });
}

export async function sharedWithProof(page: Page): Promise<SharedWithProof | undefined> {
  return (await page.evaluate(
    'window.sharedWithProof && { move: Atomics.load(sharedWithProof, 0), steps: Atomics.load(sharedWithProof, 1) }',
  )) as SharedWithProof | undefined;
}
