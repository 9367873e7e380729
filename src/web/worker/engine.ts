/** The page's end of the formulation worker. */
import { useQuery } from '@tanstack/react-query';
import { proxy, type Remote, wrap } from 'comlink';
import { useMemo, useSyncExternalStore } from 'react';
import type { ReferenceFood } from '../../foods/reference.ts';
import type { Goal } from '../../formulation/advice/frontier.ts';
import type { SharedMix } from '../../formulation/advice/shared-base.ts';
import type { GoalPoint } from '../../formulation/formulation.ts';
import type { Eater } from '../../formulation/problem/for-animals.ts';
import type { Problem, Shares } from '../../formulation/problem/problem.ts';
import type { Progress, SolvedSoFar } from '../../formulation/problem/progress.ts';
import type { Dragged, Reason, Result } from '../../formulation/problem/result.ts';
import { mannerOfDevice } from '../shared/words/manner.ts';
import { wordsOnceHere } from '../shared/words/texts.ts';
import type { Answer, FormulationWorker } from './formulation.worker.ts';
import { Hand } from './giving-way.ts';
import { takesLong } from './lane.ts';
import { latest } from './latest.ts';
import { type Hearing, LongLane } from './long-lane.ts';
import type { Room } from './room-texts.ts';
import { type LineState, type WorkerEnd, WorkerLine } from './worker-line.ts';

/** Longer than any answer of the quick lane should take, ms; the page then offers to stop. */
const SLOW_AFTER = 20_000;
/** Longer than a long answer should say nothing of how far it is, ms. */
const SILENT_AFTER = 120_000;

type Ask = (...args: readonly unknown[]) => Promise<unknown>;

function openWorker(): WorkerEnd {
  const worker = new Worker(new URL('./formulation.worker.ts', import.meta.url), {
    type: 'module',
    // As the device keeps it: this file is loaded before the page's own texts are.
    name: JSON.stringify(mannerOfDevice()),
  });
  const remote = wrap<Record<string, Ask>>(worker);
  return {
    ask: async (method, args, tell) => (remote[method] as Ask)(...args, ...(tell ? [proxy(tell)] : [])),
    onFailure(failed) {
      // It may be opened, and fail, before the texts are here that say so.
      const tell = async (said: string, otherwise: 'notLoaded' | 'unreadable') => {
        const t = (await wordsOnceHere()).store.worker;
        failed(said || t[otherwise]);
      };
      worker.addEventListener('error', ({ message }) => tell(message, 'notLoaded'));
      worker.addEventListener('messageerror', () => tell('', 'unreadable'));
    },
    end: () => worker.terminate(),
  };
}

/** The hand on a slider, to which long answers give way. */
export const hand = new Hand(globalThis.crossOriginIsolated === true);

function openGivingWay(): WorkerEnd {
  const end = openWorker();
  // Its failure is heard as that of all its answers.
  if (hand.shared) end.ask('giveWay', [hand.shared]).catch(() => {});
  return end;
}

/**
 * Two workers of the same kind: one for what must be there at once, one for answers that may take long. The second is
 * opened when it is first needed, ended whenever an answer that it is at is waited for no longer, and pauses while a hand
 * moves a slider.
 */
const line = new WorkerLine(openWorker, SLOW_AFTER);
const longLine = new WorkerLine(openGivingWay, SILENT_AFTER);
const longLane = new LongLane(longLine);

/**
 * Starts the worker of the quick lane, so that it has its table when it is first asked.
 * @param rooms parts of it that will be asked, with the solver
 */
export function warm(rooms: readonly Room[]): void {
  // What cannot be had now is told to who asks for it.
  line.ask('begin', [rooms]).catch(() => {});
}
/** Fetches all parts of that worker, so that it needs the server no more. */
export async function prepare(): Promise<void> {
  // What cannot be had now is told to who asks for it.
  await line.ask('prepare', []).catch(() => {});
}

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

