/** What a household keeps that says what came into its cupboard and what went out; all of it, or what bears on a question. */
import { type CupboardContents, type FedFromPack, leftByFood } from '../../../kitchen/cupboard/cupboard.ts';
import type { Batch, Lot } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household } from '../../model.ts';
import { asNamed } from './as-named.ts';
import { lotById } from './lot-index.ts';

type Kept = Pick<Household, 'lots' | 'dryingRuns' | 'batches' | 'feedings'>;

/** What a household keeps that says what came in and what went out. */
export function contentsOf(house: Kept): CupboardContents {
  const fed = fedIn(house.feedings);
  return {
    lots: house.lots,
    runs: house.dryingRuns,
    batches: house.batches,
    ...(fed.length > 0 && { fed }),
  };
}

/** What was fed straight from packs, in the order kept. */
export const fedIn = remembered((feedings: Household['feedings']): readonly FedFromPack[] =>
  feedings.flatMap(({ on, beside }) =>
    beside.flatMap(({ lot, grams }) => (lot === undefined ? [] : [{ lot, grams, on }])),
  ),
);

/**
 * What says how much is left of some foods, and in which lots: for them it comes out as of all contents. Lots of the same
 * food under another id are theirs. Lots that are used up are left out, but the first of each food, which says that lots of it are kept.
 */
export function contentsOfFoods(all: Household, foods: readonly string[]): CupboardContents {
  const house = asNamed(all, foods);
  const left = leftByFood(contentsOf(house));
  const ids = new Set<string>();
  for (const food of foods)
    for (const [i, { lot, grams }] of (left.get(food) ?? []).entries())
      if (grams > 0 || i === 0) ids.add(lot.id);
  const fed = fedIn(house.feedings).filter((f) => ids.has(f.lot));
  return {
    lots: house.lots.filter((l) => ids.has(l.id)),
    runs: house.dryingRuns.filter((r) => ids.has(r.lot)),
    batches: house.batches.filter((b) => b.pours.some((p) => p.lots.some((l) => ids.has(l.lot)))),
    ...(fed.length > 0 && { fed }),
  };
}

/** What a batch is made of: the lots poured into it, and the runs and lots that those were dried from. */
export function contentsOfBatch(house: Kept, batch: Batch): CupboardContents {
  const lots = new Map<string, Lot>();
  const add = (lot: Lot | undefined) => lot && lots.set(lot.id, lot);
  for (const pour of batch.pours) for (const { lot } of pour.lots) add(lotById(house, lot));
  const runs = new Map(house.dryingRuns.map((r) => [r.id, r]));
  const dried = new Set<string>();
  // A Map walks over what is added while it is walked; what is in it already is not added again, so it ends.
  for (const lot of lots.values()) {
    const run = lot.driedIn === undefined ? undefined : runs.get(lot.driedIn);
    if (!run || dried.has(run.id)) continue;
    dried.add(run.id);
    add(lotById(house, run.lot));
  }
  return {
    // What came of the same run shares its price.
    lots: house.lots.filter((l) => lots.has(l.id) || (l.driedIn !== undefined && dried.has(l.driedIn))),
    runs: house.dryingRuns.filter((r) => dried.has(r.id)),
    batches: [batch],
  };
}
