import { expect, test } from 'vitest';
import { batch, demo, house, today, under } from '../../../../test/kitchen/calendar-house.ts';
import type { Animal } from '../../model.ts';
import { supplyOf } from './supply-of.ts';

const bramble = demo.animals[0]!;
const moss: Animal = { ...bramble, id: 'moss', name: 'Moss', dailyGrams: 8 };
const shared = batch('a', '2026-03-01', { animalIds: [bramble.id, 'moss'] });

test('a batch lasts by all who eat of it, and so does the pellet beside it', () => {
  const told = supplyOf(house({ animals: [bramble, moss], batches: [shared] }), bramble, under(today))!;
  // 300 g at 6 and 4 g a day are 30 days from the first of March.
  expect(told).toMatchObject({
    until: { day: '2026-03-31', days: 21 },
    gramsADay: 10,
    eaters: ['Bramble', 'Moss'],
  });
  expect(told.beside).toMatchObject([{ name: 'Invented pellet', gramsADay: 10 }]);
});

test('what is not known of one of them is not guessed', () => {
  const { dailyGrams: _, ...silent } = moss;
  const told = supplyOf(house({ animals: [bramble, silent], batches: [shared] }), bramble, under(today))!;
  expect(told.until).toBeUndefined();
  expect(told.gramsADay).toBeUndefined();
  expect(told.beside).toEqual([]);
});

test('no batch, no supply', () => {
  expect(supplyOf(house({ batches: [] }), bramble, under(today))).toBeUndefined();
});
