/** How far a long answer is, in words: what is found, and how much better it may get at the most. */
import type { Objective } from '../../../formulation/problem/problem.ts';
import type { Progress } from '../../../formulation/problem/progress.ts';
import type { Best } from '../../../formulation/problem/result.ts';
import { words } from '../../../words/words.ts';

/** Below this it is the best but for arithmetic, relatively. */
const NOTHING = 1e-7;

/** What is being done, with how many steps are behind. */
export function doingWords({ doing, done, of }: Progress<unknown>): string {
  const t = words().long;
  return done === undefined || of === undefined ? t.doing[doing] : `${t.doing[doing]} ${t.steps(done, of)}`;
}

/** How good the best mix so far is; undefined where it is proven to be the best. */
export function bestWords(objective: Objective, best: Pick<Best, 'objective' | 'gap'>): string | undefined {
  const t = words().long.found;
  const { objective: value, gap = 0 } = best;
  if (gap <= NOTHING * Math.max(1, Math.abs(value))) return undefined;
  if (!Number.isFinite(gap)) return t.some;
  const least = Math.max(0, value - gap);
  if (objective === 'cheapest') return t.cheapest(value / 100, (value - least) / 100);
  // Distances, not their squares: half as far is 50 % nearer. Never said less than it may be.
  return t[objective](Math.min(100, Math.ceil(100 * (1 - Math.sqrt(least / value)))));
}

/** How few, or how light, the additions to a shared base are so far; undefined where that is not being sought. */
export function additionsWords({ doing, value, bound }: Progress<unknown>): string | undefined {
  const t = words().long.found;
  if (value === undefined || bound === undefined) return undefined;
  if (doing === 'fewest') return t.fewest(value, Math.ceil(bound));
  return doing === 'lightest' ? t.lightest(value, bound) : undefined;
}
