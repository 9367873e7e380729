import { expect, test, vi } from 'vitest';
import { survivingStorage } from './device-storage.ts';

/** A storage as browsers have it. */
function storage(most = Number.POSITIVE_INFINITY): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem(key, value) {
      if (value.length > most) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, value);
    },
    removeItem: (key) => void kept.delete(key),
    clear: () => kept.clear(),
  };
}

test('what the browser takes is kept there', () => {
  const browser = storage();
  const device = survivingStorage(() => browser);
  expect(device.setItem('a', '1')).toBe(true);
  expect(browser.getItem('a')).toBe('1');
  expect(device.getItem('a')).toBe('1');
  expect(device.keys('a')).toEqual(['a']);
  device.removeItem('a');
  expect(device.getItem('a')).toBeNull();
});

test('what it does not take lasts as long as the page, and is told', () => {
  const failed = vi.fn();
  const browser = storage(3);
  browser.setItem('a', 'old');
  const device = survivingStorage(() => browser, failed);
  expect(device.setItem('a', 'longer')).toBe(false);
  expect(failed).toHaveBeenCalledOnce();
  expect(device.getItem('a')).toBe('longer');
  expect(device.keys('')).toEqual(['a']);
  expect(device.setItem('a', 'new')).toBe(true);
  expect(browser.getItem('a')).toBe('new');
});

test('a browser without storage is one that takes nothing', () => {
  const device = survivingStorage(() => {
    throw new DOMException('denied', 'SecurityError');
  });
  expect(device.getItem('a')).toBeNull();
  expect(device.setItem('a', '1')).toBe(false);
  expect(device.getItem('a')).toBe('1');
  device.removeItem('a');
  expect(device.getItem('a')).toBeNull();
  expect(device.keys('')).toEqual([]);
});

test('a storage that forgets at once is one that does not take it', () => {
  const device = survivingStorage(() => ({ ...storage(), getItem: () => null }));
  expect(device.setItem('a', '1')).toBe(false);
  expect(device.getItem('a')).toBe('1');
});
