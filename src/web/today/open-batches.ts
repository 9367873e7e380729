/** What lies open on the scale. */
import type { Household } from '../../household/model.ts';
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { words } from '../../words/words.ts';
import type { Errand } from './errand.ts';

/** Batches that lie open on the scale: whatever else there is to do, they come first. */
export function openBatches(house: Household): Errand[] {
  const t = words().today;
  return house.batches
    .filter((b) => b.finishedAt === undefined && !b.givenUp)
    .map((b) => ({
      key: `weigh ${b.id}`,
      rank: 'later',
      words: t.weighing(b.name, gramsMade(b), b.grams),
      link: t.links.weighOn,
      to: ['weigh', b.id],
    }));
}
