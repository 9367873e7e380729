/** What is said of a target from memory. */
import { expect, test } from 'vitest';
import { profile } from '../../../targets/profiles.ts';
import { targetOption, unconfirmedWords } from './target-words.ts';

test('a target from memory says so in the list, and why no mix follows it', () => {
  const nrc = profile('hamster-nrc')!;
  expect(targetOption(nrc)).toEqual(['hamster-nrc', 'Hamster, NRC needs (from memory, not confirmed)']);
  expect(unconfirmedWords(nrc)).toMatch(
    /^\d\d figures of “Hamster, NRC needs” are from memory\. A mix can follow it/,
  );
  const one = { ...nrc, bounds: nrc.bounds.slice(0, 1) };
  expect(unconfirmedWords(one)).toMatch(/^One figure of .* is from memory.* confirmed it under Needs\.$/);
  expect(targetOption(profile('mouse-nrc')!)).toEqual(['mouse-nrc', 'Mouse, NRC needs']);
  expect(unconfirmedWords(profile('mouse-nrc')!)).toBeUndefined();
});
