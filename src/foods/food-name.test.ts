import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { german } from '../words/de/index.ts';
import { LANGUAGES, PLAIN_MANNER } from '../words/manner.ts';
import { dutch } from '../words/nl/index.ts';
import { speak } from '../words/words.ts';
import { matchName } from './best-match.ts';
import { cautionsFor } from './cautions/find.ts';
import { everydayNames, everydayRefs } from './everyday-names.ts';
import { foodName, spokenFood, tableNote } from './food-name.ts';
import { likeNamed } from './like-named.ts';
import { decodeReference } from './reference.ts';
import { createFoodSearch } from './search.ts';

const reference = decodeReference(readFileSync(new URL('./data/reference.bin', import.meta.url)));
const inGerman = german({ ...PLAIN_MANNER, language: 'de' });
const inDutch = dutch({ ...PLAIN_MANNER, language: 'nl' });
const search = Object.fromEntries(LANGUAGES.map((l) => [l, createFoodSearch(reference, l)] as const));
const first = (language: string, query: string) => search[language]?.find(query, 1)[0]?.ref;
afterEach(() => speak(() => undefined));

describe('a food is called', () => {
  const oats = reference.get('sr28:08120')!;
  it('as keepers of the spoken language call it', () => {
    expect(foodName(oats)).toBe('Rolled oats');
    speak(() => inGerman);
    expect(foodName(oats)).toBe('Haferflocken');
    speak(() => inDutch);
    expect(foodName(oats)).toBe('Havervlokken');
  });

  it('as the tables have it where keepers have no name for it', () => {
    speak(() => inGerman);
    const rare = reference.get('sr28:07020')!;
    expect(foodName(rare)).toBe(rare.name);
  });

  it('otherwise with nothing else changed, and the name of the table is told beside', () => {
    speak(() => inGerman);
    expect({ ...spokenFood(oats), name: oats.name }).toEqual({ ...oats });
    expect(tableNote(spokenFood(oats))).toBe(oats.tableName);
  });

  it('so that the same cautions are found under each of its names', () => {
    const ids = (food: Parameters<typeof cautionsFor>[0]) => cautionsFor(food).map((hit) => hit.caution.id);
    const wrong = everydayRefs().flatMap((ref) => {
      const food = reference.get(ref)!;
      return LANGUAGES.flatMap((language) => {
        const name = everydayNames(ref, language)[0] ?? food.name;
        const [here, there] = [ids({ ...food, name }), ids({ ...food })];
        return here.join() === there.join() ? [] : [`${ref} ${name}: ${here} not ${there}`];
      });
    });
    expect(wrong).toEqual([]);
  });

  it('so that an own food of that name is still set beside it', () => {
    speak(() => inGerman);
    const found = search.de!.find('Haferflocken', 8).map(spokenFood);
    expect(likeNamed('Haferflocken', 'seed', found)?.ref).toBe('sr28:08120');
    expect(likeNamed("flocons d'avoine", 'seed', found)?.ref).toBe('sr28:08120');
  });
});

describe('a food is found', () => {
  it.each(LANGUAGES)('first by each of its names in %s where that is spoken', (language) => {
    const lost = everydayRefs().flatMap((ref) =>
      everydayNames(ref, language)
        .filter((name) => first(language, name) !== ref)
        .map((name) => `${name}: ${first(language, name)} not ${ref}`),
    );
    expect(lost).toEqual([]);
  });

  it.each(LANGUAGES)(
    'among the first three by each of its names in the other languages, where %s is spoken',
    (language) => {
      const lost = everydayRefs().flatMap((ref) =>
        LANGUAGES.flatMap((l) => everydayNames(ref, l)).filter(
          (name) => !search[language]?.find(name, 3).some((food) => food.ref === ref),
        ),
      );
      expect(lost).toEqual([]);
    },
  );

  it.each([
    ['de', 'Haferflocke', 'sr28:08120'],
    ['de', 'haferflokken', 'sr28:08120'],
    ['de', 'Hafer Flocken', 'sr28:08120'],
    ['de', 'Moehren', 'sr28:11683'],
    ['de', 'getrocknete Möhre', 'sr28:11683'],
    ['de', 'Möhre frisch', 'sr28:11124'],
    ['de', 'Sonnenblumen-Kerne', 'sr28:12036'],
    ['de', 'Sonenblumenkerne', 'sr28:12036'],
    ['de', 'geschälte Sonnenblumenkern', 'sr28:12036'],
    ['de', 'Haselnüße', 'sr28:12120'],
    ['de', 'Bio Haferflocken', 'sr28:08120'],
    ['nl', 'haver vlokken', 'sr28:08120'],
    ['nl', 'gedroogde wortel', 'sr28:11683'],
    ['nl', 'wortels, gedroogd', 'sr28:11683'],
    ['nl', 'zonnebloempiten', 'sr28:12036'],
    ['nl', 'hazelnoot', 'sr28:12120'],
    ['en', 'havervlokken', 'sr28:08120'],
    ['en', 'gedroogde wortel', 'sr28:11683'],
    ['en', 'dried carrots', 'sr28:11683'],
    ['nl', 'Sonnenblumenkerne', 'sr28:12036'],
    ['de', 'dried mealworms', 'pub:mealworm-dried'],
  ])('in %s by "%s", and taken unasked', (language, typed, ref) => {
    expect(first(language, typed)).toBe(ref);
    expect(matchName(search[language]!, typed).sure).toBe(true);
  });

  it.each(LANGUAGES)('in %s with two letters of its name in each other’s place', (language) => {
    const swapped = (name: string) => {
      const at = Math.floor(name.length / 2);
      return `${name.slice(0, at)}${name.charAt(at + 1)}${name.charAt(at)}${name.slice(at + 2)}`;
    };
    const shown = everydayRefs().map((ref) => ({ ref, name: everydayNames(ref, language)[0] ?? '' }));
    // A blank in the wrong place makes other words.
    const slipped = shown.filter(
      ({ name }) => name.length > 7 && !/\s/.test(name.slice(name.length / 2 - 1, name.length / 2 + 2)),
    );
    expect(slipped.length).toBeGreaterThan(100);
    const lost = slipped.filter(
      ({ ref, name }) => !search[language]?.find(swapped(name), 3).some((food) => food.ref === ref),
    );
    expect(lost.map(({ name }) => swapped(name))).toEqual([]);
  });
});
