/** The batches that are being fed, of whichever mix. */
import { daysBetween } from '../../../kitchen/days.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { batchesFor, batchName, isUsedUp } from '../batch/batches.ts';
import { type PresentBatch, presentOf } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { hereAmong, isHere } from './here.ts';

export interface BeingFed {
  /** The mix it was made of, as it stands now; absent where that was deleted. */
  readonly mix?: Mix;
  readonly present: PresentBatch;
  /** Those of the household that eat of it. */
  readonly animals: readonly Animal[];
  /** Somebody has no newer one: else it is fed on beside the newer one while it lasts. */
  readonly newest: boolean;
}

/** A batch finished longer ago is looked at only where an animal has no newer one, days. Dry mixes keep for less. */
const LONG_AGO = 400;

interface Candidate {
  readonly batch: Batch;
  readonly newest: boolean;
}

/** Finished batches that may still be fed by their age alone, the newest first. */
export function mayBeFed(
  house: Pick<Household, 'animals' | 'batches'>,
  { today, dayAt }: Pick<Circumstances, 'today' | 'dayAt'>,
): Candidate[] {
  const here = new Map(house.animals.map((a) => [a.id, isHere(a)]));
  /** Who eats of it; the animals of its mix, whoever they are, where it names none that is kept. */
  const eatersOf = ({ animalIds, mixId = '' }: Batch) => {
    const known = animalIds.filter((id) => here.has(id));
    return known.length > 0 ? known.filter((id) => here.get(id)) : [`of ${mixId}`];
  };
  const finished = house.batches
    .flatMap((batch) =>
      batch.finishedAt === undefined || batch.givenUp ? [] : [{ batch, finishedAt: batch.finishedAt }],
    )
    .sort((a, b) => (a.finishedAt < b.finishedAt ? 1 : -1));
  const fedBefore = new Set<string>();
  return finished.flatMap(({ batch, finishedAt }): Candidate[] => {
    const eaters = eatersOf(batch);
    const newest = eaters.some((id) => !fedBefore.has(id));
    if (isUsedUp(batch) || eaters.length === 0) return [];
    for (const id of eaters) fedBefore.add(id);
    return newest || daysBetween(dayAt(finishedAt), today) <= LONG_AGO ? [{ batch, newest }] : [];
  });
}

/** Each animal's newest batch that is not used up, and older ones while they last; the newest first. */
export function presentBatches(
  house: Household,
  under: Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'>,
): BeingFed[] {
  return mayBeFed(house, under).flatMap(({ batch, newest }): BeingFed[] => {
    const mix = house.mixes.find((m) => m.id === batch.mixId);
    const present = presentOf({ ...house, batches: [batch] }, mix ?? mixOf(batch), under);
    if (!present) return [];
    if (!newest && !lasts(present, under.today)) return [];
    const name = batchName(batchesFor(house, mix ?? mixOf(batch)), batch);
    const animals = hereAmong(house.animals, batch.animalIds);
    return [{ ...(mix && { mix }), present: { ...present, name }, animals, newest }];
  });
}

function lasts({ runsOut }: PresentBatch, today: Day): boolean {
  return runsOut.status === 'known' && runsOut.day > today;
}

/** The mix of a batch whose own was deleted. */
function mixOf({ mixId = '', name, problem, shares, animalIds }: Batch): Mix {
  return { id: mixId, name, animalIds, profileId: '', problem, shares, held: [], updatedAt: '' };
}
