import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { batch, demo, house, lot, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { dailyMeal } from './daily-meal.ts';

const bramble = demo.animals[0]!;
const moss: Animal = { ...bramble, id: 'moss', name: 'Moss', dailyGrams: 8 };
const other: Mix = { ...mix, id: 'other', name: 'Other mix', animalIds: ['moss'] };

const meal = (about: Partial<Household>, animal: Animal = bramble, on = today) =>
  dailyMeal(house(about), animal, under(on));

describe('the batch an animal is fed', () => {
  test('is the last finished one of all that are fed to it, whatever its housemates are fed', () => {
    const shared = { ...mix, animalIds: [bramble.id, 'moss'] };
    const batches = [
      batch('a', '2026-01-01', { animalIds: [bramble.id, 'moss'] }),
      batch('b', '2026-02-10', { mixId: 'other', animalIds: ['moss'], name: 'Other mix' }),
    ];
    const kept = { animals: [bramble, moss], mixes: [shared, other], batches };
    expect(meal(kept)?.mix).toMatchObject({ batch: { id: 'a' }, name: 'batch 1', grams: 6 });
    expect(meal(kept, moss)?.mix).toMatchObject({ batch: { id: 'b' }, grams: 4 });
  });

  test('is found though its mix was deleted or no longer names the animal', () => {
    const batches = [batch('a', '2026-02-01')];
    expect(meal({ mixes: [], batches })?.mix).toMatchObject({ batch: { id: 'a' }, name: mix.name });
    expect(meal({ mixes: [{ ...mix, animalIds: [] }], batches })?.mix?.batch.id).toBe('a');
  });

  test('is none where none was made, all was eaten or given up, or the animal is gone', () => {
    expect(meal({ batches: [] })).toBeUndefined();
    expect(meal({ batches: [batch('a', '2026-02-01', { left: { grams: 0, on: today } })] })).toBeUndefined();
    const givenUp = { note: 'spilt', on: today };
    expect(meal({ batches: [batch('a', '2026-02-01', { givenUp })] })).toBeUndefined();
    const gone = { ...bramble, gone: { how: 'died', on: '2026-03-01' } } as const;
    expect(meal({ animals: [gone], batches: [batch('a', '2026-02-01')] }, gone)).toBeUndefined();
  });

  test('has no grams where nobody has said what the animal is fed', () => {
    const { dailyGrams: _, ...silent } = bramble;
    const told = meal({ animals: [silent], batches: [batch('a', '2026-02-01')] }, silent)!;
    expect(told.mix?.grams).toBeUndefined();
    expect(told.beside.map((b) => b.grams)).toEqual([undefined]);
  });
});

describe('while food changes', () => {
  const batches = [batch('a', '2026-02-15'), batch('b', '2026-03-08')];

  test('part of it is the batch before, less from day to day', () => {
    const first = meal({ batches }, bramble, '2026-03-08')!;
    expect(first.change).toEqual({ day: 1, of: 14, part: 1 / 14 });
    expect(first.old).toMatchObject({ batch: { id: 'a' }, name: 'batch 1' });
    expect(first.mix!.grams! + first.old!.grams!).toBeCloseTo(6, 9);
    // The pellet is the same beside both.
    expect(first.beside[0]!.grams).toBeCloseTo(6, 9);
    const third = meal({ batches }, bramble, '2026-03-10')!;
    expect(third.old!.grams!).toBeLessThan(first.old!.grams!);
    const last = meal({ batches }, bramble, '2026-03-21')!;
    expect(last).toMatchObject({ change: { day: 14, of: 14, part: 1 }, mix: { grams: 6 } });
    expect(last.old).toBeUndefined();
    expect(meal({ batches }, bramble, '2026-03-22')!.change).toBeUndefined();
  });

  test('all of it is the new one where nothing is left of the old', () => {
    const eaten = [batch('a', '2026-02-15', { left: { grams: 0, on: '2026-03-09' } }), batches[1]!];
    const told = meal({ batches: eaten })!;
    expect(told).toMatchObject({ change: { day: 3, of: 14, part: 1 }, mix: { grams: 6 } });
    expect(told.old).toBeUndefined();
  });

  test('the day’s food stays what the animal is fed, for whatever shares and days', () => {
    const pellet = (b: Batch, share: number): Batch => ({
      ...b,
      problem: {
        ...b.problem,
        beside: b.problem.beside.map((p) => ({ ...p, share_of_ration: share })),
      },
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 8, max: 24 }),
        (now, before, day) => {
          const on = `2026-03-${String(day).padStart(2, '0')}`;
          const told = meal(
            { batches: [pellet(batches[0]!, before), pellet(batches[1]!, now)] },
            bramble,
            on,
          )!;
          const all = [told.mix, told.old, ...told.beside].reduce((sum, p) => sum + (p?.grams ?? 0), 0);
          expect(all).toBeCloseTo(bramble.dailyGrams!, 9);
        },
      ),
      { numRuns: draws(500, 60) },
    );
  });
});

