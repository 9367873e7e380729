import { expect, it } from 'vitest';
import { lotName } from './lot-name.ts';

it('tells lots of one food apart', () => {
  const day = '2026-03-10';
  expect(lotName('Oats', day, [])).toBe('Oats');
  expect(lotName('Oats', day, ['Oats'])).toBe('Oats, 10 March 2026');
  expect(lotName('Oats', day, ['Oats', 'Oats, 10 March 2026'])).toBe('Oats, 10 March 2026 (2)');
});
