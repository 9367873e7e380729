/** Limits of a search are counts, so that it ends at the same place on every machine. */
import { beforeAll, expect, it, vi } from 'vitest';
import { randomFrom } from '../../../test/formulation/problems.ts';
import { type Highs, loadHighs } from './highs.ts';
import { type LinearModel, solveLinearWith } from './linear-program.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

/** 40 things to choose from, each with a worth and five weights, as much as five sacks hold. */
function sacks(): LinearModel {
  const random = randomFrom(7);
  const draw = (low: number, high: number) => Array.from({ length: 40 }, () => low + (high - low) * random());
  return {
    cost: draw(-100, -10),
    upper: new Array<number>(40).fill(1),
    whole: new Array<boolean>(40).fill(true),
    rows: Array.from({ length: 5 }, () => ({ coefficients: draw(5, 100), max: 700 })),
  };
}

it('ends after so many iterations, with the same answer every time', () => {
  const full = solveLinearWith(highs, sacks());
  expect(full.status).toBe('optimal');
  const short = solveLinearWith(highs, { ...sacks(), mostIterations: 20 });
  expect(short.status).toBe('unfinished');
  expect(short.objective).toBeGreaterThanOrEqual(full.objective);
  expect(solveLinearWith(highs, { ...sacks(), mostIterations: 20 })).toEqual(short);
  expect(solveLinearWith(highs, { ...sacks(), mostIterations: 1_000_000 })).toEqual(full);
});

it('gives the solver no time limit', () => {
  const set = vi.fn();
  const spied = {
    ...highs,
    createModel: (model: Parameters<Highs['createModel']>[0]) => {
      const made = highs.createModel(model);
      const real = made.options.set.bind(made.options) as (...args: unknown[]) => void;
      made.options.set = ((...args: unknown[]) => {
        set(...args);
        real(...args);
      }) as typeof made.options.set;
      return made;
    },
  } as Highs;
  solveLinearWith(spied, { ...sacks(), mostIterations: 20 });
  expect(set).toHaveBeenCalled();
  expect(JSON.stringify(set.mock.calls)).not.toContain('time_limit');
});
