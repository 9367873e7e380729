/** The batch that is being fed, and what is left of it. */

import { dayNumber } from '../../../kitchen/days.ts';
import { mixPartOf, type RunsOut, runsOut } from '../../../kitchen/feeding/runs-out.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Household, Mix } from '../../model.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { areAllGone, hereAmong } from '../care/here.ts';
import { batchesFor, batchName, gramsMade, isUsedUp } from './batches.ts';

/** The batch that is being fed. */
export interface PresentBatch {
  readonly batch: Batch;
  /** "batch 3". */
  readonly name: string;
  /** g that were made, or were left when somebody last weighed it, and on which day. */
  readonly counted: { readonly grams: number; readonly on: Day; readonly weighed: boolean };
  readonly runsOut: RunsOut;
}

/** The last finished batch that is not used up and whose animals are not all gone; an older one only while it still lasts. */
export function presentOf(
  house: Household,
  mix: Mix,
  { today, dayAt, chosenFor }: Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'>,
): PresentBatch | undefined {
  const all = batchesFor(house, mix);
  const finished = all
    .flatMap((batch) => (batch.finishedAt === undefined ? [] : [{ batch, finishedAt: batch.finishedAt }]))
    .sort((a, b) => (a.finishedAt < b.finishedAt ? 1 : -1));
  for (const { batch, finishedAt } of finished) {
    if (isUsedUp(batch) || areAllGone(house.animals, batch.animalIds)) continue;
    const mixPart = mixPartOf(batch.problem, chosenFor(batch.problem));
    if (!(mixPart > 0)) continue;
    const name = batchName(all, batch);
    const counted = batch.left
      ? { ...batch.left, weighed: true }
      : { grams: gramsMade(batch), on: dayAt(finishedAt), weighed: false };
    const runs = runsOut({
      name,
      gramsLeft: counted.grams,
      weighedOn: counted.on,
      animals: hereAmong(house.animals, batch.animalIds),
      mixPart: Math.min(1, mixPart),
    });
    const newest = batch === finished[0]?.batch;
    if (newest || (runs.status === 'known' && runs.day > today))
      return { batch, name, counted, runsOut: runs };
  }
  return undefined;
}

/** g that should be left of it on a day, by what is eaten; undefined where that is not known. */
export function leftOn({ counted, runsOut: runs }: PresentBatch, day: Day): number | undefined {
  if (runs.status === 'unknown') return undefined;
  const days = Math.max(0, dayNumber(day) - dayNumber(counted.on));
  return Math.max(0, counted.grams - days * runs.gramsADay);
}
