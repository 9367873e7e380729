/** The batches of a mix or of its animals, and what lies in them. */
import type { Batch } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import { words } from '../../../words/words.ts';
import type { Household, Mix } from '../../model.ts';

/** Batches of the mix or of its animals, not given up, the oldest first: "batch 1" is the first of them. */
export function batchesFor({ batches }: Pick<Household, 'batches'>, mix: Mix): readonly Batch[] {
  return madeFor(batches, mix);
}

const madeFor = remembered((batches: readonly Batch[], { id: mixId, animalIds }: Mix): readonly Batch[] => {
  const fed = (b: Batch) => b.mixId === mixId || b.animalIds.some((id) => animalIds.includes(id));
  return batches
    .filter((b) => !b.givenUp && fed(b))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : a.startedAt > b.startedAt ? 1 : 0));
});

/** "batch 3": the third of them. @param fed as {@link batchesFor} has them @param batch one of them; the next where absent */
export function batchName(fed: readonly Batch[], batch?: Batch): string {
  return words().supply.numbered(batch ? fed.indexOf(batch) + 1 : fed.length + 1);
}

/** g that lie in a batch. */
export const gramsMade = (batch: Batch) => batch.pours.reduce((sum, p) => sum + p.grams, 0);

/** Whether somebody said that a batch is all eaten. */
export const isUsedUp = (batch: Batch) => batch.left?.grams === 0;

/** The batches of a mix: those being weighed first, then the finished; the newest first in each. */
export function batchesOf(
  mixId: string,
  batches: readonly Batch[],
): { readonly running: readonly Batch[]; readonly finished: readonly Batch[] } {
  const own = batches
    .filter((b) => b.mixId === mixId)
    .sort((a, b) => (a.startedAt < b.startedAt ? 1 : a.startedAt > b.startedAt ? -1 : 0));
  return {
    running: own.filter((b) => b.finishedAt === undefined),
    finished: own.filter((b) => b.finishedAt !== undefined),
  };
}
