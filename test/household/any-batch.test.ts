/** Whatever the household accepts, what the worker is asked of its mixes and batches comes to an end, in figures or in words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import type { Household } from '../../src/household/model.ts';
import { papersOf } from '../../src/household/reckon/batch/batch-papers.ts';
import { planOf } from '../../src/household/reckon/batch/batch-plan.ts';
import { contentsForWeighing } from '../../src/household/reckon/batch/judged-problem.ts';
import { contentsOf } from '../../src/household/reckon/cupboard/contents.ts';
import { shoppingOf } from '../../src/household/reckon/shopping/shopping-answer.ts';
import { shoppingQuestion } from '../../src/household/reckon/shopping/shopping-question.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { chosenShares } from '../../src/kitchen/feeding/chosen-shares.ts';
import { dayAt } from '../../src/web/shared/today.ts';
import { standingOf } from '../../src/web/worker/weighing.ts';
import { draws } from '../draws.ts';
import { household } from './arbitraries.ts';
import { expectShown } from './expect-shown.ts';

const TODAY = '2026-11-28';
const parts = { reference: loadReference(), highs: await loadHighs() };

/** Longer than anybody waits for a household this small, on a busy machine, ms. */
const LONGEST = 60_000;

/** As the worker answers: what cannot be worked out is said in words. */
function answered(what: string, ask: () => unknown): void {
  const from = performance.now();
  let value: unknown;
  try {
    value = ask();
  } catch (error) {
    expect(error, what).toBeInstanceOf(Error);
    value = (error as Error).message;
    expect(value, what).not.toBe('');
    if (error instanceof TypeError) throw error;
  }
  expect(performance.now() - from, what).toBeLessThan(LONGEST);
  expectShown(what, value);
}

function askAll(house: Household): void {
  const kept = contentsOf(house);
  for (const mix of house.mixes) {
    const formulation = () =>
      new Formulation(
        parseProblem(JSON.parse(JSON.stringify(mix.problem)), parts.reference).problem,
        parts,
        [],
      );
    answered('solve', () => formulation().solve());
    answered('evaluate', () => formulation().evaluate(mix.shares));
    answered('plan', () => planOf(mix.problem, mix.shares, { kept, day: TODAY, parts }));
    answered('beside', () => chosenShares(mix.problem, parts));
    answered('shopping', () => {
      const size = { grams: mix.problem.batch_grams };
      const question = { size, aim: 'cost', on: TODAY, nameOf: (f: { id: string }) => f.id } as const;
      const evaluation = formulation().evaluate(mix.shares);
      return shoppingOf(shoppingQuestion(house, mix, question), { ...parts, evaluation });
    });
  }
  for (const batch of house.batches) {
    answered('standing', () =>
      standingOf(batch, { kept: contentsForWeighing(house, batch), day: TODAY, parts }),
    );
    answered('papers', () => papersOf(batch, { kept, animals: house.animals, parts, dayAt }));
  }
}

describe('a household of whatever is accepted', () => {
  it('is worked out by the worker', () => {
    fc.assert(fc.property(household, askAll), { numRuns: draws(1000, 12), endOnFailure: true });
  }, 600_000);

  it('says of a mix of nothing that there is nothing to divide by', () => {
    const problem = {
      foods: [{ id: 'millet', ref: 'sr28:20031' }],
      rules: [
        { ratio: ['CA', 'P'], min: 1, max: 2 },
        { nutrient: 'PROCNT', min: 16, basis: 'DM' },
      ],
      beside: [],
      objective: 'nearest',
      confidence: 0,
      batch_grams: 300,
      scale_step_grams: 1,
    };
    const parsed = parseProblem(problem, parts.reference).problem;
    const { verdict, breaches } = new Formulation(parsed, parts, []).evaluate({ millet: 0 });
    expect(verdict).toContain('nothing to divide by');
    expect(breaches.length).toBeGreaterThan(1);
    expectShown('verdict', verdict);
  });
});
