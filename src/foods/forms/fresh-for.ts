/** Kitchen arithmetic: how much fresh food to prepare, and to buy, for some grams of dried. */

import { freshGramsFor } from '../../nutrition/amount.ts';
import { words } from '../../words/words.ts';
import type { Food } from '../food.ts';

export interface FreshNeeded {
  /** Grams of fresh food ready to dry: peeled, cored, trimmed. */
  readonly prepared: number;
  /** Grams as purchased; absent where trim loss is unknown. */
  readonly purchased?: number;
  /** Percent of the purchased weight that is trimmed off; absent where unknown, which is not 0. */
  readonly trimLoss?: number;
  /** A plain sentence about the trim loss. */
  readonly note: string;
}

/**
 * Fresh food for `driedGrams` of dried: dry matter is conserved, then the trim loss is added.
 * @param driedGrams grams of dried food wanted, 0 or more
 * @param fresh the fresh food; its `refuse` is the trim loss
 * @param moisture of the dried food, g water per 100 g, below that of the fresh one
 * @throws RangeError when the fresh food's moisture is unknown, or an amount is out of range
 */
export function freshFor(
  driedGrams: number,
  fresh: Food & { readonly refuse?: number },
  moisture: number,
): FreshNeeded {
  const moistureFresh = fresh.composition.WATER;
  if (moistureFresh === undefined)
    throw new RangeError(
      `${fresh.name} (${fresh.ref}): composition.WATER is unknown; give its moisture first`,
    );
  if (!(Number.isFinite(driedGrams) && driedGrams >= 0))
    throw new RangeError(`dried grams must be 0 or more, not ${driedGrams}`);
  if (moisture >= moistureFresh)
    throw new RangeError(
      `moisture ${moisture} g per 100 g is not below the ${moistureFresh} of ${fresh.name} (${fresh.ref}); drying takes water out`,
    );
  const weights = { moistureFresh, moistureDried: moisture };
  const prepared = freshGramsFor(driedGrams, weights);
  const trimLoss = fresh.refuse;
  if (trimLoss === undefined)
    return {
      prepared,
      note: words().trimming.table.unknown(fresh.name),
    };
  if (!(trimLoss >= 0 && trimLoss < 100))
    throw new RangeError(`${fresh.name} (${fresh.ref}): refuse must be from 0 to below 100, not ${trimLoss}`);
  return {
    prepared,
    purchased: freshGramsFor(driedGrams, { ...weights, trimLoss }),
    trimLoss,
    note: trimLoss === 0 ? words().trimming.table.none : words().trimming.table.some(trimLoss),
  };
}
