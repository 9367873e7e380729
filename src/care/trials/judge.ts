/** All trials of one food with one animal, taken together. */
import type { Day } from '../../kitchen/model.ts';
import type { Trial } from '../model.ts';
import { type Evidence, evidenceOf, NO_EVIDENCE, together } from './evidence.ts';
import { type Verdict, type VerdictIs, verdictIs, verdictOn } from './verdict.ts';

/**
 * What a look counts in the next trial of the same food, and again in each one after that: tastes change, so what is newer
 * counts more, and what is older is not forgotten (common practice, no source).
 */
const OLDER = 0.5;

export interface Judged {
  /**
   * What holds: the last verdict that fell. A food that was refused stays refused while a new trial is undecided; only a
   * new verdict brings it back. An upset stands whatever came before or after.
   */
  readonly is: VerdictIs;
  /** The trial by which that holds; the newest where nothing was decided yet. */
  readonly by: Trial;
  /** What all looks say as things stand, the older ones counting less. */
  readonly verdict: Verdict;
  /** Oldest first. */
  readonly trials: readonly [Trial, ...Trial[]];
}

/** @param trials of one food with one animal, in any order; undefined where there are none */
export function judge(trials: readonly Trial[]): Judged | undefined {
  const [first, ...later] = inOrder(trials);
  if (!first) return undefined;
  let evidence: Evidence = NO_EVIDENCE;
  let held: { is: VerdictIs; by: Trial } | undefined;
  let newest = first;
  for (const trial of [first, ...later]) {
    newest = trial;
    evidence = together(evidenceOf(trial.offerings), evidence, OLDER);
    const is = verdictIs(evidence);
    if (is !== 'undecided' && held?.is !== 'upset') held = { is, by: trial };
  }
  const { is, by } = held ?? { is: 'undecided', by: newest };
  return { is, by, verdict: verdictOn(evidence), trials: [first, ...later] };
}

/** By the day on which they began, oldest first. */
function inOrder(trials: readonly Trial[]): Trial[] {
  const key = (t: Trial) => `${begunOn(t) ?? '9999'} ${t.id}`;
  return [...trials].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** The first day on which it was offered, or is to be. */
export function begunOn({ days, offerings }: Trial): Day | undefined {
  return [...days, ...offerings.map((o) => o.on)].sort()[0];
}
