import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import foodWords from './data/food-words.json' with { type: 'json' };
import { furtherNames, NOT_THERE } from './food-words.ts';
import { decodeReference } from './reference.ts';
import { createFoodSearch, type FoodSearch } from './search.ts';

let search: FoodSearch;
let keepers: readonly string[];
beforeAll(() => {
  const reference = decodeReference(readFileSync(new URL('./data/reference.bin', import.meta.url)));
  search = createFoodSearch(reference);
  keepers = reference.plainFoods().map((food) => food.name);
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

  it.each([
    ['mung bean', 'Mung beans, raw dry'],
    ['mungbean', 'Mung beans, raw dry'],
    ['lentils', 'Lentils, raw dry'],
    ['chickpeas', 'Chickpeas, raw dry'],
    ['lentlis', 'Lentils, raw dry'],
    ['shrimp', 'Dried shrimp, peeled and unsalted'],
    ['cooked lentils', 'Lentils, cooked'],
    ['boiled mung beans', 'Mung beans, cooked'],
  ])('means the plain food and no dish made of it, unless it is asked for: %s', (query, name) => {
    expect(search.find(query, 1)[0]?.name).toBe(name);
  });

  it.each([
    ['meal worm', 'Dried mealworm'],
    ['hazel nut', 'Hazelnut'],
    ['hazlenut', 'Hazelnut'],
    ['sun flower seed', 'Sunflower seed, shelled'],
    ['sunflowerseeds', 'Sunflower seed, shelled'],
    ['pump kin seed', 'Pumpkin seed'],
    ['Kürbis Kerne', 'Pumpkin seed'],
    ['dande lion', 'Dandelion leaf, dried'],
    ['flax seed', 'Linseed'],
    ['beet root', 'Beetroot, fresh'],
    ['rose hips', 'Rose hip, dried'],
  ])('takes words written apart for one and one for two: %s', (query, name) => {
    expect(search.find(query, 1)[0]?.name).toBe(name);
    expect(search.note(query)).toBeUndefined();
  });

  it('takes letters in the wrong order for what they stand near', () => {
    expect(first('parsely')).toBe(first('parsley'));
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

describe('words of other languages and of other keepers', () => {
  const firstName = (query: string) => search.find(query, 1)[0]?.name;
  it.each([
    ['Hafer', 'Oats'],
    ['Haferflocken', 'Rolled oats'],
    ["flocons d'avoine", 'Rolled oats'],
    ['havermout', 'Rolled oats'],
    ['copos de avena', 'Rolled oats'],
    ['Buchweizen', 'Buckwheat'],
    ['sarrasin', 'Buckwheat'],
    ['Sonnenblumenkerne', 'Sunflower seed, shelled'],
    ['pipas de girasol', 'Sunflower seed, shelled'],
    ['Kürbiskerne', 'Pumpkin seed'],
    ['kurbiskerne', 'Pumpkin seed'],
    ['weiße Bohnen gekocht', 'White beans, cooked'],
    ['weisse Bohnen gekocht', 'White beans, cooked'],
    ['Mehlwürmer', 'Dried mealworm'],
    ['Mehlwürmer getrocknet', 'Dried mealworm'],
    ['getrocknete Mehlwürmer', 'Dried mealworm'],
    ['vers de farine', 'Dried mealworm'],
    ['gusanos de la harina', 'Dried mealworm'],
    ['mealies', 'Dried mealworm'],
    ['meal worms', 'Dried mealworm'],
    ['meal worm', 'Dried mealworm'],
    ['rucola', 'Rocket, fresh'],
    ['roquette', 'Rocket, fresh'],
    ['quinua', 'Quinoa'],
    ['kinoa', 'Quinoa'],
    ['quinola', 'Quinoa'],
    ['qinoa', 'Quinoa'],
    ['pissenlit', 'Dandelion leaf, fresh'],
    ['peterselie', 'Parsley, fresh'],
    ['nueces', 'Walnut'],
    ['Äpfel', 'Apple, fresh'],
    ['brocolli', 'Broccoli, fresh'],
    ['buckweat', 'Buckwheat'],
    ['zuchini', 'Courgette, fresh'],
  ])('%s finds %s', (query, name) => {
    expect(firstName(query)).toBe(name);
    expect(search.note(query)).toBeUndefined();
  });

  it('finds every keeper food by every word for it', () => {
    const lost: string[] = [];
    for (const [name, words] of Object.entries(foodWords.foods))
      for (const word of keepers.includes(name) ? Object.values(words).flat() : [])
        if (!search.find(word, 8).some((food) => food.name === name)) lost.push(`${name}: ${word}`);
    expect(lost).toEqual([]);
  });

  it('has words in four languages for every keeper food', () => {
    expect(keepers.filter((name) => !(name in foodWords.foods))).toEqual([]);
    for (const [name, { de, fr, nl, es }] of Object.entries(foodWords.foods))
      for (const list of [de, fr, nl, es]) expect(list.filter(Boolean).length, name).toBeGreaterThan(0);
  });

  it('keeps English words English', () => {
    expect(firstName('endive')).toBe('Endive, fresh');
    expect(firstName('peas')).not.toBe('Pear, fresh');
    expect(firstName('millet')).toBe('Millet');
  });
});

describe('what the tables do not have', () => {
  it.each([
    ['brewers yeast', /^The tables have no brewer's yeast\..*own food/],
    ["brewer's yeast", /^The tables have no brewer's yeast/],
    ['brewer’s yeast', /^The tables have no brewer's yeast/],
    ['yeast, brewers', /^The tables have no brewer's yeast/],
    ['Bierhefe', /^The tables have no brewer's yeast/],
    ['wheat flakes', /^The tables have no wheat flakes\. The nearest is Wheat, soft\.$/],
    ['Weizenflocken', /Wheat, soft/],
    ['corn flakes', /^The tables have no maize flakes.*The nearest is Maize\.$/],
    [
      'Kolbenhirse rot',
      /^No food in the tables has all of these words\. The nearest is Foxtail millet in husk\.$/,
    ],
    ['amaranthus', /^No food in the tables is called “amaranthus”; shown is what is spelt nearly so\.$/],
    ['buckwheat zzqqxx', /^No food in the tables has all of these words\. The nearest is Buckwheat\.$/],
  ])('%s: %s', (query, note) => expect(search.note(query)).toMatch(note));

  it('is not answered with a wrong hit', () => {
    expect(search.find('brewers yeast')).toEqual([]);
    expect(search.find('wheat flakes').map((f) => f.name)).toEqual(['Wheat, soft', 'Wheat, hard']);
  });

  it('names only foods that are there, and gives way to a food that is called so', () => {
    const called = keepers.flatMap((name) => [name, ...furtherNames(name)]).map((name) => name.toLowerCase());
    for (const { what, words, nearest } of NOT_THERE) {
      for (const name of nearest) expect(keepers, what).toContain(name);
      for (const word of words) {
        const food = search.find(word, 1)[0];
        if (food && [...called, ...food.also].includes(word.toLowerCase())) continue;
        expect(search.note(word), word).toContain(what);
      }
    }
  });

  it('says nothing where there is a food, or nothing was typed', () => {
    for (const query of ['oats', 'sr28:20038', '', ' ,', 'oa', 'mealwrom'])
      expect(search.note(query), query).toBeUndefined();
  });
});
