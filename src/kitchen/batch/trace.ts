/**
 * Where a lot went and what a batch is made of, through drying too: fresh lot, drying run, dried lot, batch, animal.
 * For a recall, an infestation, or a sick animal. What was weighed without naming a lot cannot be followed, and is
 * said to be so.
 */
import { type CupboardContents, takenBy } from '../cupboard/cupboard.ts';
import type { DayAt } from '../days.ts';
import { groupedBy } from '../grouped-by.ts';
import type { Batch, DryingRun, Lot, Pour } from '../model.ts';
import { remembered } from '../remembered.ts';
import { CRUMB } from '../tolerances.ts';

/** Where a lot went. */
interface Reach {
  readonly lot: Lot;
  /** Drying runs it went into, and those that what it became went into. */
  readonly runs: readonly DryingRun[];
  /** Lots that were dried from it. */
  readonly driedLots: readonly Lot[];
  /** Batches that hold some of it, given-up ones too; g as poured, in the form poured. */
  readonly batches: readonly { readonly batch: Batch; readonly grams: number }[];
  /** Batches into which the same food was poured without naming lots for all of it: they may hold some. */
  readonly maybe: readonly Batch[];
  /** Animals those batches are fed to; of the first kind, and of the second kind only. A given-up batch is fed to none. */
  readonly animalIds: readonly string[];
  readonly maybeAnimalIds: readonly string[];
}

/** What a batch is made of. */
export interface Origin {
  readonly batch: Batch;
  /** Lots poured into it, g of each as poured. */
  readonly poured: readonly { readonly lot: Lot; readonly grams: number }[];
  /** Lots that those were dried from, and the runs between. */
  readonly driedFrom: readonly { readonly lot: Lot; readonly run: DryingRun }[];
  /** Foods of which some was poured without naming a lot, g of it. */
  readonly untraced: readonly { readonly food: string; readonly grams: number }[];
}

/**
 * Every batch and animal that a lot reached.
 * @param dayAt the keeper's calendar: a batch poured before the day a lot came in cannot hold any of it
 * @throws RangeError where no such lot is kept
 */
export function reachOf(id: string, kept: CupboardContents, dayAt: DayAt): Reach {
  const lot = kept.lots.find((l) => l.id === id);
  if (!lot) throw new RangeError(`no lot "${id}" is kept; take one of the cupboard's`);
  const runsOf = runsByLot(kept.runs);
  const driedOf = lotsByRun(kept.lots);
  const lots = new Map([[id, lot]]);
  const runs = new Map<string, DryingRun>();
  // A Map walks over what is added while it is walked; what is in it already is not added again, so it ends.
  for (const from of lots.keys())
    for (const run of runsOf.get(from) ?? []) {
      runs.set(run.id, run);
      for (const dried of driedOf.get(run.id) ?? []) if (!lots.has(dried.id)) lots.set(dried.id, dried);
    }

  const naming = batchesByLot(kept.batches);
  const batches = [...new Set([...lots.keys()].flatMap((l) => naming.get(l) ?? []))]
    .sort((a, b) => a - b)
    .flatMap((at) => {
      const batch = kept.batches[at];
      if (!batch) return [];
      const parts = batch.pours.flatMap((p) => p.lots.filter((l) => lots.has(l.lot)).map((l) => l.grams));
      return [{ batch, grams: sum(parts) }];
    });
  const sure = new Set(batches.map(({ batch }) => batch.id));
  const foods = new Map(
    [...lots.values()].filter((l) => l.form !== 'fresh').map((l) => [l.food, l.boughtOn]),
  );
  for (const l of lots.values()) {
    const first = foods.get(l.food);
    if (first !== undefined && l.form !== 'fresh' && l.boughtOn < first) foods.set(l.food, l.boughtOn);
  }
  const maybe = untracedIn(kept.batches).flatMap(({ batch, pours }) => {
    const may = pours.some((p) => {
      const since = foods.get(p.food);
      return since !== undefined && dayAt(p.at) >= since;
    });
    return may && !sure.has(batch.id) ? [batch] : [];
  });
  const animalIds = [...new Set(batches.flatMap(({ batch }) => fedTo(batch)))];
  return {
    lot,
    runs: [...runs.values()],
    driedLots: [...lots.values()].filter((l) => l.id !== id),
    batches,
    maybe,
    animalIds,
    maybeAnimalIds: [...new Set(maybe.flatMap(fedTo))].filter((a) => !animalIds.includes(a)),
  };
}

