/** The ration in words: how much is mix, and how much what is fed beside. */
import type { Beside, Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { besideTotal, shareNow } from '../../../household/reckon/mix/beside.ts';

/** "50 % pellet and 50 % mix", each by its name where several are fed beside. */
export function rationWords(
  problem: Pick<Problem, 'beside'>,
  at: Pick<Evaluation, 'beside'> | undefined,
  nameOf: (b: Beside) => string,
): string {
  if (problem.beside.length === 0) return 'mix only';
  const parts = problem.beside.map((b) => `${percent(shareNow(b, at))} ${nameOf(b)}`);
  const rest = `${percent(100 - besideTotal(problem, at))} mix`;
  // Names of foods hold commas.
  return parts.length === 1 ? `${parts[0]} and ${rest}` : `${parts.join('; ')}; and ${rest}`;
}

/** The number is kept on one line with its sign. */
function percent(value: number): string {
  return `${Number(value.toFixed(1))}\u00a0%`;
}
