/** The page's end of the formulation worker. */
import { useQuery } from '@tanstack/react-query';
import { wrap } from 'comlink';
import { useMemo } from 'react';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { FormulationWorker } from './formulation.worker.ts';
import { latest } from './latest.ts';

const worker = new Worker(new URL('./formulation.worker.ts', import.meta.url), { type: 'module' });
export const engine = wrap<FormulationWorker>(worker);

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
  const wanted = [...new Set(refs)].sort();
  const { data } = useQuery({
    queryKey: ['by ref', wanted],
    queryFn: () => engine.byRef(wanted),
    staleTime: forever,
    placeholderData: (before) => before,
  });
  return useMemo(() => new Map(data?.map((food) => [food.ref, food])), [data]);
}
