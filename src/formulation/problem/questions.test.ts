/** Odd figures are asked about by the food's name; the shipped tables have a moisture for every food, others may not. */
import { expect, test } from 'vitest';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { loadReference } from '../../household/reference-file.ts';
import { questionsOn } from './questions.ts';

const reference = loadReference();

test('a moisture that cannot be reckoned with, as the table has none, is asked about', () => {
  const oats = reference.get('sr28:20038')!;
  const { WATER: _, ...composition } = oats.composition;
  const dry = { ...reference, get: () => ({ ...oats, composition }) };
  const foods = [{ id: 'oats', ref: oats.ref, composition: { WATER: 10 } }];
  expect(questionsOn(problemOf({ foods }), dry)).toEqual([
    {
      pointer: '/foods/0/composition/WATER',
      sentence: expect.stringMatching(/^The table has no moisture for Oats/),
    },
  ]);
  expect(questionsOn(problemOf({ foods }), reference)).toEqual([]);
});

test('odd figures name their food', () => {
  const foods = [{ id: 'a', name: 'Odd', composition: { FAT: 9 }, high: { FAT: 8 } }];
  expect(questionsOn(problemOf({ foods }), reference)).toEqual([
    { pointer: '/foods/0/composition/FAT', sentence: expect.stringMatching(/^Odd: Fat is 9, above/) },
  ]);
});
