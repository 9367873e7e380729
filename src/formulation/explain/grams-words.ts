import { words } from '../../words/words.ts';
import type { WholeGrams } from '../problem/result.ts';

/** That grams are not proven the nearest, and how near others could be; undefined where they are, or there are none. */
export function gramsDoubt({ grams_proof: { proven, squares, least } }: WholeGrams): string | undefined {
  if (proven || squares === undefined || least === undefined) return undefined;
  return words().formulation.grams.doubt(squares, least);
}
