/**
 * Saving a batch being weighed, for the page beside the scale: an entry stands on this device at once and is sent as soon
 * as it can be, so that weighing goes on without a connection.
 */
import { useState } from 'react';
import type { Batch } from '../../kitchen/model.ts';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';
import type { Body } from './sync/change.ts';

/** The batch as it is to be, and how many of its pours the server does not have yet. */
interface Unsent {
  readonly next: Batch;
  readonly pours: number;
}

export type BatchSave =
  | { readonly is: 'idle' }
  | ({ readonly is: 'saving' } & Unsent)
  /** Nobody answers: it is tried again. */
  | ({ readonly is: 'failed'; readonly message: string } & Unsent)
  /** It was not made, and will not be. */
  | ({ readonly is: 'refused'; readonly message: string } & Unsent)
  /** Another device changed the same of it: the keeper is asked. */
  | ({ readonly is: 'asked' } & Unsent);

/** @param id of the batch */
export function useBatchSave(id: string) {
  const { waiting, trouble } = useKeeper();
  const [refused, setRefused] = useState<BatchSave>();
  const mine = waiting.filter((change) => change.kind === 'batches' && change.id === id);
  return {
    save: stateOf(),
    /**
     * Keeps `next` in the place of `base`, the batch as the keeper saw it.
     * @param unseen shown only once the server has it: the end of a batch is its record
     */
    keep(base: Batch, next: Batch, unseen = false): void {
      setRefused(undefined);
      keeper.write('batches', id, next, { base, unseen }, (outcome) => {
        if (outcome.is !== 'refused') return;
        const pours = next.pours.length - base.pours.length;
        setRefused({ is: 'refused', next, pours, message: outcome.error.message });
      });
    },
    retry: () => keeper.retry(),
  };

  function stateOf(): BatchSave {
    const next = mine.at(-1)?.body as Batch | null | undefined;
    if (!next) return refused ?? { is: 'idle' };
    // Each counts for itself: those that two pages made do not know of each other.
    const pours = mine.reduce((sum, { base, body }) => sum + poursOf(body) - poursOf(base.body), 0);
    const unsent = { next, pours };
    if (mine.some((c) => c.theirs !== undefined)) return { is: 'asked', ...unsent };
    return trouble === undefined
      ? { is: 'saving', ...unsent }
      : { is: 'failed', ...unsent, message: trouble };
  }
}

const poursOf = (body: Body): number => (body as Batch | null)?.pours.length ?? 0;