/** Answers that may take long: what is quick of them is asked of the quick lane. */
export const longAnswers = {
  solve: (problem: Problem, hearing?: Hearing<Progress<SolvedSoFar>>): Promise<Answer<Result>> =>
    long('solve', takesLong(problem), [problem], hearing),
  /** The nearest mix that keeps every rule, foods brought in and left out as the rules that count them ask. */
  settle: (
    problem: Problem,
    from: Shares,
    held: Shares,
    moving: string | undefined,
    hearing?: Hearing<never>,
  ): Promise<Answer<Dragged>> => long('settle', takesLong(problem), [problem, from, held, moving], hearing),
  /** Whether any mix keeps every rule. */
  feasible: (problem: Problem, hearing?: Hearing<never>): Promise<Answer<boolean>> =>
    long('feasible', takesLong(problem), [problem], hearing),
  why: (problem: Problem, hearing?: Hearing<never>): Promise<Answer<Reason[]>> =>
    long('why', takesLong(problem), [problem], hearing),
  askOf: (
    asked: Parameters<FormulationWorker['askOf']>,
    hearing?: Hearing<never>,
  ): ReturnType<FormulationWorker['askOf']> => long('askOf', asked[0].confidence > 0, asked, hearing),
  substitutes: (
    asked: Parameters<FormulationWorker['substitutes']>,
    hearing?: Hearing<never>,
  ): ReturnType<FormulationWorker['substitutes']> =>
    long('substitutes', asked[0].confidence > 0, asked, hearing),
  frontier: (
    problem: Problem,
    a: Goal,
    b: Goal,
    hearing?: Hearing<Progress<GoalPoint[]>>,
  ): Promise<Answer<GoalPoint[]>> => long('frontier', true, [problem, a, b], hearing),
  share: (
    problem: Problem,
    eaters: readonly Eater[],
    hearing?: Hearing<Progress<SharedMix>>,
  ): ReturnType<FormulationWorker['share']> => long('share', true, [problem, eaters], hearing),
};

function long<T>(
  method: keyof FormulationWorker,
  isLong: boolean,
  args: readonly unknown[],
  hearing?: Hearing<never>,
): Promise<T> {
  return (
    isLong ? longLane.ask(method, args, hearing as Hearing<unknown>) : line.ask(method, args)
  ) as Promise<T>;
}

let atHand = { engine, generation: line.generation() };

/** The worker as an object that is another one after it was started again: what rests on it is then asked anew. */
export function useEngine(): Remote<FormulationWorker> {
  return useSyncExternalStore(line.subscribe, () => {
    const generation = line.generation();
    if (atHand.generation !== generation) atHand = { engine: newEngine(), generation };
    return atHand.engine;
  });
}

/** How the workers are, and how to start anew the one that is not well. */
export function useEngineState(): { readonly state: LineState; restart(): void } {
  const state = useSyncExternalStore(line.subscribe, line.state);
  const long = useSyncExternalStore(longLine.subscribe, longLine.state);
  return state.is === 'well' && long.is !== 'well'
    ? { state: long, restart: longLine.restart }
    : { state, restart: line.restart };
}

/** Changes where the worker of the long answers was started again: what failed with it is then asked anew. */
export function useLongGeneration(): number {
  return useSyncExternalStore(longLine.subscribe, longLine.generation);
}

/** Moves while a slider is dragged: only the newest waits, older ones answer undefined. */
export const newestMove = latest(
  (...args: Parameters<FormulationWorker['drag']>): ReturnType<FormulationWorker['drag']> =>
    engine.drag(...args) as ReturnType<FormulationWorker['drag']>,
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

const NO_FOODS = { foods: new Map<string, ReferenceFood>(), lookedUp: true } as const;

/** As {@link useReferenceFoods}, with whether they were looked up: what is then missing stands in no table. */
export function useReferenceTable(refs: readonly string[]): {
  readonly foods: ReadonlyMap<string, ReferenceFood>;
  readonly lookedUp: boolean;
} {
  const wanted = [...new Set(refs)].sort();
  const { data, error, isPlaceholderData } = useQuery({
    queryKey: ['by ref', wanted],
    queryFn: () => engine.byRef(wanted),
    // Where none is named the worker need not be there.
    enabled: wanted.length > 0,
    staleTime: forever,
    placeholderData: (before) => before,
  });
  const foods = useMemo(() => new Map(data?.map((food) => [food.ref, food])), [data]);
  if (wanted.length === 0) return NO_FOODS;
  return { foods, lookedUp: error !== null || (data !== undefined && !isPlaceholderData) };
}
