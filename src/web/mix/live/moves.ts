/** What the keeper does to a live mix: balance it, move one share, change its rules or foods. */
import { emptiedBy } from '../../../formulation/advice/ask.ts';
import { evaluationOf } from '../../../formulation/explain/evaluation-of.ts';
import type { Problem, Shares } from '../../../formulation/problem/problem.ts';
import type { Collision, Following, MoveResult, Result } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { heldShares, withHolds } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import type { Answer } from '../../worker/formulation.worker.ts';
import { type EvaluationKeeper, failed } from './evaluation-keeper.ts';

/** What moves ask of the formulation worker. */
interface MoveEngine {
  /** Undefined where it was stopped. */
  solve(problem: Problem): Promise<Answer<Result> | undefined>;
  move(problem: Problem, from: Shares, held: Shares): Promise<Answer<MoveResult>>;
  /** A move while a slider is dragged: undefined where a newer one overtook it. @throws Error where the worker failed */
  newestMove(
    problem: Problem,
    from: Shares,
    held: Shares,
    moving: string,
  ): Promise<Answer<MoveResult> | undefined>;
}

/** The mix that is moved, and who must hear of it. */
export interface MoveContext {
  readonly engine: MoveEngine;
  readonly keeper: EvaluationKeeper;
  /** The mix as it is kept at this moment, without what its animals bring. */
  kept(): Mix | undefined;
  /** Brings what its animals bring to a mix as it is kept. */
  effective(mix: Mix): Mix;
  change(next: (mix: Mix) => Mix, step?: string): void;
  /** Shows shares that a hand has moved to; they are kept once it lets go. */
  show(shares: Shares, step: string): void;
  /** Says a short word to screen readers. */
  say(notice: string): void;
  /** Told when no mix can keep the rules. */
  collided(collision: Collision): void;
}

/** Goes to the best mix of all; holds stay. */
export async function balance(m: MoveContext): Promise<void> {
  const now = current(m);
  if (!now) return;
  const problem = withHolds(now);
  const before = m.kept()?.problem;
  const answer = await m.engine.solve(problem);
  // What was changed meanwhile has another best mix, which this one says nothing of.
  if (!answer || JSON.stringify(m.kept()?.problem) !== JSON.stringify(before)) return;
  if (!answer.ok) return m.keeper.fail(answer);
  if (answer.value.status === 'infeasible') {
    m.collided(answer.value);
    m.say(words().verdict.nothingFits);
    return;
  }
  // With holds this is the evaluation of another problem than the mix's, in which each of them counts as a bound.
  take(m, { ...now, problem }, answer.value);
  const { shares } = answer.value;
  m.change((mix) => withShares(mix, shares));
  m.say(words().verdict.made);
}

/**
 * Moves one share; the others follow.
 * @param from shares when the slider was taken hold of: the others stay as near to them as the rules allow
 * @param spare whether the mix stays as it is where the move would leave other foods with nothing
 * @returns the foods for whose sake nothing was moved
 */
export async function move(
  m: MoveContext,
  id: string,
  share: number,
  from: Shares,
  spare = false,
): Promise<readonly string[]> {
  const now = current(m);
  if (!now) return [];
  const held = { ...heldShares(now), [id]: share };
  const alone = { [id]: share };
  const answer = await m.engine
    .newestMove(now.problem, { ...from, [id]: share }, held, id)
    .catch((error: unknown) => {
      // Nobody can say what would follow, but what the keeper asked for is not lost.
      m.show(alone, `move ${id}`);
      return failed(error);
    });
  if (!answer) return [];
  if (!answer.ok) {
    m.keeper.fail(answer);
    return [];
  }
  const result = answer.value;
  const emptied = spare && result.status === 'optimal' ? emptiedBy(from, result.shares, id) : [];
  if (emptied.length > 0) return emptied;
  if (result.status === 'optimal') take(m, now, result);
  m.show(result.status === 'optimal' ? result.shares : alone, `move ${id}`);
  return [];
}

/**
 * Changes rules or foods.
 * @param follows whether the mix was in range: it then goes on to the nearest one that is
 */
export async function edit(
  m: MoveContext,
  next: (mix: Mix) => Mix,
  { step = 'edit', follows }: { step: string | undefined; follows: boolean },
): Promise<void> {
  m.say('');
  m.change(next, step);
  const kept = m.kept();
  if (!follows || !kept) return;
  const changed = m.effective(kept);
  const answer = await m.engine
    .move(changed.problem, changed.shares, heldShares(changed))
    .catch(() => undefined);
  if (!answer?.ok || answer.value.status !== 'optimal') return;
  const followed = answer.value;
  // What was changed again in the meantime is not overwritten.
  if (m.kept()?.problem !== kept.problem) return;
  take(m, changed, followed);
  m.change((mix) => withShares(mix, followed.shares), step);
}

function current(m: MoveContext): Mix | undefined {
  const kept = m.kept();
  return kept && m.effective(kept);
}

/** Keeps the evaluation that came with an answer, so that it is not asked for again. */
function take({ keeper }: MoveContext, mix: Mix, answer: Following): void {
  keeper.came(mix.problem, answer.shares, evaluationOf(answer));
}

export function withShares(mix: Mix, shares: Shares): Mix {
  return { ...mix, shares: { ...mix.shares, ...shares } };
}
