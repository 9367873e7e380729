/** Trials of one food, one after the other: tastes change, what is newer counts more, an upset stands. */
import { expect, test } from 'vitest';
import type { Seen, Trial } from '../model.ts';
import { judge } from './judge.ts';

const trial = (id: string, from: number, ...seen: Seen[]): Trial => ({
  id,
  animalId: 'a',
  food: 'millet',
  name: 'Millet',
  days: [],
  offerings: seen.map((s, k) => ({ on: `2026-03-${String(from + k).padStart(2, '0')}`, seen: s })),
});
const leaving = trial('one', 1, 'left', 'left', 'left');

test('one trial is judged by its looks', () => {
  expect(judge([leaving])).toMatchObject({ is: 'refused', by: { id: 'one' } });
  expect(judge([])).toBeUndefined();
});

test('a refused food stays refused while a new trial is undecided, in whatever order they are kept', () => {
  const again = trial('two', 10, 'eaten');
  for (const all of [
    [leaving, again],
    [again, leaving],
  ]) {
    const judged = judge(all);
    expect(judged).toMatchObject({ is: 'refused', by: { id: 'one' }, verdict: { is: 'undecided' } });
    // Three older looks count as one and a half.
    expect(judged?.verdict.evidence).toMatchObject({ eaten: 1, left: 1.5 });
  }
});

test('a new verdict takes its place', () => {
  const eaten = Array.from({ length: 6 }, (): Seen => 'eaten');
  expect(judge([leaving, trial('two', 10, ...eaten)])).toMatchObject({ is: 'liked', by: { id: 'two' } });
  const liked = trial('zero', 1, 'eaten', 'eaten', 'eaten', 'eaten');
  const left = Array.from({ length: 7 }, (): Seen => 'left');
  expect(judge([liked, trial('two', 10, ...left)])).toMatchObject({ is: 'refused', by: { id: 'two' } });
});

test('an upset stands whatever comes later', () => {
  const eaten = Array.from({ length: 9 }, (): Seen => 'first');
  const upset = trial('one', 1, 'eaten', 'upset');
  expect(judge([upset, trial('two', 10, ...eaten)])).toMatchObject({ is: 'upset', by: { id: 'one' } });
  expect(judge([trial('zero', 1, ...eaten), trial('two', 20, 'upset')])).toMatchObject({
    is: 'upset',
    by: { id: 'two' },
  });
});
