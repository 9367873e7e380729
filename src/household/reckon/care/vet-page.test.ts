/** What the page for the vet counts, and what it leaves unsaid because nobody knows it. */
import { expect, test } from 'vitest';
import { batch, demo, house, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { feedingId } from '../../../care/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Animal, Household } from '../../model.ts';
import { vetPage } from './vet-page.ts';

const [bramble] = demo.animals as [Animal];
const ago = (days: number) => plusDays(today, -days);
const page = (about: Partial<Household> = {}) => vetPage(house(about), bramble, under(today));

test('with nothing on record nothing is made up', () => {
  const { fed, weights, changes, notes } = page();
  expect([fed, weights.last, weights.month, weights.lowest]).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect([changes.shown, notes.shown, weights.weighings]).toEqual([[], [], 0]);
});

test('what was fed is the mean of the days ticked off alone', () => {
  const feedings = [1, 2, 40].map((days) => ({
    id: feedingId(bramble.id, ago(days)),
    animalId: bramble.id,
    on: ago(days),
    at: `${ago(days)}T18:00:00Z`,
    mix: { grams: 4 + days },
    beside: [{ food: 'pellet', grams: 6 }],
  }));
  expect(page({ feedings }).fed).toEqual({ days: 2, of: 30, mix: 5.5, beside: 6 });
});

test('changes and notes of the last 90 days, the newest first; what has no room is counted', () => {
  const notes = [3, 1, 2, 5, 4, 91].map((days) => ({
    id: `n${days}`,
    animalId: bramble.id,
    on: ago(days),
    kind: 'seen' as const,
    text: 'x',
  }));
  const told = page({ notes, batches: [batch('a', ago(95)), batch('b', ago(20))] });
  expect(told.notes).toMatchObject({
    shown: [{ id: 'n1' }, { id: 'n2' }, { id: 'n3' }, { id: 'n4' }],
    more: 1,
  });
  expect(told.changes.shown).toMatchObject([{ kind: 'batch', on: ago(20), change: { kind: 'same' } }]);
});

test('an earlier weight is told only where a weighing lies near its day', () => {
  const weighings = [60, 31, 0].map((days) => ({
    id: `w${days}`,
    animalId: bramble.id,
    at: `${ago(days)}T10:00:00Z`,
    grams: 140,
  }));
  const { weights } = page({ weighings });
  expect(weights.last).toEqual({ day: today, grams: 140 });
  expect(weights.month).toBeDefined();
  expect(weights.quarter).toBeUndefined();
});