/**
 * Every lot that went into a batch, and every lot those were dried from.
 * @throws RangeError where no such batch is kept, or a pour names a lot that is not kept
 */
export function originOf(id: string, kept: CupboardContents): Origin {
  const batch = kept.batches.find((b) => b.id === id);
  if (!batch) throw new RangeError(`no batch "${id}" is kept`);
  const lotOf = new Map(kept.lots.map((l) => [l.id, l]));
  const runOf = new Map(kept.runs.map((r) => [r.id, r]));
  const lot = (lotId: string, by: string): Lot => {
    const found = lotOf.get(lotId);
    if (!found)
      throw new RangeError(`lot "${lotId}", named by ${by}, is not kept; put it back or correct ${by}`);
    return found;
  };
  const grams = new Map<string, number>();
  for (const pour of batch.pours)
    for (const part of pour.lots) grams.set(part.lot, (grams.get(part.lot) ?? 0) + part.grams);
  const poured = [...grams].map(([lotId, g]) => ({ lot: lot(lotId, `batch "${id}"`), grams: g }));

  const driedFrom = new Map<string, { lot: Lot; run: DryingRun }>();
  const seen = new Map(poured.map((p) => [p.lot.id, p.lot]));
  for (const at of seen.values()) {
    const run = at.driedIn === undefined ? undefined : runOf.get(at.driedIn);
    if (!run || driedFrom.has(run.id)) continue;
    const from = lot(run.lot, `dryingRun "${run.id}"`);
    driedFrom.set(run.id, { lot: from, run });
    if (!seen.has(from.id)) seen.set(from.id, from);
  }

  // What was taken out again without naming a lot counts against what was poured so.
  const untraced = new Map<string, number>();
  for (const pour of batch.pours) untraced.set(pour.food, (untraced.get(pour.food) ?? 0) + unnamed(pour));
  return {
    batch,
    poured,
    driedFrom: [...driedFrom.values()],
    untraced: [...untraced].flatMap(([food, g]) => (g > CRUMB ? [{ food, grams: g }] : [])),
  };
}

/**
 * What g of a lot cost, in the keeper's money; a lot dried at home costs what went into it. Undefined where a price
 * along the way is not known.
 */
export function pricePerGram(lot: Lot, kept: CupboardContents): number | undefined {
  if (lot.price !== undefined) return lot.grams > 0 ? lot.price / lot.grams : undefined;
  const run = kept.runs.find((r) => r.id === lot.driedIn);
  const fresh = run && kept.lots.find((l) => l.id === run.lot);
  // A lot said to be dried from itself has no price of its own.
  if (!run || !fresh || fresh.price === undefined || !(fresh.grams > 0)) return undefined;
  const dried = sum(kept.lots.filter((l) => l.driedIn === run.id).map((l) => l.grams));
  return dried > 0 ? ((fresh.price / fresh.grams) * takenBy(run)) / dried : undefined;
}

/** Animals that eat of a batch. */
const fedTo = (batch: Batch) => (batch.givenUp ? [] : batch.animalIds);

/** g of a pour for which no lot is named. */
function unnamed(pour: Pour): number {
  return pour.grams - sum(pour.lots.map((l) => l.grams));
}

const runsByLot = remembered((runs: readonly DryingRun[]) => groupedBy(runs, (run) => run.lot));

const lotsByRun = remembered((lots: readonly Lot[]) =>
  groupedBy(
    lots.filter((l) => l.driedIn !== undefined),
    (l) => l.driedIn!,
  ),
);

/** Places of the batches that name a lot in a pour, by its id. */
const batchesByLot = remembered((batches: readonly Batch[]) => {
  const places = new Map<string, number[]>();
  for (const [at, batch] of batches.entries())
    for (const lot of new Set(batch.pours.flatMap((p) => p.lots.map((l) => l.lot)))) {
      const named = places.get(lot);
      if (named) named.push(at);
      else places.set(lot, [at]);
    }
  return places;
});

/** Batches with pours of which some names no lot, and those pours. */
const untracedIn = remembered((batches: readonly Batch[]) =>
  batches.flatMap((batch) => {
    const pours = batch.pours.filter((p) => unnamed(p) > CRUMB);
    return pours.length > 0 ? [{ batch, pours }] : [];
  }),
);

const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
