/** Names of kept versions. */
import { expect, test } from 'vitest';
import { versionName } from './version-name.ts';

test('a name that is taken gets a number', () => {
  expect(versionName('2026-11-25', [])).toBe('25 November 2026');
  expect(versionName('2026-11-25', ['25 November 2026', '25 November 2026 (2)'])).toBe(
    '25 November 2026 (3)',
  );
  expect(versionName('2026-11-25', ['25 November 2026 (2)'])).toBe('25 November 2026');
});
