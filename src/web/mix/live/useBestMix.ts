/** The best mix that the rules allow with every hold kept: how far shares may move, or what collides. */
import { useCallback, useEffect, useMemo, useState } from 'react';
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
  /** Whether it is sought at this moment. */
  readonly seeking: boolean;
  /** Seeks it no longer, until rules, foods or holds change. */
  leaveOff(): void;
  collided(collision: Collision): void;
}

/** How long rules and holds must stay unchanged before the best mix is sought, ms. */
const RULES_STILL_MS = 60;

export function useBestMix(mix: Mix): BestMix {
  const [spans, setSpans] = useState<Following['spans']>();
  const [collision, setCollision] = useState<Collision>();
  const [questions, setQuestions] = useState<Following['questions']>([]);
  const [best, setBest] = useState<Best>();
  const [seeking, setSeeking] = useState(false);
  const bound = useMemo(() => JSON.stringify(withHolds(mix)), [mix]);
  /** What is not to be sought. */
  const [left, setLeft] = useState<string>();
  const engine = useEngine();

  // Shares do not matter here but for those held, so that a dragged slider does not seek the best mix again. Spans and
  // collision stay on the screen until the next are there.
  useEffect(() => {
    let stale = false;
    setBest(undefined);
    setSeeking(left !== bound);
    if (left === bound) return;
    const timer = setTimeout(async () => {
      const answer = await engine.solve(JSON.parse(bound)).catch(() => undefined);
      if (stale) return;
      setSeeking(false);
      if (!answer?.ok) return;
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
  }, [bound, left, engine]);

  const leaveOff = useCallback(() => setLeft(bound), [bound]);
  return { spans, collision, questions, best, seeking, leaveOff, collided: setCollision };
}
