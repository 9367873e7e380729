/** How many grams of mix a batch is: as said, or from what the animals eat in so many days. */
import { words } from '../../words/words.ts';
import type { FedAnimal } from '../feeding/runs-out.ts';

/** The batch: g, or what these animals eat in so many days. */
export type BatchSize =
  | { readonly grams: number }
  | {
      readonly days: number;
      readonly animals: readonly Pick<FedAnimal, 'name' | 'dailyGrams'>[];
      /** The mix's part of the ration by weight, above 0 to 1. */
      readonly mixPart: number;
    };

/**
 * Grams of mix in a batch: days x grams a day of all animals x the mix's part of the ration.
 * @throws RangeError on a number out of range, or where nobody has said how much an animal eats
 */
export function batchGrams(batch: BatchSize): number {
  if ('grams' in batch) {
    if (!(Number.isFinite(batch.grams) && batch.grams > 0))
      throw new RangeError(`batch grams must be above 0, not ${batch.grams}`);
    return batch.grams;
  }
  const { days, animals, mixPart } = batch;
  if (!(Number.isFinite(days) && days > 0)) throw new RangeError(`days must be above 0, not ${days}`);
  if (!(mixPart > 0 && mixPart <= 1))
    throw new RangeError(`mixPart must be above 0 and at most 1, not ${mixPart}`);
  if (animals.length === 0) throw new RangeError('animals: name at least one, or give the batch in grams');
  const daily = animals.reduce((sum, { name, dailyGrams }) => {
    if (dailyGrams === undefined) throw new RangeError(words().shopping.why.noDaily(name));
    if (!(Number.isFinite(dailyGrams) && dailyGrams > 0))
      throw new RangeError(`daily grams of ${name} must be above 0, not ${dailyGrams}`);
    return sum + dailyGrams;
  }, 0);
  return days * daily * mixPart;
}
