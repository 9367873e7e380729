/**
 * Saves a batch being weighed, one entry after the other. An entry counts as made once the server has it. Until
 * then it is tried again, and kept on this device too, so that closing the page loses nothing.
 */
import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Household } from '../../household/model.ts';
import type { Batch } from '../../kitchen/model.ts';
import { ApiError, fetchHousehold, put } from './api.ts';

export type BatchSave =
  | { readonly is: 'idle' }
  | { readonly is: 'saving'; readonly next: Batch }
  | { readonly is: 'failed'; readonly next: Batch; readonly message: string }
  /** Another device went on with the batch: its entry stands, this one's was not made. */
  | { readonly is: 'overtaken'; readonly next: Batch };

interface Waiting {
  readonly base: Batch;
  readonly next: Batch;
}

const slot = (id: string) => `pouchful.batch.${id}`;
const LONGEST_WAIT = 15_000;

/** @param id of the batch */
export function useBatchSave(id: string) {
  const client = useQueryClient();
  const [save, setSave] = useState<BatchSave>({ is: 'idle' });
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const gone = useRef(false);
  const waiting = useRef<Waiting>(undefined);
  const failures = useRef(0);
  const busy = useRef(false);

  const show = useCallback(
    (batch: Batch) =>
      client.setQueryData<Household>(['household'], (house) => house && withBatch(house, batch)),
    [client],
  );

  const attempt = useCallback(async () => {
    const entry = waiting.current;
    if (!entry || busy.current) return;
    clearTimeout(timer.current);
    busy.current = true;
    try {
      const there = (await fetchHousehold()).batches.find((b) => b.id === id);
      if (there && !same(there, entry.base) && !same(there, entry.next)) {
        settle();
        show(there);
        setSave({ is: 'overtaken', next: entry.next });
        return;
      }
      await put('batches', entry.next);
      settle();
      show(entry.next);
      setSave({ is: 'idle' });
    } catch (error) {
      failures.current += 1;
      setSave({
        is: 'failed',
        next: entry.next,
        message: error instanceof ApiError ? error.message : String(error),
      });
      const wait = Math.min(LONGEST_WAIT, 1000 * 2 ** (failures.current - 1));
      if (!gone.current) timer.current = setTimeout(() => void attempt(), wait);
    } finally {
      busy.current = false;
    }
    function settle() {
      waiting.current = undefined;
      failures.current = 0;
      localStorage.removeItem(slot(id));
    }
  }, [id, show]);

  useEffect(() => {
    gone.current = false;
    const left = localStorage.getItem(slot(id));
    if (left && !waiting.current) {
      waiting.current = JSON.parse(left) as Waiting;
      setSave({ is: 'saving', next: waiting.current.next });
      void attempt();
    }
    return () => {
      gone.current = true;
      clearTimeout(timer.current);
    };
  }, [id, attempt]);

  return {
    save,
    /** Keeps `next` in the place of `base`. */
    keep(base: Batch, next: Batch) {
      waiting.current = { base, next };
      localStorage.setItem(slot(id), JSON.stringify(waiting.current));
      setSave({ is: 'saving', next });
      void attempt();
    },
    retry: () => void attempt(),
  };
}

/** Takes the batches as the server has them: on opening, and whenever the page comes back into sight. */
export function useFreshBatches(): { readonly ready: boolean } {
  const client = useQueryClient();
  const [ready, setReady] = useState(false);
  useEffect(() => {
    let stale = false;
    async function refresh() {
      if (document.visibilityState === 'hidden') return;
      try {
        const { batches } = await fetchHousehold();
        if (!stale) client.setQueryData<Household>(['household'], (house) => house && { ...house, batches });
      } catch {
        // What is here already is shown; a failed save is told where it happens.
      }
      if (!stale) setReady(true);
    }
    void refresh();
    document.addEventListener('visibilitychange', refresh);
    return () => {
      stale = true;
      document.removeEventListener('visibilitychange', refresh);
    };
  }, [client]);
  return { ready };
}

function same(a: Batch, b: Batch): boolean {
  const told = ({ pours, finishedAt, problem, stock }: Batch) =>
    JSON.stringify([
      pours.map((p) => [p.food, p.grams, p.at]),
      finishedAt,
      problem.scale_step_grams,
      Object.entries(stock ?? {}).sort(([a], [b]) => (a < b ? -1 : 1)),
    ]);
  return told(a) === told(b);
}

function withBatch(house: Household, batch: Batch): Household {
  const known = house.batches.some((b) => b.id === batch.id);
  return {
    ...house,
    batches: known ? house.batches.map((b) => (b.id === batch.id ? batch : b)) : [...house.batches, batch],
  };
}
