import { describe, expect, it } from 'vitest';
import { everydayNames, everydayRefs } from '../../foods/everyday-names.ts';
import { loadReference } from '../../household/reference-file.ts';
import type { Allergen } from '../model.ts';
import { allergensOf, washAfter } from './allergens.ts';

/** Foods that keepers use, by number, that hold something of the list; all others do not. */
const EVERYDAY: Readonly<Partial<Record<Allergen, string>>> = {
  nuts: 'sr28:12155 sr28:12120 sr28:12147 sr28:12142 sr28:12087 sr28:12078 sr28:12151 sr28:12131 sr28:12077 sr28:12100',
  peanut: 'sr28:16087 sr28:16390',
  sesame: 'sr28:12023',
  insects:
    'pub:mealworm-live pub:mealworm-dried pub:superworm-live pub:cricket-fresh pub:cricket-dried pub:bsf-larva-live pub:bsf-larva-dried pub:silkworm-pupa-dried pub:gammarus-dried pub:shrimp-dried sr28:15271',
  egg: 'sr28:01129 sr28:01133 sr28:01173',
  milk: 'sr28:01014 sr28:01091 sr28:01116',
  fish: 'sr28:15016 sr28:15209 sr28:15223 sr28:15100',
  gluten:
    'sr28:20038 sr28:08120 sr28:20033 sr28:20004 sr28:20005 sr28:20073 sr28:20071 sr28:20076 sr28:20140 sr28:20138 sr28:20062 sr28:20069 sr28:20012 sr28:20028 sr28:20077 sr28:20078 pub:oat-hay',
  soya: 'sr28:16109 sr28:16111 sr28:16427',
};
/** Everyday names by which nobody could tell; and one that in German is said of another bean. */
const BLIND = new Set(['bran', 'Kleie', 'zemelen', 'Spelz', 'houting', 'Sojasprossen']);

const holdsOf = (ref: string) =>
  Object.entries(EVERYDAY).flatMap(([allergen, refs]) => (refs.split(' ').includes(ref) ? [allergen] : []));

describe('what a keeper may be allergic to', () => {
  it('is told by every everyday name in three languages', () => {
    for (const ref of everydayRefs())
      for (const language of ['en', 'de', 'nl'] as const)
        for (const name of everydayNames(ref, language))
          if (!BLIND.has(name)) expect(allergensOf({ name }).holds, `${ref} ${name}`).toEqual(holdsOf(ref));
  });

  it('is told by the number in the tables, whatever the keeper calls the food', () => {
    for (const ref of everydayRefs())
      expect(allergensOf({ ref, name: 'X' }), everydayNames(ref, 'en')[0]).toMatchObject({
        holds: holdsOf(ref),
        known: true,
      });
  });

  it('is told by the titles of the tables', () => {
    const reference = loadReference();
    const titles: [RegExp, Allergen][] = [
      [/^Nuts, (?!coconut)/, 'nuts'],
      [/^Peanuts?,/, 'peanut'],
      [/^Egg, /, 'egg'],
      [/^(Milk|Cheese|Yogurt|Whey), (?!imitation)/, 'milk'],
      [/^Fish, /, 'fish'],
      [/^(Wheat|Oat|Barley|Rye|Spelt)\b/, 'gluten'],
      [/^(Soybeans?|Tofu)\b/, 'soya'],
    ];
    const seen = new Map<Allergen, number>();
    for (let row = 0; row < reference.size; row++) {
      const { ref, name, tableName } = reference.at(row);
      for (const [title, allergen] of titles)
        if (title.test(tableName)) {
          seen.set(allergen, (seen.get(allergen) ?? 0) + 1);
          expect(allergensOf({ ref, name, tableName }).holds, tableName).toContain(allergen);
        }
    }
    for (const [, allergen] of titles) expect(seen.get(allergen), allergen).toBeGreaterThan(3);
  });

  it('is not told by things that are only called so', () => {
    for (const name of [
      ...['Coconut flakes', 'Butternut squash', 'Buckwheat', 'Peanut-free oatmeal substitute of rice'],
      ...['Erdmandel', 'Kakaobutter', 'Buchweizenflocken', 'Johannisbrot', 'Milchdistel', 'Kokosmilch'],
      ...['Pindakaas', 'Boekweit', 'Nootmuskaat', 'Aardamandel', 'Kokosmelk', 'Eggplant'],
    ]) {
      const holds = allergensOf({ name }).holds.filter((a) => a !== 'peanut' && a !== 'gluten');
      expect(holds, name).toEqual([]);
    }
    expect(allergensOf({ name: 'Peanut butter' }).holds).toEqual(['peanut']);
    expect(allergensOf({ name: 'Erdnussbutter' }).holds).toEqual(['peanut']);
    expect(allergensOf({ name: 'Buchweizen' }).holds).toEqual([]);
    expect(allergensOf({ name: 'Gluten-free millet' }).holds).toEqual([]);
  });

  it('is found on the list of ingredients, with its traces apart', () => {
    const lists = [
      'Getreide (Weizen, Hafer), Sonnenblumenkerne, getrocknete Mehlwürmer 4 %. Kann Spuren von Nüssen und Sesam enthalten.',
    ];
    expect(allergensOf({ name: 'Mischfutter', lists })).toEqual({
      holds: ['insects', 'gluten'],
      traces: ['nuts', 'sesame'],
      known: true,
    });
    expect(allergensOf({ name: 'Mix', lists: ['maize, egg powder; may contain traces of milk'] })).toEqual({
      holds: ['egg'],
      traces: ['milk'],
      known: true,
    });
    expect(allergensOf({ name: 'Mengsel', lists: ['gierst, pinda. Kan sporen van soja bevatten'] })).toEqual({
      holds: ['peanut'],
      traces: ['soya'],
      known: true,
    });
  });

  it('is not known of a food of the keeper’s own without a list, and of a made one of the tables', () => {
    expect(allergensOf({ name: 'My pellet' })).toEqual({ holds: [], traces: [], known: false });
    expect(allergensOf({ name: 'Walnuts' })).toEqual({ holds: ['nuts'], traces: [], known: false });
    expect(allergensOf({ name: 'Pellet', lists: [' '] }).known).toBe(false);
    expect(allergensOf({ ref: 'sr28:18000', name: 'Cookies, brownies' }).known).toBe(false);
  });
});

describe('hands', () => {
  it('are washed after insects and egg, by whatever name', () => {
    expect(washAfter({ name: 'Getrocknete Mehlwürmer' })).toBe('insects');
    expect(washAfter({ name: 'Volleipulver' })).toBe('egg');
    expect(washAfter({ ref: 'pub:gammarus-dried', name: 'Shrimps' })).toBe('insects');
    expect(washAfter({ name: 'Millet' })).toBeUndefined();
  });
});
