/** The papers of a batch: its record and its label. */

import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import { amountOf, type BatchRecord, batchRecord, evaluateWith } from '../../../kitchen/batch/batch.ts';
import { type BatchLabel, batchLabel } from '../../../kitchen/batch/label.ts';
import type { CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import type { DayAt } from '../../../kitchen/days.ts';
import { chosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import type { FedAnimal } from '../../../kitchen/feeding/runs-out.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { Animal } from '../../model.ts';
import { hereAmong } from '../care/here.ts';

export interface BatchPapers {
  readonly record: BatchRecord;
  readonly label: BatchLabel;
}

/** Record and label of a batch. @throws RangeError where nothing is poured */
export function papersOf(
  batch: Batch,
  p: {
    readonly kept: CupboardContents;
    readonly animals: readonly (FedAnimal & Pick<Animal, 'gone'>)[];
    readonly parts: FormulationOptions;
    readonly dayAt: DayAt;
  },
): BatchPapers {
  const { reference } = p.parts;
  const record = batchRecord(batch, {
    kept: p.kept,
    reference,
    evaluate: evaluateWith(p.parts),
    dayAt: p.dayAt,
  });
  const feeding = feedingOf({
    problem: batch.problem,
    animals: hereAmong(p.animals, batch.animalIds),
    grams: record.grams,
    from: record.madeOn,
    shares: chosenShares(batch.problem, p.parts),
    water: (food) => amountOf(food, 'WATER', reference),
  });
  return { record, label: batchLabel(record, { feeding, reference }) };
}
