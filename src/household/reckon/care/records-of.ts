/** What was written down of one animal, by time. */
import { feedingId } from '../../../care/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';

type Kept = Pick<Household, 'feedings'>;

/** What it was fed and left, the latest day last. */
export function feedingsOf({ feedings }: Kept, animalId: string): Household['feedings'] {
  return feedings.filter((f) => f.animalId === animalId).sort((a, b) => (a.on < b.on ? -1 : 1));
}

/** What it was fed on a day, and left; undefined where nothing was noted. */
export function feedingOn(
  { feedings }: Kept,
  animalId: string,
  on: Day,
): Household['feedings'][number] | undefined {
  const id = feedingId(animalId, on);
  return feedings.find((f) => f.id === id) ?? feedings.find((f) => f.animalId === animalId && f.on === on);
}
