/** Keeps the worker's answers in step with the mix: how it stands, how far shares may move, what collides. */
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { isFit as isFitting, type VerdictState, verdictOf } from '../../formulation/explain/verdict.ts';
import type { Shares } from '../../formulation/problem/problem.ts';
import type { Progress, SolvedSoFar } from '../../formulation/problem/progress.ts';
import type { Collision, Evaluation, Following, WholeGrams } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { engine, hand, longAnswers, newestMove, useEngine, useEngineState } from '../worker/engine.ts';
import { takesLong } from '../worker/lane.ts';
import { latest } from '../worker/latest.ts';
import { EvaluationKeeper, type Fault, failed, type Known } from './live/evaluation-keeper.ts';
import { balance, edit, type MoveContext, move, settle, type Unsettled, withShares } from './live/moves.ts';
import { NO_NOTICE, noticeFor } from './live/notice.ts';
import { type Best, bestMixOf, useBestMix } from './live/useBestMix.ts';
import { useGrams } from './live/useGrams.ts';
import { useSettling } from './live/useSettling.ts';
import { useUnkept } from './live/useUnkept.ts';

/** How the mix stands: as its verdict says, or no mix can keep its rules, or nobody knows yet, or it cannot be read. */
export type MixState = VerdictState | 'none' | 'working' | 'fault';

/** What can be done to the mix; the same object while the mix has the same foods, rules and animals. */
export interface MixActs {
  /** A short word for screen readers after something moved or refused to. */
  say(notice: string): void;
  /** Ends the search for the best mix; what was found stays. */
  stop(): void;
  /** Goes on with a search that was stopped. */
  goOn(): void;
  balance(): Promise<void>;
  /** A hand takes hold of a slider: what takes long pauses until it is still, or lets go. */
  take(): void;
  /**
   * Moves one share; the others follow. It is shown at once and kept with `endMove`.
   * @param spare whether nothing moves where other foods would be left with nothing: those are the answer
   */
  move(id: string, share: number, spare?: boolean): Promise<readonly string[]>;
  endMove(): void;
  /** The share of a food this moment, percent. */
  shareOf(id: string): number;
  /** Changes the rules or foods; a mix that was in range goes on to the nearest one that is. */
  edit(next: (mix: Mix) => Mix, step?: string): Promise<void>;
}

export interface FormulationView extends MixActs {
  readonly evaluation: Evaluation | undefined;
  readonly spans: Following['spans'] | undefined;
  readonly collision: Collision | undefined;
  /** What is odd in figures and rules, and yet possible. */
  readonly questions: Following['questions'];
  /** Undefined while it is sought, and where there is none; the best found so far where the search was stopped. */
  readonly best: Best | undefined;
  readonly weighed: WholeGrams | undefined;
  /** The problem could not be read. */
  readonly fault: Fault | undefined;
  readonly state: MixState;
  readonly notice: string;
  /** Whether the best mix is being sought, or one that keeps the rules that count foods. */
  readonly working: boolean;
  /** What is found so far of the best mix, while it is sought and takes long. */
  readonly soFar: Progress<SolvedSoFar> | undefined;
  /** Whether the search for the best mix was stopped. */
  readonly stopped: boolean;
}

interface LiveMix {
  /** With what its animals bring, as it is shown. */
  readonly shown: Mix;
  /** Whether shares are shown that are not kept yet: a hand moves one of them. */
  readonly moving: boolean;
  readonly view: FormulationView;
  readonly acts: MixActs;
}

const WORKER: Omit<MoveContext['engine'], 'solve'> = {
  follow: (problem, from, held) => engine.drag(problem, from, held),
  settle: (problem, from, held, moving, signal) =>
    longAnswers.settle(problem, from, held, moving, { signal }),
  newestMove,
};

/**
 * @param mix as it is kept, with what its animals bring @param effective brings that to a mix as it is kept; the same
 * object of a problem for the same problem, and the mix's own
 */
