import { expect, test } from 'vitest';
import { problemOf } from '../../../../test/formulation/problem-of.ts';
import { NO_NOTICE, noticeFor } from './notice.ts';

const problem = problemOf({ foods: [{ id: 'oats' }] });

test('what was said of a mix stands while its rules and foods do, and goes with them', () => {
  const said = { text: 'It fits.', about: problem };
  expect(noticeFor(said, problem)).toBe('It fits.');
  // Animals make the problem another object each time.
  expect(noticeFor(said, structuredClone(problem))).toBe('It fits.');
  expect(noticeFor(said, { ...problem, rules: [{ food: 'oats', max: 10 }] })).toBe('');
  expect(noticeFor(NO_NOTICE, problem)).toBe('');
});
