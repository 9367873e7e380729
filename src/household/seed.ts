/** The first run: an invented household, so that there is something to look at and to learn from. */
import { demoHousehold } from './demo.ts';
import type { FileStore } from './store.ts';

/**
 * Fills a store that was just made with the invented household; leaves any other as it is, emptied ones too.
 * @returns whether it was filled
 */
export async function seedOnFirstRun(store: FileStore): Promise<boolean> {
  if (!store.isNew) return false;
  await store.putAll(demoHousehold(new Date().toISOString()));
  return true;
}
