/** The three states of a mix, what is said of each, and the figure that would settle the middle one. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { loadReference } from '../../household/reference-file.ts';
import { wordsIn } from '../../words/languages.ts';
import { LANGUAGES, PLAIN_MANNER } from '../../words/manner.ts';
import { speak } from '../../words/words.ts';
import { Formulation } from '../formulation.ts';
import type { Beside, Ingredient, Problem, Rule } from '../problem/problem.ts';
import { loadHighs } from '../solve/highs.ts';
import { isFit, verdictOf } from './verdict.ts';

const reference = loadReference();
const highs = await loadHighs();

const FAT: Rule = { nutrient: 'FAT', min: 4, max: 7, on: 'ration' };

/** A mix of one food with a pellet beside it, half of the ration each. */
function standing(food: Partial<Ingredient>, pellet: Partial<Beside>, about: Partial<Problem> = {}) {
  const problem = problemOf({
    foods: [{ id: 'oats', name: 'Oats', ...food }],
    beside: [{ id: 'pellet', name: 'Bunny pellet', share_of_ration: 50, ...pellet }],
    rules: [FAT],
    ...about,
  });
  const formulation = new Formulation(problem, { reference, highs });
  try {
    return formulation.evaluate({ oats: 100 });
  } finally {
    formulation.dispose();
  }
}

const known = { composition: { FAT: 6 }, sd: { FAT: 0.2 } };
const atLeast = (fat: number) => ({ composition: { PROCNT: 17 }, low: { FAT: fat } });

describe('a label’s "at least"', () => {
  test('is not the value against a most: the pellet, what it says and what settles it are named', () => {
    // 0.5 x 10 + 0.5 x 4 is exactly 7.00.
    const verdict = verdictOf(standing({ composition: { FAT: 10 }, sd: { FAT: 0.1 } }, atLeast(4)));
    expect(verdict).toMatchObject({
      state: 'if',
      head: 'In range if what is not known turns out well',
      because: [{ kind: 'unproven', pointer: '/rules/0', side: 'max', bound: 7 }, { kind: 'chance' }],
      settle: { food: 'pellet', beside: true, nutrient: 'FAT', end: 'most', guaranteed: 4 },
    });
    expect(verdict.because[0]!.sentence).toMatch(/^Fat is not proven: Bunny pellet says at least 4 %/);
    expect(verdict.settle!.sentence).toMatch(/<food>Write the most fat that Bunny pellet holds<\/food>/);
  });

  test('tells how much its most may be to settle the rule, and that settles it', () => {
    const { settle } = verdictOf(standing(known, atLeast(4)));
    // 0.5 x 6 + 0.5 x 8 is 7.
    expect(settle?.enough).toBeCloseTo(8, 4);
    expect(settle?.sentence).toMatch(/with (7\.99|8) % or less, this is settled\.$/);
    const settled = verdictOf(standing(known, { ...atLeast(4), high: { FAT: 8 } }));
    expect(settled.because.filter(({ kind }) => kind === 'unproven')).toEqual([]);
    const not = verdictOf(standing(known, { ...atLeast(4), high: { FAT: 8.1 } }));
    expect(not.state).toBe('if');
  });

  test('is enough against a least', () => {
    expect(
      verdictOf(standing(known, atLeast(4), { rules: [{ nutrient: 'FAT', min: 4, on: 'ration' }] })).state,
    ).toBe('sure');
  });

  test('never lets the spread of an estimate speak for it', () => {
    // Dietary fibre 20 gives an estimate of crude fibre, whose middle a guarantee of 10 passes.
    const pellet = { composition: { FIBTG: 20 }, low: { FIBC: 10 } };
    const oats = { composition: { FIBC: 10 }, sd: { FIBC: 0.1 } };
    const rules: Rule[] = [{ nutrient: 'FIBC', max: 11, on: 'ration' }];
    const at = standing(oats, pellet, { rules, variation: 'published' });
    expect(verdictOf(at).because.map(({ kind }) => kind)).toContain('unproven');
    expect(verdictOf(at).settle).toMatchObject({ food: 'pellet', nutrient: 'FIBC', guaranteed: 10 });
  });

  test('refutes a borrowed figure that lies under it', () => {
    const lent = {
      composition: { FAT: 2 },
      sd: { FAT: 0.2 },
      borrowed: { FAT: 'Rolled oats' },
      low: { FAT: 5 },
    };
    const at = standing({ composition: { FAT: 8 }, sd: { FAT: 0.1 } }, lent);
    expect(at.nutrients.FAT!.high).toBeGreaterThan(20);
    expect(verdictOf(at).because.map(({ kind }) => kind)).toContain('unproven');
  });
});

test('surely in range says of what, and gives no reason against it', () => {
  const verdict = verdictOf(standing(known, { composition: { FAT: 5 }, sd: { FAT: 0.1 } }));
  expect(verdict).toEqual({
    state: 'sure',
    head: 'Surely in range',
    rest: 'Fat of the whole ration.',
    sentence: 'Surely in range. Fat of the whole ration.',
    because: [],
  });
});

test('out of range tells the first broken rules and how many more there are', () => {
  const rules: Rule[] = (['FAT', 'PROCNT', 'ASH', 'WATER', 'FIBC'] as const).map((nutrient) => ({
    nutrient,
    max: 1,
  }));
  const composition = { FAT: 5, PROCNT: 12, ASH: 3, WATER: 10, FIBC: 9 };
  const at = standing({ composition }, { composition: {} }, { rules });
  const verdict = verdictOf(at);
  expect(verdict.state).toBe('out');
  expect(isFit(at)).toBe(false);
  expect(verdict.because).toHaveLength(5);
  expect(verdict.rest).toMatch(/^Fat of the mix is 5 %.* 2 more rules are broken\.$/);
  expect(verdict.settle).toBeUndefined();
});

test('what would settle a rule does settle it, whichever food it is of', () => {
  const amount = fc.double({ min: 0, max: 12, noNaN: true });
  fc.assert(
    fc.property(amount, fc.double({ min: 0.1, max: 8, noNaN: true }), (fat, low) => {
      const { settle } = verdictOf(
        standing({ composition: { FAT: fat } }, atLeast(low), {
          rules: [{ nutrient: 'FAT', max: 7, on: 'ration' }],
        }),
      );
      if (settle?.enough === undefined) return;
      expect(settle.enough).toBeGreaterThanOrEqual(low);
      const told = { composition: { PROCNT: 17 }, low: { FAT: low }, high: { FAT: settle.enough } };
      const again = verdictOf(
        standing({ composition: { FAT: fat } }, told, { rules: [{ nutrient: 'FAT', max: 7, on: 'ration' }] }),
      );
      expect(again.because.filter(({ kind }) => kind === 'unproven')).toEqual([]);
    }),
    { numRuns: draws(300, 60) },
  );
});

test.each(LANGUAGES)('in %s all is said in that language, and the figures never change', async (language) => {
  const english = verdictOf(standing(known, atLeast(4)));
  const spoken = await wordsIn({ ...PLAIN_MANNER, language });
  speak(() => spoken);
  try {
    const verdict = verdictOf(standing(known, atLeast(4)));
    expect(verdict.state).toBe('if');
    expect(verdict.settle?.enough).toBe(english.settle?.enough);
    expect(verdict.head).toBe(spoken.verdict.head.ifKnown);
    expect(verdict.settle?.sentence).toMatch(/<food>.+<\/food>/);
  } finally {
    speak(() => undefined);
  }
});
