/** What the animals of a mix eat of it in a day. */

import type { ChosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import { mixPartOf } from '../../../kitchen/feeding/runs-out.ts';
import type { Animal, Mix } from '../../model.ts';
import { hereAmong } from '../care/here.ts';

/** What the animals of a mix eat of it in a day, or which of them nobody has said it of. */
export interface Eating {
  readonly animals: readonly Animal[];
  /** Those whose daily grams are unknown. */
  readonly unknown: readonly Animal[];
  /** The mix's part of what is fed, 0 to 1. */
  readonly mixPart: number;
  /** g of the mix in a day, all animals together; absent where it is not known. */
  readonly gramsADay?: number;
}

/** @param all animals of the household @param chosen shares of what is fed beside the mix, where they are chosen */
export function eatingOf(
  mix: Pick<Mix, 'animalIds' | 'problem'>,
  all: readonly Animal[],
  chosen?: ChosenShares,
): Eating {
  const animals = hereAmong(all, mix.animalIds);
  const unknown = animals.filter((a) => a.dailyGrams === undefined);
  const mixPart = mixPartOf(mix.problem, chosen);
  const gramsADay = animals.reduce((sum, a) => sum + (a.dailyGrams ?? 0), 0) * mixPart;
  const known = unknown.length === 0 && gramsADay > 0;
  return { animals, unknown, mixPart, ...(known && { gramsADay }) };
}