describe('what speaks against feeding it', () => {
  const barred = { why: 'infested', on: '2026-03-09' };
  const poured = (id: string, lots: Batch['pours'][number]['lots']) =>
    batch(id, '2026-02-20', {
      pours: [{ food: 'millet', lots, target: 300, grams: 300, at: '2026-02-20T09:00:00' }],
    });
  const millet = lot('millet', { boughtOn: '2026-02-01', barred });
  const holding = poured('a', [{ lot: millet.id, grams: 300 }]);

  test('a barred pack that is in the batch, or may be', () => {
    const sure = meal({ lots: [millet], batches: [holding] })!;
    expect(sure.stop).toMatchObject({ why: 'recalled', batch: { id: 'a' }, lot: { id: millet.id } });
    expect(meal({ lots: [millet], batches: [poured('a', [])] })!.stop?.why).toBe('maybe recalled');
    const { barred: _, ...sound } = millet;
    expect(meal({ lots: [sound], batches: [holding] })!.stop).toBeUndefined();
  });

  test('the newest batch is passed over for it while an older one lasts, and so is the old one while food changes', () => {
    const oats = [{ ...poured('x', []).pours[0]!, food: 'rolled-oats' }];
    const older = batch('old', '2026-02-10', { pours: oats });
    const told = meal({ lots: [millet], batches: [older, holding] })!;
    expect(told.mix?.batch.id).toBe('old');
    expect(told.stop).toBeUndefined();
    const newer = batch('b', '2026-03-08', { pours: oats });
    const changing = meal({ lots: [millet], batches: [holding, newer] })!;
    expect(changing).toMatchObject({ mix: { batch: { id: 'b' }, grams: 6 }, change: { day: 3, part: 1 } });
    expect(changing.old).toBeUndefined();
    expect(changing.stop).toBeUndefined();
  });

  test('a food in it that upset this animal, before one it refuses; what was taken out again is not in it', () => {
    const trial = {
      id: 't',
      animalId: bramble.id,
      food: 'millet',
      name: 'Millet',
      days: [],
      offerings: [{ on: '2026-03-01', seen: 'upset' as const }],
    };
    const batches = [poured('a', [])];
    const refusing = { ...bramble, refuses: ['millet'] };
    expect(meal({ batches, animals: [refusing] }, refusing)!.stop).toMatchObject({
      why: 'refused',
      foods: ['Millet'],
    });
    expect(meal({ batches, animals: [refusing], trials: [trial] }, refusing)!.stop?.why).toBe('upset');
    const animals = [bramble, moss];
    expect(meal({ batches, animals, trials: [{ ...trial, animalId: 'moss' }] })!.stop).toBeUndefined();
    const [pour] = poured('a', []).pours;
    const out = batch('a', '2026-02-20', {
      pours: [pour!, { ...pour!, grams: -300 }, { ...pour!, food: 'rolled-oats' }],
    });
    expect(meal({ batches: [out], trials: [trial] })!.stop).toBeUndefined();
  });
});

describe('what is fed beside it', () => {
  const batches = [batch('a', '2026-02-01')];
  const pellet = demo.foods.find((f) => f.kind === 'pellet')!.id;
  const pack = lot(pellet, { id: 'pack' });

  test('comes from the pack in use, where packs of it are kept', () => {
    expect(meal({ batches, lots: [pack] })!.beside[0]).toMatchObject({ food: pellet, lot: { id: 'pack' } });
    expect(meal({ batches, lots: [] })!.beside[0]!.lot).toBeUndefined();
  });

  test('is not fed while its only pack is not to be used', () => {
    const barred = { ...pack, barred: { why: 'recalled', on: today } };
    const told = meal({ batches, lots: [barred] })!;
    expect(told.stop).toMatchObject({ why: 'recalled', lot: { id: 'pack' } });
    expect(told.stop!.batch).toBeUndefined();
    const other = lot(pellet, { id: 'other' });
    expect(meal({ batches, lots: [barred, other] })!.stop).toBeUndefined();
    const gone = { ...barred, left: { grams: 0, on: today } };
    expect(meal({ batches, lots: [gone] })!.stop).toBeUndefined();
  });
});
