/** The bowl on the scale: what was poured into it, food by food. */
import { ProblemError } from '../../formulation/problem/problem.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { SAME } from '../tolerances.ts';
import type { Bowl } from './correction-question.ts';

/** What lies in the bowl. */
export class MixingBowl implements Bowl {
  readonly grams: Float64Array;
  readonly poured: boolean[];
  private readonly names: readonly string[];
  private last: number | undefined;

  /** An empty bowl. @param names of the foods that may go in, by column */
  constructor(names: readonly string[]) {
    this.names = names;
    this.grams = new Float64Array(names.length);
    this.poured = names.map(() => false);
  }

  /**
   * Puts a pour into the bowl.
   * @param i column of the food @param grams below 0 for what is taken out again of the food poured last
   * @param field named in the error
   * @returns whether it leaves the food out for good
   * @throws ProblemError where that is no weight, or more is taken out than lies in it
   */
  take(i: number, grams: number, field: string): boolean {
    if (!Number.isFinite(grams))
      throw new ProblemError(field, `${grams} is no weight; write what the scale shows, in g`);
    const before = this.grams[i] ?? 0;
    if (grams < 0 && this.last !== i)
      throw new ProblemError(
        field,
        `${grams} g of ${this.names[i]}: only the food poured last can be taken out again; pour at least 0 g`,
      );
    if (grams < 0 && before + grams < -SAME)
      throw new ProblemError(field, `${-grams} g cannot be taken out of ${before} g; take out less`);
    const after = Math.max(0, withoutFloatNoise(before + grams));
    this.grams[i] = after;
    this.poured[i] = true;
    if (grams > 0) this.last = i;
    return after === 0;
  }
}
