import { expect, test } from 'vitest';
import { questionsOf } from './questions.ts';
import { readLabel } from './read.ts';

const LABEL = 'Fibre 9 g per serving\nProtein 4 g per serving';

test('an answered question stays to be changed; what an answer leaves open is asked too', () => {
  const open = readLabel(LABEL).questions.map((q) => q.id);
  expect(open.length).toBeGreaterThan(1);
  expect(questionsOf(LABEL, {}).map((q) => q.id)).toEqual(open);
  const serving = open.find((id) => id === 'serving')!;
  const answers = { [serving]: '40' };
  expect(readLabel(LABEL, answers).questions.map((q) => q.id)).not.toContain(serving);
  expect(
    questionsOf(LABEL, answers)
      .map((q) => q.id)
      .sort(),
  ).toEqual([...open].sort());
});

test('a label without doubt has no questions, whatever answers are kept from before', () => {
  expect(questionsOf('Protein 14 %', { serving: '40' })).toEqual([]);
});
