import { expect, test } from 'vitest';
import { tenYears } from '../../../../test/household/ten-years.ts';
import { foodKeys } from './same-food.ts';
import { sameProblems } from './same-problems.ts';

const { foods, mixes, batches } = tenYears({ size: 0.02 });

test('are the same lists while only shares and pours change', () => {
  const asked = sameProblems({ mixes, batches });
  const poured = batches.map((b) => ({ ...b, pours: [] }));
  const moved = mixes.map((m) => ({ ...m, shares: {} }));
  expect(sameProblems({ mixes: moved, batches: poured })).toEqual(asked);
  expect(sameProblems({ mixes: moved, batches: poured }).batches).toBe(asked.batches);
  expect(sameProblems({ mixes: moved, batches: poured }).mixes).toBe(asked.mixes);
});

test('are others where a problem changes, one comes, or one goes', () => {
  const asked = sameProblems({ mixes, batches });
  const [first, ...others] = batches;
  if (!first) throw new Error('no batch');
  for (const now of [
    [{ ...first, problem: { ...first.problem } }, ...others],
    [...batches, { ...first, id: 'another' }],
    others,
    [],
  ])
    expect(sameProblems({ mixes, batches: now }).batches).toBe(now);
  expect(sameProblems({ mixes, batches }).mixes).toBe(asked.mixes);
});

test('a food that a batch names after a change is known by it', () => {
  const [first, ...others] = batches;
  const [food] = first?.problem.foods ?? [];
  if (!first || !food) throw new Error('no batch');
  const named = { ...food, id: 'named-anew', ref: 'sr28:20038', name: 'Oats' };
  const now = [...others, { ...first, problem: { ...first.problem, foods: [named] } }];
  expect(foodKeys({ foods, mixes, batches })('named-anew')).toBe('named-anew');
  expect(foodKeys({ foods, mixes, batches: now })('named-anew')).toBe('sr28:20038');
});
