import { expect, it } from 'vitest';
import { sizeWords, whyWords } from './backup-words.ts';

it('says why a backup was made', () => {
  expect(whyWords('auto')).toBe('made by itself');
  expect(whyWords('before-upgrade-5-6')).toBe('before an update of Pouchful');
  expect(whyWords('something new')).toBe('something new');
});

it('says how large it is', () => {
  expect(sizeWords(12)).toBe('1 kB');
  expect(sizeWords(340_400)).toBe('340 kB');
  expect(sizeWords(2_449_999)).toBe('2.4 MB');
});
