/**
 * Whom a pack that is not used any more reached: a recalled, infested or spoiled pack of pellets by what was fed from
 * it, a pack of a mix's food by the batches it is in (`stops.ts`). What is not certain is said as "maybe".
 */
import type { Batch, Lot } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Animal, Household } from '../../model.ts';
import { batchesFor } from '../batch/batches.ts';
import { presentOf, stillFed, stoppedOf } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { foodsBeside, isFedBeside } from './foods-beside.ts';
import { packStandings, type Span } from './pellet-days.ts';
import { fedPlace, onDay, type PackCircumstances, pelletEaters } from './pellet-eaters.ts';
import { type Stop, stopOf } from './stops.ts';

/** An animal that was fed from a pack, or may have been. */
export interface FedFromLot extends Span {
  readonly animalId: string;
  /** A feeding that is written down names the pack; else it was the pack in use on days that say nothing of it. */
  readonly sure: boolean;
  /** g written down; absent where it is only maybe. */
  readonly grams?: number;
}

/** Every animal that was, or may have been, fed straight from a pack: those that surely were first. */
export function fedFromPack(house: Household, lot: Lot, under: PackCircumstances): FedFromLot[] {
  const sure = new Map<string, FedFromLot>();
  for (const { animalId, on, beside } of house.feedings)
    for (const part of beside) {
      if (part.lot !== lot.id) continue;
      const before = sure.get(animalId);
      sure.set(animalId, {
        animalId,
        sure: true,
        from: before && before.from < on ? before.from : on,
        to: before && before.to > on ? before.to : on,
        days: (before?.days ?? 0) + 1,
        grams: (before?.grams ?? 0) + part.grams,
      });
    }
  if (!isFedBeside(house, lot.food)) return [...sure.values()];
  const eaters = pelletEaters(house, lot.food, under);
  const standing = packStandings(house, lot.food, eaters, under.today).find((p) => p.lot.id === lot.id);
  const maybe = [...(standing?.maybe ?? [])].flatMap(([animalId, span]): FedFromLot[] =>
    sure.has(animalId) ? [] : [{ animalId, sure: false, ...span }],
  );
  return [...sure.values(), ...maybe];
}

/** A pack fed beside the mix that is not used any more and of which something is still there, and whom it reached. */
export interface BarredPack {
  readonly lot: Lot;
  readonly food: string;
  /** Of the food. */
  readonly name: string;
  readonly barred: NonNullable<Lot['barred']>;
  readonly fed: readonly FedFromLot[];
}

/**
 * Packs fed beside a mix that are not used any more: until the keeper says that nothing of one is left, there is
 * something to clear away.
 */
export function barredPacks(house: Household, under: PackCircumstances): readonly BarredPack[] {
  return onDay(packsOn(house.feedings), house, under, barredNow);
}

const packsOn = remembered((_feedings: Household['feedings']) => fedPlace<readonly BarredPack[]>());

function barredNow(house: Household, under: PackCircumstances): BarredPack[] {
  return house.lots.flatMap((lot): BarredPack[] => {
    if (!lot.barred || lot.left?.grams === 0) return [];
    const food = foodsBeside(house).find((f) => f.id === lot.food);
    if (!food) return [];
    return [
      { lot, food: lot.food, name: food.name, barred: lot.barred, fed: fedFromPack(house, lot, under) },
    ];
  });
}

/** Batches of all mixes that are being fed, and those that would be but for a lot that is not used any more. */
export function batchesInUse(house: Household, under: PackCircumstances): Batch[] {
  const all = { ...under, chosenFor: under.chosenFor ?? (() => undefined) };
  const batches = house.mixes.flatMap((mix) => [
    ...stoppedOf(house, mix, all).map(({ batch }) => batch),
    ...[presentOf(house, mix, all)?.batch ?? []].flat(),
  ]);
  return [...new Map(batches.map((b) => [b.id, b])).values()];
}

/** What of that which one animal is fed now is not to be fed. */
export interface AnimalStops {
  /** Batches that it would be fed, or is fed and may hold some. */
  readonly batches: readonly { readonly id: string; readonly name: string; readonly stop: Stop }[];
  readonly packs: readonly (BarredPack & { readonly was: FedFromLot })[];
}

/** What of that which an animal is fed now is not to be fed; both lists are empty where all is well. */
export function animalStops(
  house: Household,
  animal: Pick<Animal, 'id'>,
  under: PackCircumstances,
): AnimalStops {
  if (!house.lots.some((l) => l.barred)) return { batches: [], packs: [] };
  return {
    batches: onDay(stopsOn, house, under, stopsNow).filter(({ animalIds }) => animalIds.includes(animal.id)),
    packs: barredPacks(house, under).flatMap((pack) => {
      const was = pack.fed.find((f) => f.animalId === animal.id);
      return was ? [{ ...pack, was }] : [];
    }),
  };
}

interface StoppedBatch {
  readonly id: string;
  readonly name: string;
  readonly stop: Stop;
  readonly animalIds: readonly string[];
}

const stopsOn = fedPlace<readonly StoppedBatch[]>();

/** Batches that may still hold something and that a barred lot is, or may be, in; of mixes that are gone too. */
function stopsNow(
  house: Household,
  under: PackCircumstances & Pick<Circumstances, 'chosenFor'>,
): StoppedBatch[] {
  const ofMixes = house.mixes.map((mix) => batchesFor(house, mix));
  const named = new Set(ofMixes.flat().map((b) => b.id));
  const others = house.batches.filter((b) => !b.givenUp && !named.has(b.id));
  const fed = [
    ...ofMixes.flatMap((all) => stillFed(house, all, under)),
    ...stillFed(house, others, under).map((present) => ({ ...present, name: present.batch.name })),
  ];
  const stops = fed.flatMap(({ batch, name }): StoppedBatch[] => {
    const stop = stopOf(house, batch, under.dayAt);
    return stop ? [{ id: batch.id, name, stop, animalIds: batch.animalIds }] : [];
  });
  return [...new Map(stops.map((s) => [s.id, s])).values()];
}
