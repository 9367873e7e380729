/** The ration in words. */
import { expect, test } from 'vitest';
import type { Beside } from '../../../formulation/problem/problem.ts';
import { demoHousehold } from '../../../household/demo.ts';
import { addBeside, withChoice } from '../../../household/reckon/mix/beside.ts';
import { rationWords } from './ration-words.ts';

const mix = demoHousehold().mixes[0]!;
const cucumber: Beside = { id: 'cucumber', name: 'Cucumber', ref: 'sr28:11205', share_of_ration: 1 };
const plain = (words: string) => words.replaceAll('\u00a0', ' ');

test('names what is fed beside at the shares that were chosen, and several foods by their names', () => {
  const chosen = withChoice(mix, mix.problem.beside[0]!.id, 40, 60);
  const answer = { beside: { [mix.problem.beside[0]!.id]: { share: 44.5 } } };
  expect(plain(rationWords(chosen.problem, answer, () => 'pellet'))).toBe('44.5 % pellet and 55.5 % mix');
  const two = addBeside(chosen, cucumber).problem;
  expect(plain(rationWords(two, answer, (b) => b.name ?? b.id))).toBe(
    '44.5 % Invented pellet; 1 % Cucumber; and 54.5 % mix',
  );
  expect(rationWords({ beside: [] }, undefined, () => '')).toBe('mix only');
});
