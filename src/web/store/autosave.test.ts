/** Saving by itself: the newest version, a little after the last change, one request at a time, until it is kept. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Autosave, type SaveState } from './autosave.ts';

/** From the last change to its save, ms. */
const DELAY = 400;
let sent: { thing: string; leaving: boolean; done(): void; fail(error: Error): void }[];
let shown: SaveState[];
let saver: Autosave<string>;

beforeEach(() => {
  vi.useFakeTimers();
  sent = [];
  shown = [];
  const save = (thing: string, leaving: boolean) =>
    new Promise<void>((done, fail) => {
      sent.push({ thing, leaving, done, fail });
    });
  saver = new Autosave(save, (state) => shown.push(state));
});
afterEach(() => vi.useRealTimers());

const wait = (ms: number) => vi.advanceTimersByTimeAsync(ms);
const things = () => sent.map((s) => s.thing);
const state = () => shown.at(-1)?.is;
/** Answers the request that was sent first and not answered yet. */
async function answered(error?: Error) {
  const request = sent.shift();
  if (!request) throw new Error('nothing was sent');
  if (error) request.fail(error);
  else request.done();
  await wait(0);
}

it('saves the newest version once, a little after the last change', async () => {
  saver.queue('a');
  await wait(DELAY - 1);
  saver.queue('b');
  await wait(DELAY - 1);
  expect(sent).toEqual([]);
  expect(state()).toBe('saving');
  await wait(1);
  expect(things()).toEqual(['b']);
  await answered();
  expect(state()).toBe('saved');
  await wait(60_000);
  expect(sent).toEqual([]);
});

it('sends one request at a time: what changes meanwhile follows', async () => {
  saver.queue('a');
  await wait(DELAY);
  saver.queue('b');
  await wait(DELAY);
  expect(things()).toEqual(['a']);
  await answered();
  expect(state()).toBe('saving');
  await wait(DELAY);
  expect(things()).toEqual(['b']);
  await answered();
  expect(state()).toBe('saved');
});

it('tells of a failure and tries again, each time later', async () => {
  saver.queue('a');
  await wait(DELAY);
  for (const pause of [1000, 2000, 4000]) {
    await answered(new Error('refused'));
    expect(shown.at(-1)).toEqual({ is: 'failed', message: 'refused' });
    await wait(pause - 1);
    expect(sent).toEqual([]);
    await wait(1);
    expect(things()).toEqual(['a']);
  }
  await answered();
  expect(state()).toBe('saved');
  // The next failure begins with the shortest wait.
  saver.queue('b');
  await wait(DELAY);
  await answered(new Error('refused'));
  await wait(1000);
  expect(things()).toEqual(['b']);
});

it('saves, after a failure, a newer change and not the one that failed', async () => {
  saver.queue('a');
  await wait(DELAY);
  saver.queue('b');
  await answered(new Error('refused'));
  expect(state()).toBe('failed');
  await wait(1000);
  expect(things()).toEqual(['b']);
  await answered();
  await wait(60_000);
  expect(sent).toEqual([]);
});

it('tries at once when asked to', async () => {
  saver.queue('a');
  saver.flush();
  expect(things()).toEqual(['a']);
  await answered(new Error('refused'));
  saver.flush();
  expect(things()).toEqual(['a']);
  await answered();
  await wait(60_000);
  expect(sent).toEqual([]);
});

it('on leaving sends what waits, beside a request that is on its way', async () => {
  saver.queue('a');
  await wait(DELAY);
  saver.queue('b');
  saver.flush(true);
  expect(sent.map((s) => [s.thing, s.leaving])).toEqual([
    ['a', false],
    ['b', true],
  ]);
  await answered();
  expect(state()).toBe('saving');
  await answered();
  expect(state()).toBe('saved');
});

it('never saves an older version after a newer one', async () => {
  saver.queue('a');
  await wait(DELAY);
  saver.queue('b');
  saver.flush(true);
  await answered(new Error('refused'));
  await answered();
  // The page is back in sight.
  expect(state()).toBe('saved');
  await wait(60_000);
  expect(sent).toEqual([]);
});

it('says nothing and sends nothing where nothing waits', async () => {
  saver.flush();
  saver.flush(true);
  await wait(60_000);
  expect([sent, shown]).toEqual([[], []]);
});

it('settles: what waits is saved now, and what changed meanwhile too', async () => {
  let settled = false;
  saver.queue('a');
  await wait(DELAY);
  saver.queue('b');
  void saver.settled().then(() => {
    settled = true;
  });
  await answered();
  expect(things()).toEqual(['b']);
  expect(settled).toBe(false);
  await answered();
  expect(settled).toBe(true);
  await saver.settled();
  expect(sent).toEqual([]);
});

it('settles also where a save fails, which is then tried again as ever', async () => {
  let settled = false;
  saver.queue('a');
  void saver.settled().then(() => {
    settled = true;
  });
  await wait(0);
  await answered(new Error('refused'));
  expect(settled).toBe(true);
  expect(state()).toBe('failed');
  await wait(60_000);
  expect(things()).toEqual(['a']);
});
