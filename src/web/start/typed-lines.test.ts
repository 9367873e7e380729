import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTyped, wantedOf } from './typed-lines.ts';

describe('a line', () => {
  it.each([
    ['oats', { name: 'oats' }],
    ['oats, 5 %', { name: 'oats', share: 5 }],
    ['5% oats', { name: 'oats', share: 5 }],
    ['5 % rolled oats', { name: 'rolled oats', share: 5 }],
    ['oats 2,5 %', { name: 'oats', share: 2.5 }],
    ['oats: 2.5%', { name: 'oats', share: 2.5 }],
    ['oats (5 %)', { name: 'oats', share: 5 }],
    ['- oats 5 percent', { name: 'oats', share: 5 }],
    ['Haferflocken 5 Prozent', { name: 'Haferflocken', share: 5 }],
    ['1. oats', { name: 'oats' }],
    ['• carrot, dried', { name: 'carrot, dried' }],
    ['carrot, dried, 3 %', { name: 'carrot, dried', share: 3 }],
    ['oats 15 g', { name: 'oats', grams: 15 }],
    ['15g oats', { name: 'oats', grams: 15 }],
    ['oats\t15 g', { name: 'oats', grams: 15 }],
    ['oats\t5 %\t15 g', { name: 'oats', share: 5 }],
    ['oats 0.5 kg', { name: 'oats', grams: 500 }],
    ['15 Gramm Hafer', { name: 'Hafer', grams: 15 }],
    ['15 gram haver', { name: 'haver', grams: 15 }],
    ['green gram 5 %', { name: 'green gram', share: 5 }],
    ['golden grass', { name: 'golden grass' }],
  ])('%s', (line, food) => {
    expect(readTyped(line)).toEqual({ foods: [food], left: [] });
  });

  it.each([
    ['oats 5', 'unitless'],
    ['5 oats', 'unitless'],
    ['5 %', 'nameless'],
    ['oats 5-10 %', 'range'],
    ['oats 120 %', 'over'],
    ['oats 0 %', 'nothing'],
    ['x'.repeat(201), 'long'],
  ])('%s stays in the box', (line, fault) => {
    expect(readTyped(line)).toEqual({ foods: [], left: [{ text: line, fault }] });
  });
});

it('reads many lines, blank ones left out, and several on one', () => {
  expect(readTyped('oats\n\n millet 5 %\r\npeas; lentils').foods.map((f) => f.name)).toEqual([
    'oats',
    'millet',
    'peas',
    'lentils',
  ]);
  expect(readTyped('oats 5 %, millet 10 %, carrot 1,5 %').foods).toEqual([
    { name: 'oats', share: 5 },
    { name: 'millet', share: 10 },
    { name: 'carrot', share: 1.5 },
  ]);
});

it('takes numbers that come to a hundred for percent, and asks of others', () => {
  expect(readTyped('oats 60\nmillet 40').foods).toEqual([
    { name: 'oats', share: 60 },
    { name: 'millet', share: 40 },
  ]);
  expect(readTyped('oats 60\nmillet 50').left.map((l) => l.fault)).toEqual(['unitless', 'unitless']);
  expect(readTyped('oats 60\nmillet').left).toEqual([{ text: 'oats 60', fault: 'unitless' }]);
});

it('takes weights of every food for a recipe, and others for parts of the batch', () => {
  expect(
    wantedOf(
      [
        { name: 'a', grams: 30 },
        { name: 'b', grams: 10 },
      ],
      300,
    ),
  ).toEqual([75, 25]);
  expect(wantedOf([{ name: 'a', grams: 30 }, { name: 'b' }, { name: 'c', share: 4 }], 300)).toEqual([
    10,
    undefined,
    4,
  ]);
});

it('loses no line: each is a food or stays', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ maxLength: 30 }), { maxLength: 12 }), (lines) => {
      const text = lines.map((l) => l.replace(/[;,+\t\r\n]/g, ' ')).join('\n');
      const { foods, left } = readTyped(text);
      expect(foods.length + left.length).toBe(text.split('\n').filter((l) => l.trim() !== '').length);
    }),
  );
});
