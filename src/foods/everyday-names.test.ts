import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../words/manner.ts';
import keeperFoods from './data/keeper-foods.json' with { type: 'json' };
import { everydayNames, everydayRefs } from './everyday-names.ts';
import { decodeReference } from './reference.ts';

const reference = decodeReference(readFileSync(new URL('./data/reference.bin', import.meta.url)));

it('every name is of a food that the tables have', () => {
  expect(everydayRefs().length).toBeGreaterThan(200);
  expect(everydayRefs().filter((ref) => !reference.get(ref))).toEqual([]);
});

it('every food that keepers use has names, the English one being its plain name', () => {
  const shown = reference.plainFoods().map((food) => [food.name, everydayNames(food.ref, 'en')[0]]);
  expect(shown.filter(([plain, name]) => plain !== name)).toEqual([]);
});

it('a food that keepers rarely use has none', () => {
  expect(everydayNames('sr28:07020', 'de')).toEqual([]);
});

describe.each(LANGUAGES)('in %s', (language) => {
  const named = everydayRefs().map((ref) => ({ ref, names: everydayNames(ref, language) }));

  it('every food has a name to show, written without blanks about it', () => {
    expect(
      named.filter(({ names }) => names.length === 0 || names.some((n) => n.trim() !== n || !n)),
    ).toEqual([]);
    expect(named.filter(({ names: [first = ''] }) => first[0] !== first[0]?.toUpperCase())).toEqual([]);
  });

  it('no name is given to two foods, nor twice to one', () => {
    const owner = new Map<string, string>();
    const twice = named.flatMap(({ ref, names }) =>
      names.flatMap((name) => {
        // As a search sees them: whatever their case, "ß" as "ss".
        const key = name.toLowerCase().replaceAll('ß', 'ss');
        const had = owner.get(key);
        owner.set(key, ref);
        return had === undefined ? [] : [`${name}: ${had} and ${ref}`];
      }),
    );
    expect(twice).toEqual([]);
  });

  it('the name shown for fresh fruit, vegetables and herbs says that they are fresh', () => {
    const fresh = { en: /fresh/i, de: /frisch/i, nl: /\bverse?\b/i }[language];
    const grown = keeperFoods.filter((f) => f.form === 'fresh' && /vegetable|herb|fruit/.test(f.group));
    expect(grown.length).toBeGreaterThan(50);
    const shown = grown.map((food) => everydayNames(food.ref, language)[0] ?? '');
    expect(shown.filter((name) => !fresh.test(name))).toEqual([]);
  });
});

it.each([
  ['en', 'meal worm', 'pub:mealworm-dried'],
  ['en', 'hazel nut', 'sr28:12120'],
  ['en', 'carrot', 'sr28:11683'],
  ['de', 'Haferflocken', 'sr28:08120'],
  ['de', 'Möhren', 'sr28:11683'],
  ['nl', 'havervlokken', 'sr28:08120'],
  ['nl', 'maïs', 'sr28:20014'],
] as const)('in %s, "%s" is %s', (language, name, ref) => {
  const called = everydayRefs().filter((r) =>
    everydayNames(r, language).some((n) => n.toLowerCase() === name.toLowerCase()),
  );
  expect(called).toEqual([ref]);
});
