import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Wanted } from './wanted.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** What may come by now. */
async function come(wanted: Wanted): Promise<string[]> {
  const may: string[] = [];
  for (const section of ['rest', 'feedings', 'weighings'] as const)
    void wanted.mayCome(section).then(() => may.push(section));
  await vi.advanceTimersByTimeAsync(0);
  return may;
}

it('lets come at once what is wanted, and the rest of the lists later', async () => {
  const wanted = new Wanted(1000);
  expect(await come(wanted)).toEqual(['rest']);
  await vi.advanceTimersByTimeAsync(999);
  expect(await come(wanted)).toEqual(['rest']);
  await vi.advanceTimersByTimeAsync(1);
  expect(await come(wanted)).toEqual(['rest', 'feedings', 'weighings']);
});

it('lets come what is wanted while it waits, and that alone', async () => {
  const wanted = new Wanted(1000);
  let isHere = false;
  void wanted.mayCome('weighings').then(() => {
    isHere = true;
  });
  wanted.want(['feedings']);
  expect(await come(wanted)).toEqual(['rest', 'feedings']);
  expect(isHere).toBe(false);
  wanted.want(['weighings']);
  await vi.advanceTimersByTimeAsync(0);
  expect(isHere).toBe(true);
});
