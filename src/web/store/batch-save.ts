/**
 * Saving a batch being weighed, for the page beside the scale: an entry counts as made once the server has it. Until then
 * it stands on this device and is tried again.
 */
import { useState } from 'react';
import type { Batch } from '../../kitchen/model.ts';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';

export type BatchSave =
  | { readonly is: 'idle' }
  | { readonly is: 'saving'; readonly next: Batch }
  | { readonly is: 'failed'; readonly next: Batch; readonly message: string }
  /** It was not made, and will not be. */
  | { readonly is: 'refused'; readonly next: Batch; readonly message: string }
  /** Another device changed the same of it: the keeper is asked. */
  | { readonly is: 'asked'; readonly next: Batch };

/** @param id of the batch */
export function useBatchSave(id: string) {
  const { waiting, trouble } = useKeeper();
  const [refused, setRefused] = useState<BatchSave>();
  const mine = waiting.filter((change) => change.kind === 'batches' && change.id === id);
  return {
    save: stateOf(mine.map((c) => c.body as Batch | null).at(-1), mine.at(-1)?.theirs !== undefined),
    /** Keeps `next` in the place of `base`, the batch as the keeper saw it. */
    keep(base: Batch, next: Batch): void {
      setRefused(undefined);
      keeper.write('batches', id, next, { base, unseen: true }, (outcome) => {
        if (outcome.is === 'refused') setRefused({ is: 'refused', next, message: outcome.error.message });
      });
    },
    retry: () => keeper.retry(),
  };

  function stateOf(next: Batch | null | undefined, asked: boolean): BatchSave {
    if (!next) return refused ?? { is: 'idle' };
    if (asked) return { is: 'asked', next };
    return trouble === undefined ? { is: 'saving', next } : { is: 'failed', next, message: trouble };
  }
}
