import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { decodeReference } from './reference.ts';
import { createFoodSearch, type FoodSearch } from './search.ts';

let search: FoodSearch;
beforeAll(() => {
  search = createFoodSearch(decodeReference(readFileSync(new URL('./data/reference.bin', import.meta.url))));
});
const first = (query: string) => search.find(query, 1)[0]?.ref;

describe('food search', () => {
  it.each([
    ['oats', 'sr28:20038'],
    ['OATS', 'sr28:20038'],
    ['oat groats', 'sr28:20038'],
    ['dried mealworm', 'pub:mealworm-dried'],
    ['mealworms, dried', 'pub:mealworm-dried'],
    ['pumpkin seed', 'sr28:12014'],
    ['pepitas', 'sr28:12014'],
    ['carrot', 'sr28:11683'],
    ['fresh carrot', 'sr28:11124'],
    ['buckwheat', 'sr28:20008'],
  ])('puts the plain food first: %s', (query, ref) => {
    expect(first(query)).toBe(ref);
  });

  it.each([
    ['sunflwer sed', 'sr28:12036'],
    ['carot dried', 'sr28:11683'],
    ['bukwheat', 'sr28:20008'],
  ])('forgives slips: %s', (query, ref) => {
    expect(first(query)).toBe(ref);
  });

  it('finds both mealworms behind letters in the wrong order', () => {
    expect(
      search
        .find('mealwrom', 2)
        .map((f) => f.ref)
        .sort(),
    ).toEqual(['pub:mealworm-dried', 'pub:mealworm-live']);
  });

  it.each([
    ['zucchini', 'courgette'],
    ['maize', 'corn'],
    ['linseed', 'flaxseed'],
    ['dehydrated carrot', 'dried carrot'],
  ])('knows that %s is %s', (one, other) => {
    expect(first(one)).toBe(first(other));
  });

  it('finds while the word is being typed', () => {
    expect(first('oa')).toBe('sr28:20038');
    expect(search.find('buckw', 1)[0]!.name).toBe('Buckwheat');
  });

  it('takes a plural for a finished word', () => {
    expect(search.find('peas', 50).map((f) => f.name)).not.toContain('Pearl barley');
  });

  it.each(['20038', 'sr28:20038', ' SR28:20038 '])('takes the number itself: %s', (query) => {
    expect(search.find(query).map((f) => f.ref)).toEqual(['sr28:20038']);
  });

  it('takes leading zeros as read', () => {
    expect(first('8120')).toBe('sr28:08120');
    expect(first('pub:mealworm-dried')).toBe('pub:mealworm-dried');
  });

  it('gives at most as many as asked for, each once, and none for nothing', () => {
    const found = search.find('seed', 30).map((f) => f.ref);
    expect(found).toHaveLength(30);
    expect(new Set(found).size).toBe(30);
    expect(search.find('')).toEqual([]);
    expect(search.find('  ,')).toEqual([]);
    expect(search.find('zzqqxx')).toEqual([]);
  });

  it('gives foods with some of the words where none has all', () => {
    expect(search.find('buckwheat zzqqxx', 1)[0]!.name).toBe('Buckwheat');
  });
});
