import { expect, test } from 'vitest';
import { batch, demo, house, lot, today, under } from '../../../../test/kitchen/calendar-house.ts';
import type { Animal, Household } from '../../model.ts';
import { sitterCard } from './sitter-card.ts';

const bramble = demo.animals[0]!;
const card = (about: Partial<Household>) => sitterCard(house(about), under(today));

test('what each animal is fed a day, in whole steps that add up', () => {
  const fed = { ...bramble, dailyGrams: 11.3 };
  const [entry] = card({ animals: [fed], batches: [batch('a', '2026-01-20')] });
  expect(entry!.foods).toMatchObject([
    { kind: 'mix', grams: 6 },
    { kind: 'beside', name: 'Invented pellet', grams: 5 },
  ]);
  expect(entry!.together).toBe(11);
});

test('an animal that is gone has no entry, one whose food is not known has empty lines', () => {
  const gone: Animal = { ...bramble, id: 'moss', gone: { how: 'given away', on: today } };
  const { dailyGrams: _, ...silent } = bramble;
  const entries = card({ animals: [gone, silent], batches: [batch('a', '2026-01-20')] });
  expect(entries.map((e) => e.animal.id)).toEqual([bramble.id]);
  expect(entries[0]!.foods.map((f) => f.grams)).toEqual([undefined, undefined]);
  expect(entries[0]!.together).toBeUndefined();
  expect(card({ animals: [bramble], batches: [] })[0]!.foods).toEqual([]);
});

test('what it must never have: what upset it, and nothing sweet with diabetes that holds', () => {
  const told: Animal = {
    ...bramble,
    refuses: ['millet'],
    usualGrams: 150,
    conditions: [
      { what: 'diabetes', since: '2026-01-01' },
      { what: 'pregnant', since: '2025-01-01', until: '2025-01-18' },
    ],
  };
  const trial = {
    id: 't',
    animalId: bramble.id,
    food: 'beet',
    name: 'Beetroot',
    days: [],
    offerings: [{ on: '2026-03-01', seen: 'upset' as const }],
  };
  const [entry] = card({ animals: [told], trials: [trial, { ...trial, id: 'u', animalId: 'other' }] });
  expect(entry).toMatchObject({ never: ['Beetroot'], leaves: ['Millet'], noSugar: true, weight: 150 });
  expect(entry!.conditions.map((c) => c.what)).toEqual(['diabetes']);
  const noSugar = (species: string) => card({ animals: [{ ...bramble, species }] })[0]!.noSugar;
  expect([noSugar('golden hamster'), noSugar('winter white hamster'), noSugar('rat')]).toEqual([
    false,
    true,
    false,
  ]);
});

test('a recall stops a sitter; a food that is only refused does not', () => {
  const barred = { why: 'weevils', on: '2026-03-09' };
  const millet = lot('millet', { boughtOn: '2026-01-01', barred });
  const batches = [batch('a', '2026-01-20')];
  expect(card({ batches, lots: [millet] })[0]!.stop?.why).toBe('maybe recalled');
  expect(card({ batches, animals: [{ ...bramble, refuses: ['millet'] }] })[0]!.stop).toBeUndefined();
});
