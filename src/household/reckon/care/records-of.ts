/** What was written down of one animal, by time. */
import { feedingId } from '../../../care/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household } from '../../model.ts';
import { ofAnimal } from './of-animal.ts';

type Kept = Pick<Household, 'feedings'>;

/** What it was fed and left, the latest day last. */
export function feedingsOf({ feedings }: Kept, animalId: string): Household['feedings'] {
  return byDay(ofAnimal(feedings, animalId));
}

const byDay = remembered((feedings: Household['feedings']) =>
  [...feedings].sort((a, b) => (a.on < b.on ? -1 : 1)),
);

/** What it was fed on a day, and left; undefined where nothing was noted. */
export function feedingOn(
  { feedings }: Kept,
  animalId: string,
  on: Day,
): Household['feedings'][number] | undefined {
  const own = ofAnimal(feedings, animalId);
  const id = feedingId(animalId, on);
  return own.find((f) => f.id === id) ?? own.find((f) => f.on === on);
}

/** Its last weighing; undefined where it was never weighed. */
export function lastWeighing(
  { weighings }: Pick<Household, 'weighings'>,
  animalId: string,
): Household['weighings'][number] | undefined {
  return ofAnimal(weighings, animalId).reduce<Household['weighings'][number] | undefined>(
    (last, one) => (last === undefined || last.at < one.at ? one : last),
    undefined,
  );
}
