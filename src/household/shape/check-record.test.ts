/** What is accepted, and what is refused with the field and words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { RECORDS } from '../../../test/household/arbitraries.ts';
import { demo, version } from '../../../test/household/demo-version.ts';
import type { Kind } from '../model.ts';
import { checkRecord } from './check-record.ts';

const KINDS = Object.keys(RECORDS) as Kind[];
const [mix] = demo.mixes;
const [food] = demo.foods;
const [animal] = demo.animals;
if (!mix || !food || !animal) throw new Error('the demo household has none');

const lot = {
  id: 'l',
  food: 'millet',
  name: 'Millet, March',
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-14',
  frozen: false,
  cold: [],
};
const run = {
  id: 'r',
  lot: 'l',
  device: 'oven',
  celsius: 45,
  startedAt: '2026-03-14T09:30:00Z',
  trays: 2,
  gramsBefore: 400,
  checks: [],
};
const pour = { food: 'millet', lots: [], target: 15, grams: 15, at: '2026-03-14T10:00:00Z' };
const batch = {
  id: 'b',
  name: 'B',
  problem: mix.problem,
  shares: mix.shares,
  order: ['millet'],
  grams: 300,
  pours: [pour],
  animalIds: [animal.id],
  startedAt: '2026-03-14T09:30:00Z',
};
const profile = {
  id: 'p',
  name: 'P',
  species: 's',
  lifeStage: 'adult',
  fibre: 'none',
  about: '',
  bounds: [{ nutrient: 'FAT', min: 4, max: 7, basis: 'as fed', source: 's' }],
};

it('takes the demo household, and plain records of every kind', () => {
  for (const kind of KINDS) for (const body of demo[kind]) expect(checkRecord(kind, body)).toBeUndefined();
  expect(checkRecord('versions', version)).toBeUndefined();
  expect(checkRecord('lots', lot)).toBeUndefined();
  expect(checkRecord('dryingRuns', run)).toBeUndefined();
  expect(checkRecord('batches', batch)).toBeUndefined();
  expect(checkRecord('profiles', profile)).toBeUndefined();
});

describe.each(KINDS)('%s', (kind) => {
  it('are drawn as they are accepted', () => {
    const record = RECORDS[kind]('kitchen' as never) as fc.Arbitrary<unknown>;
    fc.assert(
      fc.property(record, (body) => {
        expect(checkRecord(kind, body)).toBeUndefined();
      }),
      { numRuns: draws(1000, 60) },
    );
  });
});

const FAR = 'between 1990 and 2100';
const deep = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`);

it.each<readonly [string, Kind, object, Record<string, unknown>, string, string]>([
  ['a day long ago', 'lots', lot, { boughtOn: '0001-01-01' }, '/boughtOn', FAR],
  ['the day before the first', 'lots', lot, { boughtOn: '1989-12-31' }, '/boughtOn', FAR],
  ['a day far ahead', 'lots', lot, { bestBefore: '2101-01-01' }, '/bestBefore', FAR],
  ['no day of the calendar', 'lots', lot, { boughtOn: '2026-02-30' }, '/boughtOn', 'is "2026-02-30"'],
  ['a moment long ago', 'dryingRuns', run, { startedAt: '0001-01-01T00:00:00Z' }, '/startedAt', FAR],
  ['a moment far ahead', 'batches', batch, { startedAt: '9999-12-31T00:00:00Z' }, '/startedAt', FAR],
  ['grams of a star', 'lots', lot, { grams: 1e308 }, '/grams', 'at most 1000000'],
  ['grams of nothing', 'lots', lot, { grams: 5e-324 }, '/grams', 'at least 0.001'],
  ['no grams', 'lots', lot, { grams: 0 }, '/grams', 'above 0'],
  ['a price of nothing', 'lots', lot, { price: 5e-324 }, '/price', 'too close to 0'],
  ['a price of the world', 'lots', lot, { price: 1e12 }, '/price', 'at most 100000000'],
  ['the heat of a star', 'dryingRuns', run, { celsius: 1e6 }, '/celsius', 'at most 250'],
  ['hours of a century', 'dryingRuns', run, { hours: 1e6 }, '/hours', 'at most 1000'],
  ['a load that is not', 'dryingRuns', run, { load: { n: 3, of: 2 } }, '/load/n', 'more than there are'],
  ['a food of objects', 'lots', lot, { food: '__proto__' }, '/food', 'begins with a letter'],
  ['another', 'lots', lot, { food: 'constructor' }, '/food', 'meaning of its own'],
  ['a way out of a folder', 'lots', lot, { id: '../etc' }, '/id', 'begins with a letter'],
  ['markup for an id', 'lots', lot, { id: 'a<b' }, '/id', 'an id holds letters'],
  ['half a character in an id', 'lots', lot, { id: 'a\ud800' }, '/id', 'an id holds letters'],
  ['half a character in a name', 'lots', lot, { name: 'a\ud800' }, '/name', 'control character'],
  ['a bell in a name', 'lots', lot, { name: 'a\u0007' }, '/name', 'control character'],
  ['a name that turns figures', 'lots', lot, { name: 'a\u202e5.1' }, '/name', 'control character'],
  ['a name of nothing', 'lots', lot, { name: '\u200b' }, '/name', 'at least one letter'],
  ['too much calcium', 'foods', food, { composition: { CA: 2e5 } }, '/composition/CA', '100000 mg'],
  ['too much energy', 'foods', food, { composition: { ENERC_KCAL: 1e6 } }, '/composition/ENERC_KCAL', 'kcal'],
  [
    'a bound of nothing',
    'profiles',
    profile,
    { bounds: [{ basis: 'DM', source: '' }] },
    '/bounds/0',
    'or a ratio',
  ],
  [
    'a bound upside down',
    'profiles',
    profile,
    { bounds: [{ nutrient: 'FAT', min: 8, max: 7, basis: 'DM', source: '' }] },
    '/bounds/0/min',
    'above the most',
  ],
  ['more food than an elephant', 'animals', animal, { dailyGrams: 1e6 }, '/dailyGrams', 'at most 100000'],
  ['an animal twice', 'batches', batch, { animalIds: ['a', 'b', 'a'] }, '/animalIds/2', 'twice'],
  [
    'a pour of a truck',
    'batches',
    batch,
    { pours: [{ ...pour, grams: 1e6 }] },
    '/pours/0/grams',
    'at most 100000',
  ],
  [
    'more out of the bowl than in it',
    'batches',
    batch,
    { pours: [pour, { ...pour, grams: -15.5 }] },
    '/pours/1/grams',
    'more of this food was taken out',
  ],
  ['a share beyond all', 'mixes', mix, { shares: { millet: 1e300 } }, '/shares/millet', 'at most 1000'],
  ['a share of objects', 'mixes', mix, { shares: { toString: 5 } }, '/shares/toString', 'meaning of its own'],
  [
    'a food twice',
    'mixes',
    mix,
    { problem: { ...mix.problem, foods: [mix.problem.foods[0], mix.problem.foods[0]] } },
    '/problem/foods/1/id',
    'twice',
  ],
  ['what is nested deep', 'mixes', mix, { problem: deep }, '/problem', 'nested'],
  [
    'a record too large',
    'batches',
    batch,
    { pours: Array(1000).fill({ ...pour, lots: Array(9).fill({ lot: 'l', grams: 1 }) }) },
    '',
    '150 kB',
  ],
])('%s is refused', (_, kind, good, wrong, field, words) => {
  const fault = checkRecord(kind, { ...good, ...wrong });
  if (field === '/problem') expect(fault?.field.startsWith(field)).toBe(true);
  else expect(fault?.field).toBe(field);
  expect(fault?.message).toContain(words);
});

it('names a key that is more than a key wherever it stands', () => {
  const body: unknown = JSON.parse(
    JSON.stringify({ ...mix, shares: {} }).replace('"shares":{}', '"shares":{"__proto__":5}'),
  );
  expect(checkRecord('mixes', body)).toMatchObject({ field: '/shares/__proto__' });
});
