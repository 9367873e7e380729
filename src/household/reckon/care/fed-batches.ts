/** Which batches an animal was fed from when to when, and what changed from one to the next. */
import { plusDays } from '../../../kitchen/days.ts';
import type { Batch, Day, Moment } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { foodKeys } from '../foods/same-food.ts';
import { feedingsOf } from './records-of.ts';

export interface FedBatch {
  readonly batch: Batch;
  readonly from: Day;
  /** The last day; absent while it is being fed. */
  readonly to?: Day;
  /** It follows from the day on which the batch was finished: nobody noted that it was fed. */
  readonly assumed: boolean;
  readonly change: FoodChange;
}

/** Against the batch that was fed before. "same": the same foods of the same mix. */
export interface FoodChange {
  readonly kind: 'first' | 'same' | 'foods' | 'mix';
  /** Names of foods that were not in the batch before, and of those that are not in this one. */
  readonly added: readonly string[];
  readonly gone: readonly string[];
}

type Kept = Pick<Household, 'batches' | 'feedings' | 'foods' | 'mixes'>;

/**
 * By what was noted as fed. Where nothing was noted, a batch is taken to be fed from the day on which it was finished
 * until the next one made for the animal.
 */
export function fedBatches(
  house: Kept,
  animal: Pick<Animal, 'id' | 'gone'>,
  dayAt: (moment: Moment) => Day,
): readonly FedBatch[] {
  const named = feedingsOf(house, animal.id).flatMap((f) =>
    f.mix?.batchId === undefined ? [] : [{ on: f.on, batchId: f.mix.batchId }],
  );
  const byId = new Map(house.batches.map((b) => [b.id, b]));
  const assumed = inTurn(house.batches, named, animal.id, dayAt);
  const noted = named.flatMap(({ on, batchId }) => {
    const batch = byId.get(batchId);
    return batch ? [{ on, batch, assumed: false }] : [];
  });
  // One a day, the last of it; what was noted stands before what is taken to be so.
  const days = new Map([...assumed, ...noted].map((start) => [start.on, start]));
  const turns = [...days.values()]
    .sort((a, b) => (a.on < b.on ? -1 : 1))
    .filter((start, i, all) => start.batch !== all[i - 1]?.batch);
  const keyOf = foodKeys(house);
  const ids = new Set(named.map((n) => n.batchId));
  return turns.map((turn, i) => {
    const next = turns[i + 1];
    const to = lastDay(turn.batch, turn.on, next?.on, animal.gone?.on);
    return {
      batch: turn.batch,
      from: turn.on,
      ...(to !== undefined && { to }),
      assumed: turn.assumed && !ids.has(turn.batch.id),
      change: changeOf(turn.batch, turns[i - 1]?.batch, keyOf),
    };
  });
}

/**
 * Batches made for the animal, each from the day it was finished; none where the first note from then on names another.
 * @param named by day
 */
function inTurn(
  batches: readonly Batch[],
  named: readonly { readonly on: Day; readonly batchId: string }[],
  animalId: string,
  dayAt: (moment: Moment) => Day,
): readonly { readonly on: Day; readonly batch: Batch; readonly assumed: boolean }[] {
  const finished = batches
    .flatMap((batch) =>
      batch.finishedAt === undefined || batch.givenUp || !batch.animalIds.includes(animalId)
        ? []
        : [{ on: dayAt(batch.finishedAt), at: batch.finishedAt, batch }],
    )
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  return finished.flatMap(({ on, batch }, i) => {
    const end = finished[i + 1]?.on;
    const first = firstFrom(named, on);
    const within = first && (end === undefined || first.on < end);
    return within && first.batchId !== batch.id ? [] : [{ on, batch, assumed: true }];
  });
}

/** The first that is noted of a day or later. @param named by day */
function firstFrom<N extends { readonly on: Day }>(named: readonly N[], day: Day): N | undefined {
  let [low, high] = [0, named.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((named[middle]?.on ?? day) < day) low = middle + 1;
    else high = middle;
  }
  return named[low];
}

function lastDay(batch: Batch, from: Day, next: Day | undefined, gone: Day | undefined): Day | undefined {
  const usedUp = batch.left?.grams === 0 && batch.left.on >= from ? batch.left.on : undefined;
  const ends = [next === undefined ? undefined : plusDays(next, -1), usedUp, gone].filter(
    (day) => day !== undefined,
  );
  const first = ends.sort()[0];
  return first !== undefined && first < from ? from : first;
}

function changeOf(batch: Batch, before: Batch | undefined, keyOf: (food: string) => string): FoodChange {
  if (!before) return { kind: 'first', added: [], gone: [] };
  const [now, then] = [foodsOf(batch, keyOf), foodsOf(before, keyOf)];
  const added = [...now].filter(([key]) => !then.has(key)).map(([, name]) => name);
  const gone = [...then].filter(([key]) => !now.has(key)).map(([, name]) => name);
  if (batch.mixId !== before.mixId) return { kind: 'mix', added, gone };
  return { kind: added.length + gone.length > 0 ? 'foods' : 'same', added, gone };
}

/** Names by what the food is: what was poured, or what was planned where nothing was. */
function foodsOf({ pours, shares, problem }: Batch, keyOf: (food: string) => string): Map<string, string> {
  const grams = new Map<string, number>();
  for (const p of pours) grams.set(p.food, (grams.get(p.food) ?? 0) + p.grams);
  const amounts = pours.length > 0 ? [...grams] : Object.entries(shares);
  const names = new Map(problem.foods.map((f) => [f.id, f.name ?? f.id]));
  return new Map(
    amounts.filter(([, amount]) => amount > 0).map(([food]) => [keyOf(food), names.get(food) ?? food]),
  );
}
