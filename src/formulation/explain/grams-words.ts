import type { WholeGrams } from '../problem/result.ts';
import { figure } from './sentences.ts';

/** That grams are not proven the nearest, and how near others could be; undefined where they are, or there are none. */
export function gramsDoubt({ grams_proof: { proven, squares, least } }: WholeGrams): string | undefined {
  if (proven || squares === undefined || least === undefined) return undefined;
  return `These grams keep every rule, but are not proven the nearest to the shares: their squared distances come to ${figure(squares)} g², those of any others to ${figure(least)} g² or more.`;
}
