/** The best mix that the rules allow with every hold kept: how far shares may move, or what collides. */
import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Progress, SolvedSoFar } from '../../../formulation/problem/progress.ts';
import type { Best as BestFound, Collision, Following } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { withHolds } from '../../../household/reckon/mix/mix-edits.ts';
import { useHeard } from '../../shared/long/useHeard.ts';
import { longAnswers, useEngine, useLongGeneration } from '../../worker/engine.ts';

/** What the best mix comes to and how far that is proven. */
export type Best = Pick<Following, 'objective' | 'gap' | 'aims' | 'shares'>;

interface BestMix {
  readonly spans: Following['spans'] | undefined;
  readonly collision: Collision | undefined;
  /** What is odd in figures and rules, and yet possible. */
  readonly questions: Following['questions'];
  /** Undefined while it is sought, and where there is none; where the search was stopped, the best found till then. */
  readonly best: Best | undefined;
  /** Whether it is sought at this moment. */
  readonly seeking: boolean;
  /** What is found so far, while it is sought and told. */
  readonly soFar: Progress<SolvedSoFar> | undefined;
  /** Whether the search was stopped before its end. */
  readonly stopped: boolean;
  /** Seeks it no longer, until rules, foods or holds change; what was found stays. */
  leaveOff(): void;
  /** Seeks it after all. */
  goOn(): void;
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
  const { shown, newest, hear } = useHeard<SolvedSoFar>();
  // Another worker knows nothing of what was asked before.
  const engine = useEngine();
  const generation = useLongGeneration();

  // Shares do not matter here but for those held, so that a dragged slider does not seek the best mix again. Spans and
  // collision stay on the screen until the next are there.
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew of another worker
  useEffect(() => {
    const leaving = new AbortController();
    setSeeking(left !== bound);
    if (left === bound) return;
    setBest(undefined);
    const timer = setTimeout(async () => {
      const answer = await longAnswers
        .solve(JSON.parse(bound), { signal: leaving.signal, tell: (told) => hear(bound, told) })
        .catch(() => undefined);
      if (leaving.signal.aborted) return;
      setSeeking(false);
      if (!answer?.ok) return;
      const result = answer.value;
      setCollision(result.status === 'infeasible' ? result : undefined);
      setSpans(result.status === 'optimal' ? { ...result.spans } : undefined);
      setQuestions(result.questions);
      setBest(result.status === 'optimal' ? result : undefined);
    }, RULES_STILL_MS);
    return () => {
      clearTimeout(timer);
      leaving.abort();
    };
  }, [bound, left, engine, generation]);

  const leaveOff = useCallback(() => {
    const found = newest(bound)?.found;
    setLeft(bound);
    if (found?.status === 'infeasible') setCollision(found);
    if (!found) return;
    setBest(found.status === 'optimal' ? found : undefined);
    // How far shares may move is not known of these rules.
    setSpans(undefined);
  }, [bound, newest]);
  const goOn = useCallback(() => setLeft(undefined), []);
  const soFar = shown(bound);
  return {
    spans,
    collision,
    questions,
    best,
    seeking,
    soFar: seeking ? soFar : undefined,
    stopped: left === bound,
    leaveOff,
    goOn,
    collided: setCollision,
  };
}

/**
 * The best mix of a problem as soon as it is found, though how far its shares may move is still being worked out; or, once
 * the signal is aborted, the best found till then.
 * @returns undefined where it was stopped before there was any
 */
export async function bestMixOf(
  problem: Mix['problem'],
  signal: AbortSignal,
): Promise<
  | Awaited<ReturnType<typeof longAnswers.solve>>
  | { readonly ok: true; readonly value: { readonly status: 'optimal' } & BestFound }
  | undefined
> {
  const leaving = new AbortController();
  return new Promise((answered, failed) => {
    let found: SolvedSoFar | undefined;
    const leave = () => {
      answered(found?.status === 'optimal' ? { ok: true, value: found } : undefined);
      leaving.abort();
    };
    signal.addEventListener('abort', leave);
    longAnswers
      .solve(problem, {
        signal: leaving.signal,
        tell(told) {
          found = told.found ?? found;
          if (told.doing === 'spans' && found) leave();
        },
      })
      .then(answered, failed);
  });
}
