/** Ids where the browser makes none. */
import { afterEach, expect, test, vi } from 'vitest';
import { newId } from './new-id.ts';

afterEach(() => vi.unstubAllGlobals());

test('over plain http an id is made from random bytes, another each time', () => {
  const { getRandomValues } = crypto;
  vi.stubGlobal('crypto', { getRandomValues: getRandomValues.bind(crypto) });
  const ids = new Set(Array.from({ length: 100 }, newId));
  expect(ids.size).toBe(100);
  for (const id of ids) expect(id).toMatch(/^[0-9a-f]{32}$/);
});
