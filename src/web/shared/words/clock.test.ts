import { expect, it } from 'vitest';
import { clockOf, sayTime } from './clock.ts';

const at = (time: string) => Date.parse(`2026-03-14T${time}:00.000Z`);

it.each([
  [1, '1 min'],
  [60_000, '1 min'],
  [60_001, '2 min'],
  [3_600_000, '1 h'],
  [4_320_000, '1 h 12 min'],
])('%d ms are %s', (ms, words) => expect(sayTime(ms)).toBe(words));

it('names the day where it is another', () => {
  expect(clockOf('2026-03-16T10:00:00Z', at('10:00'))).toMatch(/ on 16 March$/);
});
