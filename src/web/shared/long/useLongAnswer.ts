/** As `useAnswer`, for answers that tell on their way what is found, and that the keeper can stop. */
import { useState } from 'react';
import type { Progress } from '../../../formulation/problem/progress.ts';
import type { Answer } from '../../worker/formulation.worker.ts';
import type { Hearing } from '../../worker/long-lane.ts';
import { type Asked, useAnswer } from '../answer.tsx';
import { useHeard } from './useHeard.ts';

export interface LongAsked<T, F> extends Asked<T> {
  /** How far the answer is, while it is worked out, and where it was stopped. */
  readonly soFar: Progress<F> | undefined;
  /** Whether the keeper stopped it: what was found till then is in `soFar`. */
  readonly stopped: boolean;
  stop(): void;
  /** Begins anew after a stop. */
  goOn(): void;
}

/**
 * @param name of the kind of question @param question plain data; undefined asks nothing. Where it changes, what was
 *   being worked out is dropped.
 */
export function useLongAnswer<Q, T, F>(
  name: string,
  question: Q | undefined,
  ask: (question: Q, hearing: Hearing<Progress<F>>) => Promise<Answer<T>>,
): LongAsked<T, F> {
  const key = question === undefined ? '' : JSON.stringify(question);
  const { shown, newest, hear } = useHeard<F>();
  const [left, leave] = useState<{ key: string; told: Progress<F> | undefined }>();
  const stopped = key !== '' && left?.key === key;
  const asked = useAnswer(name, stopped ? undefined : question, (q, leaving) =>
    ask(q, { signal: leaving.signal, tell: (told) => hear(JSON.stringify(q), told) }),
  );
  return {
    ...asked,
    soFar: stopped ? left.told : asked.working ? shown(key) : undefined,
    stopped,
    stop: () => leave({ key, told: newest(key) }),
    goOn: () => leave(undefined),
  };
}
