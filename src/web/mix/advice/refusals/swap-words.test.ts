/** What goes wrong and what may take a food's place, in words that promise nothing false. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoHousehold } from '../../../../household/demo.ts';
import { breachWords, shareWords } from './swap-words.ts';

const house = demoHousehold();
const demo = house.mixes[0]!;

test('what goes wrong is said in a few words', () => {
  const problem = {
    ...demo.problem,
    rules: [
      { nutrient: 'FAT', max: 7 },
      { ratio: ['CA', 'P'], min: 1 },
    ] as const,
  };
  const fat = { pointer: '/rules/0/max', side: 'max' } as const;
  const ratio = { pointer: '/rules/1/min', side: 'min' } as const;
  expect(breachWords(problem, [fat])).toBe('fat too high');
  expect(breachWords(problem, [ratio, fat])).toBe('calcium to phosphorus too low and 1 more');
  expect(breachWords(problem, [])).toBe('');
});

describe('the words for a share', () => {
  test('name the span', () => {
    expect(shareWords({ share: 5, low: 3.21, high: 7.59 })).toBe('5 % (3.3 to 7.5 %)');
    expect(shareWords({ share: 5, low: 0, high: 7 })).toBe('5 % (up to 7 %)');
    expect(shareWords({ share: 5.123, low: 5.11, high: 5.16 })).toBe('5.12 % (hardly any other share)');
  });

  test('every share they name lies in the span', () => {
    const span = fc
      .tuple(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0.11, max: 40, noNaN: true }))
      .map(([low, wide]) => ({ low, high: low + wide }));
    fc.assert(
      fc.property(span, fc.double({ min: 0, max: 1, noNaN: true }), ({ low, high }, at) => {
        const words = shareWords({ share: low + at * (high - low), low, high });
        for (const [number] of words.matchAll(/\d+(\.\d+)?/g)) {
          // "hardly any other" names the share itself, to two decimals.
          const slack = words.includes('hardly') ? 0.006 : 1e-6;
          expect(Number(number)).toBeGreaterThanOrEqual(low - slack);
          expect(Number(number)).toBeLessThanOrEqual(high + slack);
        }
      }),
    );
  });
});
