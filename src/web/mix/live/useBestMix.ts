/** The best mix that the rules allow with every hold kept: how far shares may move, or what collides. */
import { useEffect, useState } from 'react';
import type { Collision, Following } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { withHolds } from '../../../household/reckon/mix/mix-edits.ts';
import { useEngine } from '../../worker/engine.ts';

/** What the best mix comes to and how far that is proven. */
export type Best = Pick<Following, 'objective' | 'gap' | 'aims' | 'shares'>;

interface BestMix {
  readonly spans: Following['spans'] | undefined;
  readonly collision: Collision | undefined;
  /** What is odd in figures and rules, and yet possible. */
  readonly questions: Following['questions'];
  /** Undefined while it is sought, and where there is none. */
  readonly best: Best | undefined;
  collided(collision: Collision): void;
}

/** How long rules and holds must stay unchanged before the best mix is sought, ms. */
const RULES_STILL_MS = 60;

export function useBestMix(mix: Mix): BestMix {
  const [spans, setSpans] = useState<Following['spans']>();
  const [collision, setCollision] = useState<Collision>();
  const [questions, setQuestions] = useState<Following['questions']>([]);
  const [best, setBest] = useState<Best>();
  const bound = JSON.stringify(withHolds(mix));
  const engine = useEngine();

  // Shares do not matter here but for those held, so that a dragged slider does not seek the best mix again. Spans and
  // collision stay on the screen until the next are there.
  useEffect(() => {
    let stale = false;
    setBest(undefined);
    const timer = setTimeout(async () => {
      const answer = await engine.solve(JSON.parse(bound)).catch(() => undefined);
      if (stale || !answer?.ok) return;
      const result = answer.value;
      setCollision(result.status === 'infeasible' ? result : undefined);
      setSpans(result.status === 'optimal' ? { ...result.spans } : undefined);
      setQuestions(result.questions);
      setBest(result.status === 'optimal' ? result : undefined);
    }, RULES_STILL_MS);
    return () => {
      stale = true;
      clearTimeout(timer);
    };
  }, [bound, engine]);

  return { spans, collision, questions, best, collided: setCollision };
}
