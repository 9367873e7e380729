import { expect, it } from 'vitest';
import { remembered } from './remembered.ts';

it('answers once for the same objects, anew for others, in whatever order they are asked', () => {
  let asked = 0;
  const longer = remembered((a: readonly number[], b: readonly number[]) => {
    asked++;
    return { sum: [...a, ...b].reduce((sum, n) => sum + n, 0) };
  });
  const [one, two] = [[1], [2, 3]];
  const answer = longer(one, two);
  expect(answer).toEqual({ sum: 6 });
  expect(longer(one, two)).toBe(answer);
  expect(asked).toBe(1);
  expect(longer(one, [2, 3])).not.toBe(answer);
  expect(longer(two, one)).toEqual({ sum: 6 });
  expect(asked).toBe(3);
  expect(longer(one, two)).toBe(answer);
});

it('remembers no error', () => {
  let broken = true;
  const maybe = remembered((of: object) => {
    if (broken) throw new RangeError('not yet');
    return of;
  });
  const it = {};
  expect(() => maybe(it)).toThrow('not yet');
  broken = false;
  expect(maybe(it)).toBe(it);
});
