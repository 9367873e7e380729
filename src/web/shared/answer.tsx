/** Answers of the worker to a panel's question: asked for once the question stands still, an old one never shown as new. */

import { useQuery } from '@tanstack/react-query';
import { words } from '../../words/words.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { useSettled } from './hooks/settled.ts';

/** How long the mix must stand still before the worker is asked, ms. */
const STILL = 300;
/** How long an answer is kept for a mix that may come back (undo, another tab), ms. */
const KEPT = 60_000;

export interface Asked<T> {
  /** The answer; while a new one is on its way, the last one. */
  readonly value: T | undefined;
  /** Whether `value` is not, or not yet, the answer to this question. */
  readonly working: boolean;
  /** What was wrong with the question, in words. */
  readonly fault: string | undefined;
}

/**
 * @param name of the kind of question @param question plain data; undefined asks nothing
 * @param ask whoever looks at the signal it is given is dropped as soon as the question is another one
 */
export function useAnswer<Q, T>(
  name: string,
  question: Q | undefined,
  ask: (question: Q, leaving: { readonly signal: AbortSignal }) => Promise<Answer<T>>,
): Asked<T> {
  const key = question === undefined ? '' : JSON.stringify(question);
  const [stood] = useSettled(key, STILL);
  const settled = stood === key ? stood : '';
  const { data, error, isPlaceholderData } = useQuery({
    queryKey: ['asked', name, settled],
    // The context itself, since its signal counts as looked at once it is read.
    queryFn: (context) => ask(JSON.parse(settled), context),
    enabled: settled !== '',
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: KEPT,
    retry: false,
    placeholderData: (before) => before,
  });
  if (question === undefined) return { value: undefined, working: false, fault: undefined };
  const fresh = settled === key && !isPlaceholderData;
  const fault = fresh ? (error?.message ?? (data && !data.ok ? data.message : undefined)) : undefined;
  return {
    value: data?.ok ? data.value : undefined,
    working: !fresh || (data === undefined && !error),
    fault,
  };
}

/** "Working…" while an answer is on its way, and what was wrong; said politely. */
export function AnswerState({ working, fault }: Pick<Asked<unknown>, 'working' | 'fault'>) {
  return (
    <>
      <p className="hint answer-state" role="status">
        {working ? words().shared.working : ''}
      </p>
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
    </>
  );
}
