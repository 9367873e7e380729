import { expect, it } from 'vitest';
import { barAdvice } from './bar-advice.ts';
import { barWords, sayBarred } from './barred.ts';

it('keeps the reason and the note, and advises by the reason', () => {
  expect(barWords('infested', ' moths ')).toBe('infested: moths');
  expect(barWords('recalled', '')).toBe('recalled');
  expect(barAdvice('spoiled: green')?.words).toMatch(/Throw all of it away/);
  expect(barAdvice('smells odd')).toBeUndefined();
  expect(sayBarred('infested: moths')).toBe('insects in it: moths');
  expect(sayBarred('spoiled')).toBe('spoiled or mouldy');
  expect(sayBarred('smells odd')).toBe('smells odd');
});
