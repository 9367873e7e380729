/** Trying changes beforehand: which of them a mix can solve. */
import { useEffect, useState } from 'react';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { longAnswers, useEngine, useLongGeneration } from '../../worker/engine.ts';

/** Which of some changed problems a mix can solve, by key. */
export function useWorking(tried: readonly (readonly [key: string, problem: Problem])[]): readonly string[] {
  const question = JSON.stringify(tried);
  const [works, setWorks] = useState<{ question: string; keys: readonly string[] }>();
  // Another worker is asked anew.
  const engine = useEngine();
  const generation = useLongGeneration();
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew of another worker
  useEffect(() => {
    const leaving = new AbortController();
    const asked = (JSON.parse(question) as [string, Problem][]).map(async ([key, problem]) => {
      const answer = await longAnswers.feasible(problem, { signal: leaving.signal, aside: true });
      return answer.ok && answer.value ? [key] : [];
    });
    void Promise.all(asked).then(
      (found) => leaving.signal.aborted || setWorks({ question, keys: found.flat() }),
      () => {},
    );
    return () => leaving.abort();
  }, [question, engine, generation]);
  return works?.question === question ? works.keys : [];
}
