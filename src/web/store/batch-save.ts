/** Saving a batch being weighed, for the page beside the scale. */
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import type { Batch } from '../../kitchen/model.ts';
import { sendChange } from './batch-change.ts';
import { type BatchSave, BatchSaver } from './batch-saver.ts';
import { writeCached } from './household-cache.ts';

/** @param id of the batch */
export function useBatchSave(id: string) {
  const client = useQueryClient();
  const [save, setSave] = useState<BatchSave>({ is: 'idle' });
  const saver = useMemo(
    () =>
      new BatchSaver(id, {
        send: sendChange,
        show: (batch) => writeCached(client, 'batches', batch),
        tell: setSave,
        storage: localStorage,
      }),
    [client, id],
  );
  useEffect(() => {
    saver.open();
    return () => saver.close();
  }, [saver]);
  return {
    save,
    /** Keeps `next` in the place of `base`. */
    keep: (base: Batch, next: Batch) => saver.keep(base, next),
    retry: () => saver.retry(),
  };
}
