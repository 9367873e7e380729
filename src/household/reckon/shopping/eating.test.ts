import { describe, expect, it } from 'vitest';
import { demoHousehold } from '../../demo.ts';
import { eatingOf } from './eating.ts';

const house = demoHousehold();

const mix = house.mixes[0]!;

describe('size of the batch', () => {
  it('is known in days only where every animal’s food is', () => {
    const [bramble] = house.animals;
    expect(eatingOf(mix, house.animals).gramsADay).toBe(6);
    const moss = { ...bramble!, id: 'moss', name: 'Moss', dailyGrams: undefined };
    const both = eatingOf({ ...mix, animalIds: [...mix.animalIds, 'moss'] }, [...house.animals, moss]);
    expect(both).not.toHaveProperty('gramsADay');
    expect(both.unknown.map((a) => a.name)).toEqual(['Moss']);
    expect(eatingOf({ ...mix, animalIds: [] }, house.animals)).not.toHaveProperty('gramsADay');
  });
});
