/** The page's end of the formulation worker. */
import { useQuery } from '@tanstack/react-query';
import { type Remote, wrap } from 'comlink';
import { useMemo, useSyncExternalStore } from 'react';
import type { ReferenceFood } from '../../foods/reference.ts';
import { words } from '../../words/words.ts';
import { mannerOfDevice } from '../shared/words/manner.ts';
import type { FormulationWorker } from './formulation.worker.ts';
import { latest } from './latest.ts';
import { type LineState, type WorkerEnd, WorkerLine } from './worker-line.ts';

/** Longer than any answer should take, ms; the page then offers to stop. */
const SLOW_AFTER = 20_000;

function openWorker(): WorkerEnd {
  const worker = new Worker(new URL('./formulation.worker.ts', import.meta.url), {
    type: 'module',
    // As the device keeps it: this file is loaded before the page's own texts are.
    name: JSON.stringify(mannerOfDevice()),
  });
  const remote = wrap<Record<string, (...args: unknown[]) => Promise<unknown>>>(worker);
  return {
    ask: async (method, args) =>
      (remote[method] as (...args: readonly unknown[]) => Promise<unknown>)(...args),
    onFailure(failed) {
      worker.addEventListener('error', (event) => failed(event.message || words().store.worker.notLoaded));
      worker.addEventListener('messageerror', () => failed(words().store.worker.unreadable));
    },
    end: () => worker.terminate(),
  };
}

const line = new WorkerLine(openWorker, SLOW_AFTER);

/** The worker's answers; each rejects with words where the worker is gone. */
const newEngine = () =>
  new Proxy({} as Remote<FormulationWorker>, {
    // "then" is asked by whoever awaits it: it is no promise.
    get: (_, method) =>
      typeof method === 'string' && method !== 'then'
        ? (...args: unknown[]) => line.ask(method, args)
        : undefined,
  });

export const engine = newEngine();

let atHand = { engine, generation: line.generation() };

/** The worker as an object that is another one after it was started again: what rests on it is then asked anew. */
export function useEngine(): Remote<FormulationWorker> {
  return useSyncExternalStore(line.subscribe, () => {
    const generation = line.generation();
    if (atHand.generation !== generation) atHand = { engine: newEngine(), generation };
    return atHand.engine;
  });
}

/** How the worker is, and how to start it again. */
export function useEngineState(): { readonly state: LineState; restart(): void } {
  return { state: useSyncExternalStore(line.subscribe, line.state), restart: line.restart };
}

/** Moves while a slider is dragged: only the newest waits, older ones answer undefined. */
export const newestMove = latest(
  (...args: Parameters<FormulationWorker['move']>): ReturnType<FormulationWorker['move']> =>
    engine.move(...args) as ReturnType<FormulationWorker['move']>,
);

const forever = Number.POSITIVE_INFINITY;

export function useFoodSearch(query: string, limit = 60) {
  const words = query.trim();
  return useQuery({
    queryKey: ['find', words, limit],
    queryFn: () => (words ? engine.find(words, limit) : engine.plainFoods()),
    staleTime: forever,
    placeholderData: (before) => before,
  });
}

/** What to tell where the tables do not have what was looked for; undefined where they have, or while it is looked up. */
export function useFoodSearchNote(query: string): string | undefined {
  const words = query.trim();
  const { data } = useQuery({
    queryKey: ['find note', words],
    queryFn: async () => (words ? ((await engine.findNote(words)) ?? '') : ''),
    staleTime: forever,
  });
  return data || undefined;
}

/** Reference foods by number, for names and amounts. */
export function useReferenceFoods(refs: readonly string[]): ReadonlyMap<string, ReferenceFood> {
  return useReferenceTable(refs).foods;
}

/** As {@link useReferenceFoods}, with whether they were looked up: what is then missing stands in no table. */
export function useReferenceTable(refs: readonly string[]): {
  readonly foods: ReadonlyMap<string, ReferenceFood>;
  readonly lookedUp: boolean;
} {
  const wanted = [...new Set(refs)].sort();
  const { data, error, isPlaceholderData } = useQuery({
    queryKey: ['by ref', wanted],
    queryFn: () => engine.byRef(wanted),
    staleTime: forever,
    placeholderData: (before) => before,
  });
  const foods = useMemo(() => new Map(data?.map((food) => [food.ref, food])), [data]);
  return { foods, lookedUp: error !== null || (data !== undefined && !isPlaceholderData) };
}
