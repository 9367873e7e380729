/** Trying changes beforehand: which of them a mix can solve. */
import { useEffect, useState } from 'react';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { useEngine } from '../../worker/engine.ts';

/** Which of some changed problems a mix can solve, by key. */
export function useWorking(tried: readonly (readonly [key: string, problem: Problem])[]): readonly string[] {
  const question = JSON.stringify(tried);
  const [works, setWorks] = useState<{ question: string; keys: readonly string[] }>();
  const engine = useEngine();
  useEffect(() => {
    let stale = false;
    const asked = (JSON.parse(question) as [string, Problem][]).map(async ([key, problem]) => {
      const answer = await engine.move(problem, {}, {});
      return answer.ok && answer.value.status === 'optimal' ? [key] : [];
    });
    void Promise.all(asked).then(
      (found) => stale || setWorks({ question, keys: found.flat() }),
      () => {},
    );
    return () => {
      stale = true;
    };
  }, [question, engine]);
  return works?.question === question ? works.keys : [];
}
