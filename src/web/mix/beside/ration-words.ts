/** The ration in words: how much is mix, and how much what is fed beside. */
import type { Beside, Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { besideTotal, shareNow } from '../../../household/reckon/mix/beside.ts';
import { words } from '../../../words/words.ts';

/** "50 % pellet and 50 % mix", each by its name where several are fed beside. */
export function rationWords(
  problem: Pick<Problem, 'beside'>,
  at: Pick<Evaluation, 'beside'> | undefined,
  nameOf: (b: Beside) => string,
): string {
  const t = words().beside;
  if (problem.beside.length === 0) return t.mixOnly;
  const parts = problem.beside.map((b) => t.share(shareNow(b, at), nameOf(b)));
  const rest = t.mixShare(100 - besideTotal(problem, at));
  const [only = ''] = parts;
  // Names of foods hold commas.
  return parts.length === 1 ? t.two(only, rest) : t.many(parts.join('; '), rest);
}
