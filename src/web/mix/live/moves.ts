/** What the keeper does to a live mix: balance it, move one share, change its rules or foods. */
import { emptiedBy } from '../../../formulation/advice/ask.ts';
import { evaluationOf } from '../../../formulation/explain/evaluation-of.ts';
import type { Problem, Shares } from '../../../formulation/problem/problem.ts';
import type { Best, Collision, Dragged, Result } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { heldShares, withHolds } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import type { Answer } from '../../worker/formulation.worker.ts';
import { type EvaluationKeeper, failed } from './evaluation-keeper.ts';

/** What moves ask of the formulation worker. */
interface MoveEngine {
  /** The best mix: all of it, or as much as was known when it was found, or stopped. Undefined where nothing was found. */
  solve(problem: Problem): Promise<Answer<Result | ({ readonly status: 'optimal' } & Best)> | undefined>;
  /** The nearest mix at once; where foods are counted it may break those rules, and then says so. */
  follow(problem: Problem, from: Shares, held: Shares): Promise<Answer<Dragged>>;
  /** The nearest mix that keeps every rule, which may take long. @param signal aborted where it is wanted no longer */
  settle(
    problem: Problem,
    from: Shares,
    held: Shares,
    moving: string | undefined,
    signal: AbortSignal,
  ): Promise<Answer<Dragged>>;
  /** A move while a slider is dragged: undefined where a newer one overtook it. @throws Error where the worker failed */
  newestMove(
    problem: Problem,
    from: Shares,
    held: Shares,
    moving: string,
  ): Promise<Answer<Dragged> | undefined>;
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
  /** Whether the keeper stopped the search for the best mix. */
  stopped(): boolean;
  /** Told where a mix breaks rules that count foods until it goes on to one that keeps them. */
  unsettled(move: Unsettled): void;
}

/** A mix on its way to one that keeps the rules that count foods. */
export interface Unsettled {
  /** Shares before, percent by food id, with the one that was moved. */
  readonly from: Shares;
  readonly held: Shares;
  readonly moving: string | undefined;
  readonly step: string;
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
  const best = answer.value;
  // With holds this is the evaluation of another problem than the mix's, in which each of them counts as a bound.
  if ('nutrients' in best) take(m, { ...now, problem }, best);
  m.change((mix) => withShares(mix, best.shares));
  m.say(m.stopped() ? words().long.took : words().verdict.made);
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
  const step = `move ${id}`;
  if (result.status === 'optimal') take(m, now, result);
  m.show(result.status === 'optimal' ? result.shares : alone, step);
  if (result.status === 'optimal' && result.breaches)
    m.unsettled({ from: { ...from, [id]: share }, held, moving: id, step });
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
  const held = heldShares(changed);
  const answer = await m.engine.follow(changed.problem, changed.shares, held).catch(() => undefined);
  if (!answer?.ok || answer.value.status !== 'optimal') return;
  const followed = answer.value;
  // What was changed again in the meantime is not overwritten.
  if (m.kept()?.problem !== kept.problem) return;
  if (followed.breaches) return m.unsettled({ from: changed.shares, held, moving: undefined, step });
  take(m, changed, followed);
  m.change((mix) => withShares(mix, followed.shares), step);
}

/** Goes on to the nearest mix that keeps every rule, unless the mix is changed before it is found. */
export async function settle(
  m: MoveContext,
  { from, held, moving, step }: Unsettled,
  signal: AbortSignal,
): Promise<void> {
  const now = current(m);
  if (!now) return;
  const before = said(m);
  const answer = await m.engine.settle(now.problem, from, held, moving, signal).catch(() => undefined);
  if (signal.aborted || said(m) !== before || !answer?.ok || answer.value.status !== 'optimal') return;
  const settled = answer.value;
  take(m, now, settled);
  m.change((mix) => withShares(mix, settled.shares), step);
}

/** What is settled: where it is another, it was changed. */
function said(m: MoveContext): string {
  const kept = m.kept();
  return JSON.stringify([kept?.problem, kept?.shares]);
}

function current(m: MoveContext): Mix | undefined {
  const kept = m.kept();
  return kept && m.effective(kept);
}

/** Keeps the evaluation that came with an answer, so that it is not asked for again. */
function take({ keeper }: MoveContext, mix: Mix, answer: Parameters<typeof evaluationOf>[0]): void {
  keeper.came(mix.problem, answer.shares, evaluationOf(answer));
}

export function withShares(mix: Mix, shares: Shares): Mix {
  return { ...mix, shares: { ...mix.shares, ...shares } };
}
