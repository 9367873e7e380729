/** What is due today of every animal here and of every batch that is fed. */
import type { Feeding, Weighing } from '../../../care/model.ts';
import type { WeightAlert, WeightStory } from '../../../care/weight/model.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { changeOverDay } from '../calendar/change-over-day.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { barredInUse } from '../cupboard/lots-to-look-at.ts';
import { pelletStocks } from '../cupboard/pellet-stock.ts';
import { type BarredPack, barredPacks, batchesInUse } from '../cupboard/recall.ts';
import { stopOf } from '../cupboard/stops.ts';
import { type DailyMeal, dailyMeal } from './daily-meal.ts';
import { type UpsetFood, upsetInBatch } from './food-standing.ts';
import { hereAmong, isHere } from './here.ts';
import { ofAnimal } from './of-animal.ts';
import { type BeingFed, mayBeFed, presentBatches } from './present-batches.ts';
import { feedingOn, lastWeighing } from './records-of.ts';
import { isWeighed, ticksFeeding } from './tick-feeding.ts';
import { goesOn, type TrialDue, trialsDue } from './trial-due.ts';
import { type WeighDue, weighDue } from './weigh-due.ts';

/** Days for which whoever noted left-overs is asked for those of last night; our own choice, no source. */
const NOTES_LEFT = 14;
/** A batch that was to run out longer ago is hardly fed any more, days; our own choice, no source. */
const RAN_OUT = 30;
/** From so many days before a batch runs out it is spoken of; our own choice, no source. */
const RUNS_OUT = 7;

interface Under
  extends Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'>,
    Partial<Pick<Circumstances, 'table'>> {
  /** As of `weight-of.ts`: passed along, since a page fetches it only where somebody weighs. */
  weightsOf(
    house: Household,
    animal: Animal,
    under: Pick<Circumstances, 'today' | 'dayAt'>,
  ): Pick<WeightStory, 'alerts' | 'points'>;
}

export interface AnimalDue {
  readonly animal: Animal;
  /** What it is fed today; undefined where no batch is being fed. */
  readonly meal?: DailyMeal;
  /** What is on record of today. */
  readonly feeding?: Feeding;
  /**
   * "done": ticked off; "due": not yet, by a keeper who does so; "offer": by one who does not; "no": nothing to tick;
   * "stop": what lies ready should not be fed to it.
   */
  readonly feed: 'done' | 'due' | 'offer' | 'no' | 'stop';
  /** The last weighing. */
  readonly weighed?: Weighing;
  /** That one looks unlikely and counts for nothing until somebody says that it is right. */
  readonly inDoubt?: true;
  readonly weigh: WeighDue;
  /** Alarms of its weight, most pressing first. */
  readonly alerts: readonly WeightAlert[];
  /** Left-overs of last night: noted; due, for a keeper who notes them; or neither. */
  readonly left: 'done' | 'due' | 'no';
  readonly trials: readonly TrialDue[];
}

/** A batch that runs out within days, or has. */
export interface RunningOut {
  readonly fed: BeingFed;
  readonly day: Day;
}

export interface CareDue {
  readonly fed: readonly BeingFed[];
  /** Batches of more than one mix may be fed: a number alone does not tell them apart. */
  readonly severalMixes: boolean;
  readonly animals: readonly AnimalDue[];
  /** Packs not to be used any more, in batches that are being fed or weighed. */
  readonly barred: ReturnType<typeof barredInUse>;
  /** Batches being fed that may hold such a pack: nobody noted which went in. */
  readonly maybeBarred: readonly BeingFed[];
  /** Packs fed beside the mix that are not to be used any more, and that animals here were, or may have been, fed from. */
  readonly barredPacks: readonly { readonly pack: BarredPack; readonly animals: readonly Animal[] }[];
  /** Foods in a batch being fed that upset an animal. */
  readonly upset: readonly { readonly fed: BeingFed; readonly food: UpsetFood }[];
  /** By the day on which they do. */
  readonly runningOut: readonly RunningOut[];
  /** Foods fed from packs that run out within days, or have. */
  readonly packsRunningOut: readonly { readonly name: string; readonly day: Day }[];
  /** Changes of food that are under way. */
  readonly changing: readonly { readonly fed: BeingFed; readonly day: number; readonly of: number }[];
}

