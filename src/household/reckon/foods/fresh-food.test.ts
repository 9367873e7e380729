import { describe, expect, it } from 'vitest';
import type { ReferenceFood } from '../../../foods/reference.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household, OwnFood } from '../../model.ts';
import {
  driedAtHome,
  driedFrom,
  freshFoodOf,
  freshPairsOf,
  freshWords,
  looksFresh,
  PLANNED_MOISTURE,
  withDried,
} from './fresh-food.ts';

const carrot = { ref: 'sr28:11124', name: 'Carrots, raw', composition: { WATER: 88.29 } } as ReferenceFood;
const table = new Map([[carrot.ref, carrot]]);
const how = { food: 'carrot-dried', fresh: carrot.ref, moisture: 9, trimLoss: 12 };

describe('how a food is dried', () => {
  it('is kept once, or not at all', () => {
    const before = [{ food: 'a', fresh: 'x', moisture: 10 }];
    expect(withDried(before, 'a', { fresh: 'y', moisture: 8 })).toEqual([
      { food: 'a', fresh: 'y', moisture: 8 },
    ]);
    expect(withDried(before, 'a', undefined)).toEqual([]);
    const house: Household = { ...demoHousehold(), kitchen: [{ id: 'kitchen', driedAtHome: [how] }] };
    expect(driedAtHome(house, 'carrot-dried')).toBe(how);
    expect(driedAtHome(house, 'millet')).toBeUndefined();
  });

  it('keeps its moisture with another fresh food, and its trim loss only with the same', () => {
    expect(driedFrom(undefined, 'x')).toEqual({ fresh: 'x', moisture: PLANNED_MOISTURE });
    expect(driedFrom(how, 'x')).toEqual({ fresh: 'x', moisture: 9 });
    expect(driedFrom(how, carrot.ref)).toEqual({ fresh: carrot.ref, moisture: 9, trimLoss: 12 });
  });
});

describe('the fresh food', () => {
  it('is an own one, else one of the tables', () => {
    const own: OwnFood = {
      id: 'garden',
      name: 'Garden carrot',
      kind: 'mix',
      group: 'vegetable',
      composition: { WATER: 89 },
      sd: {},
      low: { FAT: 0.1 },
      source: 'own scale',
      invented: false,
    };
    expect(freshFoodOf(carrot.ref, [own], table)).toBe(carrot);
    expect(freshFoodOf('garden', [own], table)).toMatchObject({
      ref: 'garden',
      group: 'vegetable',
      low: { FAT: 0.1 },
    });
    expect(freshFoodOf('gone', [own], table)).toBeUndefined();
  });

  it('is suggested by the tables and by the name, never a dry one', () => {
    expect(freshPairsOf('sr28:11683')).toEqual(['sr28:11124']);
    expect(freshWords('Red sweet pepper, freeze-dried')).toBe('Red sweet pepper raw');
    expect(looksFresh(carrot)).toBe(true);
    expect(looksFresh({ ...carrot, composition: { WATER: 8 } })).toBe(false);
  });
});