export function useFormulation(mix: Mix, effective: (mix: Mix) => Mix): LiveMix {
  const { unkept, current, change, show, keep } = useUnkept();
  const shown = useMemo(() => (unkept ? withShares(mix, unkept) : mix), [mix, unkept]);
  const [{ evaluation, fault }, tell] = useState<Known>({});
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
        tell,
      ),
    [worker],
  );
  const { problem, shares } = shown;

  // Before the page is painted, so that shares and what came with them are seen together.
  useLayoutEffect(() => void keeper.follow(problem, shares), [keeper, problem, shares]);

  const fits = evaluation !== undefined && isFitting(evaluation);
  const fitsNow = useRef(fits);
  fitsNow.current = fits;

  const say = useCallback(
    (text: string) => {
      const now = current();
      setNotice({ text, about: now && effective(now).problem });
    },
    [current, effective],
  );

  const sought = useBestMix(mix);
  const { spans, collision, questions, best, seeking, soFar, stopped, leaveOff, goOn, collided } = sought;
  const weighed = useGrams(shown, fits);
  /** What the search had found when it was stopped. */
  const stoppedAt = useRef<Best | undefined>(undefined);
  stoppedAt.current = stopped ? best : undefined;

  const unsettled = useRef<(move: Unsettled) => void>(() => {});
  const moved = useMemo<MoveContext>(
    () => ({
      engine: {
        ...WORKER,
        async solve(problem) {
          const found = stoppedAt.current;
          if (found) return { ok: true, value: { ...found, status: 'optimal' } };
          return bestMixOf(problem, asked.current.signal).catch(failed);
        },
      },
      keeper,
      kept: current,
      effective,
      change,
      show,
      say,
      collided,
      stopped: () => asked.current.signal.aborted || stoppedAt.current !== undefined,
      unsettled: (move) => unsettled.current(move),
    }),
    [keeper, current, effective, change, show, say, collided],
  );
  const settling = useSettling(
    shown,
    current,
    useCallback((of, signal) => settle(moved, of, signal), [moved]),
  );
  unsettled.current = settling.unsettled;
  const { hold, letGo, leave } = settling;
  /** The slider that is dragged, and the shares when it was taken hold of. */
  const anchor = useRef<{ id: string; shares: Shares } | undefined>(undefined);

  const acts = useMemo<MixActs>(
    () => ({
      say,
      stop() {
        asked.current.abort();
        leave();
        leaveOff();
        if (takesLong(mix.problem)) return say('');
        // Nothing else ends an answer that should not take long.
        restart();
        say(words().verdict.stopped);
      },
      goOn() {
        say('');
        goOn();
      },
      async balance() {
        asked.current = new AbortController();
        setBalancing(true);
        try {
          await balance(moved);
        } finally {
          setBalancing(false);
        }
      },
      take: hand.moves,
      async move(id, share, spare) {
        const now = current();
        if (!now) return [];
        if (anchor.current?.id !== id) anchor.current = { id, shares: effective(now).shares };
        hold();
        hand.moves();
        return move(moved, id, share, anchor.current.shares, spare);
      },
      endMove() {
        anchor.current = undefined;
        hand.rests();
        keep();
        letGo();
      },
      shareOf: (id) => current()?.shares[id] ?? 0,
      edit: (next, step) => edit(moved, next, { step, follows: fitsNow.current }),
    }),
    [say, leave, leaveOff, mix.problem, restart, goOn, moved, current, effective, hold, keep, letGo],
  );
  const said = useMemo(() => noticeFor(notice, problem), [notice, problem]);
  const working = seeking || balancing || settling.settling;
  const view = useMemo<FormulationView>(() => {
    const state = fault ? 'fault' : stateOf(evaluation, collision);
    const notice = said;
    const found = { evaluation, spans, collision, questions, best, weighed, fault, state, notice };
    return { ...acts, ...found, working, soFar, stopped };
  }, [acts, evaluation, spans, collision, questions, best, weighed, fault, said, working, soFar, stopped]);
  return { shown, moving: unkept !== undefined, view, acts };
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
