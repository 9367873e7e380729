/** What sharing a base costs, in words. */
import { expect, test } from 'vitest';
import { costWords } from './sharing-words.ts';

test('what sharing costs is said, and no price where none is known', () => {
  expect(costWords({ different: 0, further: 0 })).toBe('Its mix is as the best mix of its own would be.');
  expect(costWords({ different: 12.34, further: 1, dearer: 0.5 })).toBe(
    '12.3 % of its mix is other food than in the best mix of its own, and it is €0.50 dearer per kg.',
  );
  expect(costWords({ different: 12, further: 1, dearer: -0.5 })).toContain('€0.50 cheaper per kg');
});
