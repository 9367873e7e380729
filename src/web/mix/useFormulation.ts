/** Keeps the worker's answers in step with the mix: how it stands, how far shares may move, what collides. */
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { isFit as isFitting, type VerdictState, verdictOf } from '../../formulation/explain/verdict.ts';
import type { Shares } from '../../formulation/problem/problem.ts';
import type { Progress, SolvedSoFar } from '../../formulation/problem/progress.ts';
import type { Collision, Evaluation, Following, WholeGrams } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine, longAnswers, newestMove, useEngine, useEngineState } from '../worker/engine.ts';
import { takesLong } from '../worker/lane.ts';
import { latest } from '../worker/latest.ts';
import { EvaluationKeeper, type Fault, failed, type Known } from './live/evaluation-keeper.ts';
import { balance, edit, type MoveContext, move, settle, type Unsettled } from './live/moves.ts';
import { NO_NOTICE, noticeFor } from './live/notice.ts';
import { type Best, bestMixOf, useBestMix } from './live/useBestMix.ts';
import { useGrams } from './live/useGrams.ts';
import { useSettling } from './live/useSettling.ts';

/** How the mix stands: as its verdict says, or no mix can keep its rules, or nobody knows yet, or it cannot be read. */
export type MixState = VerdictState | 'none' | 'working' | 'fault';

export interface FormulationView {
  readonly evaluation: Evaluation | undefined;
  readonly spans: Following['spans'] | undefined;
  readonly collision: Collision | undefined;
  /** What is odd in figures and rules, and yet possible. */
  readonly questions: Following['questions'];
  /** Undefined while it is sought, and where there is none. */
  readonly best: Best | undefined;
  readonly weighed: WholeGrams | undefined;
  /** The problem could not be read. */
  readonly fault: Fault | undefined;
  readonly state: MixState;
  /** A short word for screen readers after something moved or refused to. */
  readonly notice: string;
  say(notice: string): void;
  /** Whether the best mix is being sought, or one that keeps the rules that count foods. */
  readonly working: boolean;
  /** What is found so far of the best mix, while it is sought and takes long. */
  readonly soFar: Progress<SolvedSoFar> | undefined;
  /** Whether the search for the best mix was stopped: `best` is then the best found till then, if there was any. */
  readonly stopped: boolean;
  /** Ends the search; what was found stays. */
  stop(): void;
  /** Goes on with a search that was stopped. */
  goOn(): void;
  balance(): Promise<void>;
  /**
   * Moves one share; the others follow.
   * @param spare whether nothing moves where other foods would be left with nothing: those are the answer
   */
  move(id: string, share: number, spare?: boolean): Promise<readonly string[]>;
  endMove(): void;
  /** Changes the rules or foods; a mix that was in range goes on to the nearest one that is. */
  edit(next: (mix: Mix) => Mix, step?: string): Promise<void>;
}

const WORKER: Omit<MoveContext['engine'], 'solve'> = {
  follow: (problem, from, held) => engine.drag(problem, from, held),
  settle: (problem, from, held, moving, signal) =>
    longAnswers.settle(problem, from, held, moving, { signal }),
  newestMove,
};

/**
 * @param mix with what its animals bring @param effective brings that to a mix as it is kept
 */
export function useFormulation(mix: Mix, effective: (mix: Mix) => Mix): FormulationView {
  const { change, current: kept } = useMixDraft();
  const [{ evaluation, fault }, show] = useState<Known>({});
  const [notice, setNotice] = useState(NO_NOTICE);
  const { restart } = useEngineState();
  const [balancing, setBalancing] = useState(false);
  /** Of the best mix that was asked for last: aborted where the keeper stopped it. */
  const asked = useRef(new AbortController());
  const worker = useEngine();
  // Another worker knows nothing of what was asked before.
  const keeper = useMemo(
    () =>
      new EvaluationKeeper(
        latest(async (problem, shares) => worker.evaluate(problem, shares)),
        show,
      ),
    [worker],
  );
  const { problem, shares } = mix;

  // Before the page is painted, so that shares and what came with them are seen together.
  useLayoutEffect(() => void keeper.follow(problem, shares), [keeper, problem, shares]);

  const fits = evaluation !== undefined && isFitting(evaluation);
  const fitsNow = useRef(fits);
  fitsNow.current = fits;

  const say = useCallback(
    (text: string) => {
      const now = kept();
      setNotice({ text, about: now && effective(now).problem });
    },
    [kept, effective],
  );

  const sought = useBestMix(mix);
  const { spans, collision, questions, best, seeking, soFar, stopped, leaveOff, goOn, collided } = sought;
  const weighed = useGrams(mix, fits);
  /** What the search had found when it was stopped. */
  const keptBest = useRef<Best | undefined>(undefined);
  keptBest.current = stopped ? best : undefined;

  const unsettled = useRef<(move: Unsettled) => void>(() => {});
  const moved = useMemo<MoveContext>(
    () => ({
      engine: {
        ...WORKER,
        async solve(problem) {
          const found = keptBest.current;
          if (found) return { ok: true, value: { ...found, status: 'optimal' } };
          return bestMixOf(problem, asked.current.signal).catch(failed);
        },
      },
      keeper,
      kept,
      effective,
      change,
      say,
      collided,
      stopped: () => asked.current.signal.aborted || keptBest.current !== undefined,
      unsettled: (move) => unsettled.current(move),
    }),
    [keeper, kept, effective, change, say, collided],
  );
  const settling = useSettling(
    mix,
    kept,
    useCallback((of, signal) => settle(moved, of, signal), [moved]),
  );
  unsettled.current = settling.unsettled;
  /** The slider that is dragged, and the shares when it was taken hold of. */
  const anchor = useRef<{ id: string; shares: Shares } | undefined>(undefined);

  return {
    evaluation,
    spans,
    collision,
    questions,
    best,
    weighed,
    fault,
    state: fault ? 'fault' : stateOf(evaluation, collision),
    notice: noticeFor(notice, problem),
    say,
    working: seeking || balancing || settling.settling,
    soFar,
    stopped,
    stop: useCallback(() => {
      asked.current.abort();
      settling.leave();
      leaveOff();
      if (takesLong(problem)) return say('');
      // Nothing else ends an answer that should not take long.
      restart();
      say(words().verdict.stopped);
    }, [settling.leave, leaveOff, restart, say, problem]),
    goOn: useCallback(() => {
      say('');
      goOn();
    }, [goOn, say]),
    balance: useCallback(async () => {
      asked.current = new AbortController();
      setBalancing(true);
      try {
        await balance(moved);
      } finally {
        setBalancing(false);
      }
    }, [moved]),
    move: useCallback(
      async (id, share, spare) => {
        const now = kept();
        if (!now) return [];
        if (anchor.current?.id !== id) anchor.current = { id, shares: effective(now).shares };
        settling.hold();
        return move(moved, id, share, anchor.current.shares, spare);
      },
      [moved, kept, effective, settling.hold],
    ),
    endMove: useCallback(() => {
      anchor.current = undefined;
      settling.letGo();
    }, [settling.letGo]),
    edit: useCallback((next, step) => edit(moved, next, { step, follows: fitsNow.current }), [moved]),
  };
}

function stateOf(evaluation: Evaluation | undefined, collision: Collision | undefined): MixState {
  const state = evaluation && verdictOf(evaluation).state;
  if (state === 'sure' || state === 'if') return state;
  return collision ? 'none' : (state ?? 'working');
}

/** Whether no rule is broken, however sure that is. */
export function isFit(state: MixState): boolean {
  return state === 'sure' || state === 'if';
}
