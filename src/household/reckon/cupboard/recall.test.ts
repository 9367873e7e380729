import { describe, expect, it } from 'vitest';
import { batch, demo, house, lot, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { pourOf } from '../../../../test/kitchen/cupboards.ts';
import { type Feeding, feedingId } from '../../../care/model.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { presentOf, stoppedOf } from '../batch/present-batch.ts';
import { animalStops, barredPacks, fedFromPack } from './recall.ts';
import { stopOf } from './stops.ts';

const { dayAt } = under(today);
const PELLET = demo.foods[0]!.id;
const ID = demo.animals[0]!.id;
const BARRED = { why: 'recalled: mouldy maize', on: today };

const millet = (about: Partial<Lot> = {}) => lot('millet', { boughtOn: '2026-02-01', ...about });
const of = (id: string, on: string, lots: readonly { lot: string; grams: number }[], grams = 300) =>
  batch(id, on, { pours: [pourOf({ food: 'millet', lots, grams, at: `${on}T09:00:00Z` })] });
const named = of('b', '2026-03-01', [{ lot: 'lot-millet', grams: 300 }]);
const unnamed = of('b', '2026-03-01', []);

describe('a batch with a barred lot in it', () => {
  it('is stopped, and is no food in hand; with the bar taken off all is as it was', () => {
    const before = house({ lots: [millet()], batches: [named] });
    const after = house({ lots: [millet({ barred: BARRED })], batches: [named] });
    expect(stopOf(before, named, dayAt)).toBeUndefined();
    expect(stopOf(after, named, dayAt)).toMatchObject({
      sure: true,
      since: today,
      lots: [{ sure: true, grams: 300, barred: BARRED }],
    });
    expect(presentOf(before, mix, under(today))?.batch.id).toBe('b');
    expect(presentOf(after, mix, under(today))).toBeUndefined();
    expect(stoppedOf(after, mix, under(today))).toMatchObject([{ name: 'batch 1', stop: { sure: true } }]);
    expect(stoppedOf(before, mix, under(today))).toEqual([]);
  });

  it('leaves the batch before it, as far as that still lasts', () => {
    const older = of('a', '2026-02-20', []);
    const kept = house({
      lots: [millet({ barred: BARRED, boughtOn: '2026-02-25' })],
      batches: [older, named],
    });
    expect(presentOf(kept, mix, under(today))?.batch.id).toBe('a');
    const old = of('a', '2025-12-01', []);
    expect(presentOf({ ...kept, batches: [old, named] }, mix, under(today))).toBeUndefined();
  });

  it('where no pack was named it is maybe, and still counts', () => {
    const kept = house({ lots: [millet({ barred: BARRED })], batches: [unnamed] });
    expect(stopOf(kept, unnamed, dayAt)).toMatchObject({ sure: false, lots: [{ sure: false }] });
    expect(stopOf(kept, unnamed, dayAt)!.lots[0]!.grams).toBeUndefined();
    expect(presentOf(kept, mix, under(today))?.batch.id).toBe('b');
    // What came in after it was weighed cannot be in it.
    const later = house({ lots: [millet({ barred: BARRED, boughtOn: '2026-03-02' })], batches: [unnamed] });
    expect(stopOf(later, unnamed, dayAt)).toBeUndefined();
  });

  it('where all of it was taken out again it is maybe: crumbs stay in a bowl', () => {
    const back = batch('b', '2026-03-01', {
      pours: [
        pourOf({ food: 'millet', lots: [{ lot: 'lot-millet', grams: 20 }] }),
        pourOf({ food: 'millet', lots: [{ lot: 'lot-millet', grams: -20 }] }),
      ],
    });
    const kept = house({ lots: [millet({ barred: BARRED })], batches: [back] });
    expect(stopOf(kept, back, dayAt)).toMatchObject({ sure: false });
  });

  it('tells what the animal is fed now', () => {
    const after = house({ lots: [millet({ barred: BARRED })], batches: [named] });
    expect(animalStops(after, { id: ID }, under(today)).batches).toMatchObject([
      { id: 'b', name: 'batch 1', stop: { sure: true } },
    ]);
    expect(animalStops(after, { id: 'another' }, under(today)).batches).toEqual([]);
    expect(animalStops(house({ batches: [named] }), { id: ID }, under(today))).toEqual({
      batches: [],
      packs: [],
    });
  });
});

describe('a barred pack of pellets', () => {
  const pack = (about: Partial<Lot> = {}): Lot =>
    lot(PELLET, { id: 'p', boughtOn: '2026-03-05', openedOn: '2026-03-05', barred: BARRED, ...about });
  const fed = (on: string, from?: string): Feeding => ({
    id: feedingId(ID, on),
    animalId: ID,
    on,
    at: `${on}T18:00:00Z`,
    beside: [{ food: PELLET, grams: 6, ...(from && { lot: from }) }],
  });

  it('reached surely whom a record names, with its days and grams', () => {
    const kept = house({ lots: [pack()], feedings: [fed('2026-03-08', 'p'), fed('2026-03-06', 'p')] });
    expect(fedFromPack(kept, kept.lots[0]!, under(today))).toEqual([
      { animalId: ID, sure: true, from: '2026-03-06', to: '2026-03-08', days: 2, grams: 12 },
    ]);
  });

  it('reached maybe who ate of the food on days that do not say from which pack', () => {
    const kept = house({ lots: [pack()] });
    expect(fedFromPack(kept, kept.lots[0]!, under(today))).toEqual([
      { animalId: ID, sure: false, from: '2026-03-05', to: '2026-03-09', days: 5 },
    ]);
    const unsaid = house({ lots: [pack({ boughtOn: '2026-03-09' })], feedings: [fed('2026-03-09')] });
    expect(fedFromPack(unsaid, unsaid.lots[0]!, under(today))).toMatchObject([{ sure: false, days: 1 }]);
    // Another pack was open, and this one was not.
    const other = lot(PELLET, { id: 'q', boughtOn: '2026-03-01', openedOn: '2026-03-01' });
    const shut = house({ lots: [other, lot(PELLET, { id: 'p', boughtOn: '2026-03-05', barred: BARRED })] });
    expect(fedFromPack(shut, shut.lots[1]!, under(today))).toEqual([]);
  });

  it('an animal whose food nobody has weighed may have had it all the same', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    const kept = house({ animals, lots: [pack()] });
    expect(fedFromPack(kept, kept.lots[0]!, under(today))).toMatchObject([{ sure: false, days: 5 }]);
  });

  it('is told until nothing is left of it', () => {
    const kept = house({ lots: [pack()], feedings: [fed('2026-03-06', 'p')] });
    expect(barredPacks(kept, under(today))).toMatchObject([
      { name: 'Invented pellet', fed: [{ sure: true }] },
    ]);
    expect(animalStops(kept, { id: ID }, under(today)).packs).toMatchObject([{ was: { sure: true } }]);
    const gone = house({ lots: [pack({ left: { grams: 0, on: today } })] });
    expect(barredPacks(gone, under(today))).toEqual([]);
    expect(animalStops(gone, { id: ID }, under(today)).packs).toEqual([]);
  });
});
