import { expect, it } from 'vitest';
import { pointerOf, pointerSteps, setAtPointer } from './json-pointer.ts';

it('reads and writes the steps of a pointer, as RFC 6901 escapes them', () => {
  expect(pointerSteps('')).toEqual([]);
  expect(pointerSteps('/foods/3/min')).toEqual(['foods', '3', 'min']);
  expect(pointerSteps('/a~1b/m~0n/~01')).toEqual(['a/b', 'm~n', '~1']);
  for (const steps of [[], ['foods', 3, 'min'], ['a/b', 'm~n', '~1', '']])
    expect(pointerSteps(pointerOf(steps))).toEqual(steps.map(String));
});

it('replaces one value in a copy and leaves all else as it was', () => {
  const problem = { rules: [{ min: 1 }, { min: 2 }], drop_one: true };
  expect(setAtPointer(problem, '/rules/1/min', 3)).toEqual({ ...problem, rules: [{ min: 1 }, { min: 3 }] });
  expect(setAtPointer(problem, '/drop_one', false)).toEqual({ ...problem, drop_one: false });
  expect(setAtPointer(problem, '/rules/0/min', undefined).rules[0]).toEqual({ min: undefined });
  expect(setAtPointer(problem, '/rules/7/min', 3)).toEqual(problem);
  expect(setAtPointer(problem, '/rules/1/min', 3).rules[0]).toBe(problem.rules[0]);
  expect(problem).toEqual({ rules: [{ min: 1 }, { min: 2 }], drop_one: true });
});
