import { readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { matchName, type NameMatch } from './best-match.ts';
import { decodeReference } from './reference.ts';
import { createFoodSearch } from './search.ts';

let match: (name: string) => NameMatch;
beforeAll(() => {
  const search = createFoodSearch(
    decodeReference(readFileSync(new URL('./data/reference.bin', import.meta.url))),
  );
  match = (name) => matchName(search, name);
});
const best = (name: string) => match(name).foods[0]?.name;

it.each([
  ['oats', 'Oats'],
  ['Haferflocken', 'Rolled oats'],
  ['parsely', 'Parsley, dried'],
  ['peterselie', 'Parsley, dried'],
  ['banana', 'Banana, dried'],
  ['peas', 'Split peas, raw dry'],
  ['mung bean', 'Mung beans, raw dry'],
  ['egg', 'Egg, dried'],
  ['red lentils', 'Red lentils, raw dry'],
])('%s is taken for %s, dry where there is a dry form', (name, food) => {
  expect(best(name)).toBe(food);
  expect(match(name).sure).toBe(true);
});

it('gives the fresh food to who asks for it, and where there is no dried one', () => {
  expect(best('fresh parsley')).toBe('Parsley, fresh');
  expect(best('frische Petersilie')).toBe('Parsley, fresh');
  expect(best('broccoli')).toBe('Broccoli, fresh');
});

it('offers three at most, each once', () => {
  for (const name of ['oats', 'parsley', 'beans']) {
    const refs = match(name).foods.map((f) => f.ref);
    expect(refs.length).toBeLessThanOrEqual(3);
    expect(new Set(refs).size).toBe(refs.length);
  }
});

it('is not sure of what the tables do not have', () => {
  for (const name of ['camomile', 'buckwheat zzqqxx', 'zzqqxx', 'wheat flakes']) {
    expect(match(name).sure, name).toBe(false);
  }
  expect(match('wheat flakes').note).toContain('no wheat flakes');
});
