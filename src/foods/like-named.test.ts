import { expect, test } from 'vitest';
import { likeNamed } from './like-named.ts';
import type { ReferenceFood } from './reference.ts';

const food = (name: string, group: ReferenceFood['group'], plain = true): ReferenceFood => ({
  ref: `x:${name}`,
  name,
  group,
  plain,
  also: name === 'Oats' ? ['Porridge oats'] : [],
  tableName: name,
  suggestible: false,
  tableGroup: '20',
  composition: {},
  sd: {},
  source: 'test',
});
const FOUND = [
  food('Oat bran muffin', 'seed', false),
  food('Oats', 'seed'),
  food('Split peas, raw dry', 'legume'),
  food('Carrot', 'vegetable'),
  food('Carrot, dried', 'vegetable'),
];
const like = (name: string, group?: ReferenceFood['group']) => likeNamed(name, group, FOUND)?.name;

test('a food is held beside the plain food that its name says, of its own group', () => {
  expect(like('Rolled oats, own label', 'seed')).toBe('Oats');
  expect(like('Porridge oats')).toBe('Oats');
  expect(like('split pea flakes')).toBe('Split peas, raw dry');
  expect(like('Oats', 'vegetable')).toBeUndefined();
  expect(like('Split grain')).toBeUndefined();
  expect(like('')).toBeUndefined();
});

test('names in the other languages count too', () => {
  expect(like('Hafer, Hausmarke', 'seed')).toBe('Oats');
  expect(like('avoine entière')).toBe('Oats');
  expect(like('Möhren')).toBeUndefined();
});

test('the fuller name wins: dried is not fresh', () => {
  expect(like('Dried carrots')).toBe('Carrot, dried');
  expect(like('Carrots')).toBe('Carrot');
});
