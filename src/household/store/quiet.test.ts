import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Quiet } from './quiet.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** When it comes back, ms from now; undefined while it has not. */
function waited(quiet: Quiet): () => number | undefined {
  const from = performance.now();
  let ms: number | undefined;
  void quiet.comes().then(() => {
    ms = performance.now() - from;
  });
  return () => ms;
}

it('comes at once where nobody asks and nothing is to pass since', async () => {
  const ms = waited(new Quiet(0));
  await vi.advanceTimersByTimeAsync(0);
  expect(ms()).toBe(0);
});

it('comes a while after the beginning, since whoever starts a server asks it for something', async () => {
  const ms = waited(new Quiet(250));
  await vi.advanceTimersByTimeAsync(249);
  expect(ms()).toBeUndefined();
  await vi.advanceTimersByTimeAsync(1);
  expect(ms()).toBe(250);
});

it('comes when nobody has asked for so long, counted from the last answer', async () => {
  const quiet = new Quiet(250);
  await quiet.asked(async () => {});
  const ms = waited(quiet);
  for (const at of [100, 300, 500])
    setTimeout(() => void quiet.asked(() => new Promise((done) => setTimeout(done, 50))), at);
  await vi.advanceTimersByTimeAsync(799);
  expect(ms()).toBeUndefined();
  await vi.advanceTimersByTimeAsync(1);
  expect(ms()).toBe(800);
});

it('where nothing is to pass since, it comes with the answer, also one that fails', async () => {
  const quiet = new Quiet(0);
  const refused = quiet.asked(async () => {
    await new Promise((done) => setTimeout(done, 40));
    throw new Error('refused');
  });
  const ms = waited(quiet);
  await Promise.all([expect(refused).rejects.toThrow('refused'), vi.advanceTimersByTimeAsync(100)]);
  expect(ms()).toBeGreaterThanOrEqual(40);
  expect(ms()).toBeLessThan(45);
});

it('comes in the end where people never cease to ask, and from then on at once', async () => {
  const quiet = new Quiet(250);
  const ask = setInterval(() => void quiet.asked(async () => {}), 100);
  await vi.advanceTimersByTimeAsync(100);
  const ms = waited(quiet);
  await vi.advanceTimersByTimeAsync(20_000);
  expect(ms()).toBeLessThan(11_000);
  const next = waited(quiet);
  await vi.advanceTimersByTimeAsync(0);
  expect(next()).toBe(0);
  clearInterval(ask);
  await vi.advanceTimersByTimeAsync(300);
  // It waits as long the next time.
  await quiet.comes();
  await quiet.asked(async () => {});
  const later = waited(quiet);
  await vi.advanceTimersByTimeAsync(249);
  expect(later()).toBeUndefined();
  await vi.advanceTimersByTimeAsync(1);
  expect(later()).toBe(250);
});
