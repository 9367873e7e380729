/** Limits of a target in words: before they give way, and after. */
import { describe, expect, test } from 'vitest';
import { demoHousehold } from '../../../household/demo.ts';
import { withChanges } from '../../../household/reckon/mix/own-limits.ts';
import { ownLimitWords, stepLines, whoseWords } from './limit-words.ts';

const { problem } = demoHousehold().mixes[0]!;
const fat = { nutrient: 'FAT', min: 4, max: 7 } as const;
const on = '2026-03-14';

describe('the step before a limit gives way', () => {
  test('says what changes, and where each limit comes from', () => {
    const changes = [
      { pointer: '/rules/1/max', from: 7, to: 7.5 },
      { pointer: '/rules/3/max', from: 50, to: 60 },
    ];
    expect(stepLines(problem, { changes }, String)).toEqual([
      {
        words: 'Fat of the whole ration at most 7.5 % instead of 7 %.',
        source: 'common practice, no source',
      },
      // What the keeper asked for needs no source.
      { words: 'Share of Seeds and grains of the mix at most 60 % instead of 50 %.', source: undefined },
    ]);
    expect(stepLines(problem, { leftOut: [0, 99] }, String)).toEqual([
      { words: 'Crude protein, 17 to 19 %: left out.', source: 'common practice, no source' },
    ]);
  });

  test('says what the target has where the keeper changed it before', () => {
    const mix = withChanges(demoHousehold().mixes[0]!, [{ pointer: '/rules/1/max', from: 7, to: 7.5 }], on);
    const changes = [{ pointer: '/rules/1/max', from: 7.5, to: 8 }];
    expect(stepLines(mix.problem, { changes }, String)).toEqual([
      {
        words: 'Fat of the whole ration at most 8 % instead of 7.5 %.',
        source: 'common practice, no source; the needs say 4 to 7 %',
      },
    ]);
  });

  test('names the animals and their target', () => {
    expect(whoseWords(['Bramble'], 'Adult hamster')).toBe('Bramble’s needs “Adult hamster”');
    expect(whoseWords(['Bramble', 'Nut'], 'Adult hamster')).toBe('Bramble and Nut’s needs “Adult hamster”');
    expect(whoseWords([], 'Adult hamster')).toBe('the needs “Adult hamster”');
    expect(whoseWords([], undefined)).toBe('the needs');
  });
});

test('a changed limit says what it was, what it is and since when', () => {
  expect(ownLimitWords({ was: fat, now: { ...fat, max: 7.5 }, on })).toBe(
    'Fat limit raised from 7 to 7.5 % by you on 14 March 2026',
  );
  expect(ownLimitWords({ was: fat, now: { ...fat, min: 3 }, on })).toBe(
    'Fat limit lowered from 4 to 3 % by you on 14 March 2026',
  );
  expect(ownLimitWords({ was: fat, now: { ...fat, min: 3, max: 8 }, on })).toBe(
    'Fat limit lowered from 4 to 3 % and raised from 7 to 8 % by you on 14 March 2026',
  );
  expect(ownLimitWords({ was: fat, on })).toBe('Fat, 4 to 7 %: left out by you on 14 March 2026');
  const ratio = { ratio: ['CA', 'P'], min: 1 } as const;
  expect(ownLimitWords({ was: ratio, now: { ...ratio, min: 0.9 }, on })).toBe(
    'Calcium to phosphorus limit lowered from 1 to 0.9 by you on 14 March 2026',
  );
  const dry = { nutrient: 'CA', min: 500, basis: 'DM' } as const;
  expect(ownLimitWords({ was: dry, on })).toBe(
    'Calcium, at least 500 mg per 100 g of dry matter: left out by you on 14 March 2026',
  );
});
