import { expect, test } from 'vitest';
import type { OwnFood } from '../../model.ts';
import { soleSource, sourceWith } from './label-source.ts';

const FOOD: OwnFood = {
  id: 'f',
  name: 'Oat flakes',
  kind: 'mix',
  composition: { PROCNT: 13, CA: 50 },
  sd: { PROCNT: 0.5, CA: 9 },
  source: 'label',
  invented: false,
};

test('a food from before there were sources is edited as one typed source, without what it borrowed', () => {
  expect(soleSource(FOOD)).toMatchObject({
    id: 'typed',
    name: 'label',
    composition: FOOD.composition,
    sd: FOOD.sd,
  });
  const lent = { from: 'sr28:20038', name: 'Oats', value: 50, sd: 9, source: 'test' };
  expect(soleSource({ ...FOOD, evidence: { borrowed: { CA: lent } } })?.composition).toEqual({ PROCNT: 13 });
  expect(soleSource({ ...FOOD, composition: {} })).toBeUndefined();
});

test('of several sources none is edited in the form', () => {
  const source = { id: 'a', name: 'a', basis: 'as fed', composition: { FAT: 4 }, sd: {} } as const;
  expect(soleSource({ ...FOOD, evidence: { sources: [source] } })).toBe(source);
  expect(soleSource({ ...FOOD, evidence: { sources: [source, { ...source, id: 'b' }] } })).toBeUndefined();
});

test('what is known of figures stays with them only while they are the same', () => {
  const before = {
    id: 'a',
    name: 'report',
    ref: 'sr28:20038',
    date: '2024-05-01',
    n: 6,
    basis: 'as fed',
    composition: { FAT: 4 },
    sd: {},
  } as const;
  const about = { id: 'new', name: ' report ', today: '2026-03-14', before };
  const same = { figures: { composition: { FAT: 4 }, sd: { FAT: 1 } }, basis: 'as fed' } as const;
  expect(sourceWith(same, about)).toEqual({ ...before, sd: { FAT: 1 } });
  const other = {
    figures: { composition: { FAT: 5 }, sd: {} },
    basis: 'as fed',
    printed: 'Fat 5 %',
  } as const;
  expect(sourceWith(other, about)).toEqual({
    id: 'a',
    name: 'report',
    date: '2026-03-14',
    basis: 'as fed',
    composition: { FAT: 5 },
    sd: {},
    printed: 'Fat 5 %',
  });
  expect(sourceWith(other, { ...about, name: ' ', before: undefined }).name).toBe('label');
});