/** Everything but what the kitchen has to do. Quick for ten years of records: what follows from a list is kept with it. */
export function careDue(house: Household, under: Under): CareDue {
  const { today } = under;
  const fed = presentBatches(house, under);
  const changing = fed.flatMap((one) => {
    const change = changeOverDay(house, one.present, under);
    return change ? [{ fed: one, ...change }] : [];
  });
  const changes = new Set(changing.flatMap((c) => c.fed.animals.map((a) => a.id)));
  const animals = house.animals
    .filter(isHere)
    .map((animal) => animalDue(house, animal, changes.has(animal.id), under));
  const runningOut = fed.flatMap((one): RunningOut[] => {
    const runs = one.present.runsOut;
    if (runs.status === 'unknown') return [];
    const days = daysBetween(today, runs.day);
    return days <= RUNS_OUT && days >= -RAN_OUT ? [{ fed: one, day: runs.day }] : [];
  });
  return {
    fed,
    severalMixes: new Set(mayBeFed(house, under).map(({ batch }) => batch.mixId)).size > 1,
    animals,
    ...stopped(house, fed, under),
    upset: fed.flatMap((one) => upsetInBatch(house, one.present.batch).map((food) => ({ fed: one, food }))),
    packsRunningOut: packsRunningOut(house, under),
    runningOut: runningOut.sort((a, b) => (a.day < b.day ? -1 : 1)),
    changing,
  };
}

function animalDue(house: Household, animal: Animal, changes: boolean, under: Under): AnimalDue {
  const { today, dayAt } = under;
  const feedings = ofAnimal(house.feedings, animal.id);
  const trials = ofAnimal(house.trials, animal.id);
  const weighed = lastWeighing(house, animal.id);
  const { alerts, points } = under.weightsOf(house, animal, under);
  const inDoubt = points.some((p) => p.unlikely && p.id === weighed?.id);
  const meal = dailyMeal(house, animal, under);
  const feeding = feedingOn(house, animal.id, today);
  return {
    animal,
    ...(meal && { meal }),
    ...(feeding && { feeding }),
    feed: feedOf(meal, feeding, feedings, today),
    ...(weighed && { weighed }),
    ...(inDoubt && { inDoubt }),
    weigh: weighDue(animal, {
      today,
      last: weighed && dayAt(weighed.at),
      alert: alerts.length > 0,
      trial: trials.some((t) => goesOn(t, today)),
      change: changes,
    }),
    alerts,
    left: leftOf(feedings, today),
    trials: trialsDue(trials, today),
  };
}

function feedOf(
  meal: DailyMeal | undefined,
  feeding: Feeding | undefined,
  feedings: readonly Feeding[],
  today: Day,
): AnimalDue['feed'] {
  if (feeding?.at !== undefined) return 'done';
  if (meal?.stop && meal.stop.why !== 'refused') return 'stop';
  if (!meal || !isWeighed(meal)) return 'no';
  return ticksFeeding(feedings, today) ? 'due' : 'offer';
}

/** Of the food of last night: asked for where it was ticked off, by a keeper who noted some in the last days. */
function leftOf(feedings: readonly Feeding[], today: Day): AnimalDue['left'] {
  const yesterday = plusDays(today, -1);
  const night = feedings.find((f) => f.on === yesterday);
  if (night?.left || feedings.some((f) => f.left?.on === today)) return 'done';
  if (night?.at === undefined) return 'no';
  const since = plusDays(today, -NOTES_LEFT);
  const notes = feedings.some((f) => f.left && f.left.on >= since);
  return notes ? 'due' : 'no';
}

/** What is not used any more, and is or may be in what is fed. */
function stopped(
  house: Household,
  fed: readonly BeingFed[],
  under: Under,
): Pick<CareDue, 'barred' | 'maybeBarred' | 'barredPacks'> {
  // Most households never bar anything.
  if (!house.lots.some((l) => l.barred)) return { barred: [], maybeBarred: [], barredPacks: [] };
  return {
    barred: barredInUse(house, batchesInUse(house, under), under.dayAt),
    maybeBarred: fed.filter(({ present }) => stopOf(house, present.batch, under.dayAt)?.sure === false),
    barredPacks: barredPacks(house, under).flatMap((pack) => {
      const animals = hereAmong(
        house.animals,
        pack.fed.map((f) => f.animalId),
      );
      return animals.length > 0 ? [{ pack, animals }] : [];
    }),
  };
}

/** By the day on which they do; what nobody here eats, and what no pack is kept of, runs out for nobody. */
function packsRunningOut(house: Household, under: Under): CareDue['packsRunningOut'] {
  return pelletStocks(house, under)
    .flatMap(({ name, eaters, runsOut }) => {
      if (eaters.length === 0 || runsOut?.status !== 'known') return [];
      return daysBetween(under.today, runsOut.day) <= RUNS_OUT ? [{ name, day: runsOut.day }] : [];
    })
    .sort((a, b) => (a.day < b.day ? -1 : 1));
}
