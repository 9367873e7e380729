/** The batch that is being fed, and what is left of it. */

import { dayNumber } from '../../../kitchen/days.ts';
import { mixPartOf, type RunsOut, runsOut } from '../../../kitchen/feeding/runs-out.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household, Mix } from '../../model.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { areAllGone, hereAmong } from '../care/here.ts';
import { type Stop, stopOf } from '../cupboard/stops.ts';
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

type Under = Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'>;

/**
 * The last finished batch that is not used up; an older one only while it still lasts. One that holds some of a lot that
 * is not used any more is no food in hand.
 */
export function presentOf(house: Household, mix: Mix, under: Under): PresentBatch | undefined {
  return stillFed(house, batchesFor(house, mix), under).find(
    ({ batch }) => !stopOf(house, batch, under.dayAt)?.sure,
  );
}

/** Batches that would be fed, were it not for a lot in them that is not used any more; the newest first. */
export function stoppedOf(
  house: Household,
  mix: Mix,
  under: Under,
): { readonly batch: Batch; readonly name: string; readonly stop: Stop }[] {
  return stillFed(house, batchesFor(house, mix), under).flatMap(({ batch, name }) => {
    const stop = stopOf(house, batch, under.dayAt);
    return stop?.sure ? [{ batch, name, stop }] : [];
  });
}

/**
 * Finished batches that are not used up, the newest first: that one whatever is left of it, older ones only while they
 * still last by what is eaten. A batch of which nothing is fed is none of them, nor one whose animals are all gone.
 * @param all the batches that a name counts: "batch 1" is the first of them
 */
export function stillFed(house: Household, all: readonly Batch[], under: Under): PresentBatch[] {
  return notUsedUp(all).flatMap(({ batch, finishedAt, newest }): PresentBatch[] => {
    if (areAllGone(house.animals, batch.animalIds)) return [];
    const mixPart = mixPartOf(batch.problem, under.chosenFor(batch.problem));
    if (!(mixPart > 0)) return [];
    const name = batchName(all, batch);
    const counted = batch.left
      ? { ...batch.left, weighed: true }
      : { grams: gramsMade(batch), on: under.dayAt(finishedAt), weighed: false };
    const runs = runsOut({
      name,
      gramsLeft: counted.grams,
      weighedOn: counted.on,
      animals: hereAmong(house.animals, batch.animalIds),
      mixPart: Math.min(1, mixPart),
    });
    const lasts = newest || (runs.status === 'known' && runs.day > under.today);
    return lasts ? [{ batch, name, counted, runsOut: runs }] : [];
  });
}

/** Those that are finished and hold some, the newest first: after ten years a few of hundreds. */
const notUsedUp = remembered((all: readonly Batch[]) =>
  all
    .flatMap((batch) => (batch.finishedAt === undefined ? [] : [{ batch, finishedAt: batch.finishedAt }]))
    .sort((a, b) => (a.finishedAt < b.finishedAt ? 1 : -1))
    .flatMap((one, i) => (isUsedUp(one.batch) ? [] : [{ ...one, newest: i === 0 }])),
);

/** g that should be left of it on a day, by what is eaten; undefined where that is not known. */
export function leftOn({ counted, runsOut: runs }: PresentBatch, day: Day): number | undefined {
  if (runs.status === 'unknown') return undefined;
  const days = Math.max(0, dayNumber(day) - dayNumber(counted.on));
  return Math.max(0, counted.grams - days * runs.gramsADay);
}
