/** Entries at the scale: one after the other, tried again until the server has them, kept on the device until then. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Batch } from '../../kitchen/model.ts';
import type { BatchChange, ChangeOutcome } from './batch-change.ts';
import { type BatchSave, BatchSaver } from './batch-saver.ts';

/** A batch, told by its name. */
const batch = (name: string) => ({ id: 'b', name }) as Batch;
const [before, first, second] = ['before', 'first', 'second'].map(batch) as [Batch, Batch, Batch];

let sent: { change: BatchChange; answer(outcome: ChangeOutcome | Error): void }[];
let told: BatchSave[];
let shown: string[];
let stored: Map<string, string>;

beforeEach(() => {
  vi.useFakeTimers();
  [sent, told, shown, stored] = [[], [], [], new Map()];
});
afterEach(() => vi.useRealTimers());

/** The page on a device that keeps `stored`. */
function opened(): BatchSaver {
  const saver = new BatchSaver('b', {
    send: (change) =>
      new Promise((done, fail) => {
        sent.push({ change, answer: (o) => (o instanceof Error ? fail(o) : done(o)) });
      }),
    show: ({ name }) => shown.push(name),
    tell: (save) => told.push(save),
    storage: {
      getItem: (key) => stored.get(key) ?? null,
      setItem: (key, value) => stored.set(key, value),
      removeItem: (key) => stored.delete(key),
    },
  });
  saver.open();
  return saver;
}

async function answered(outcome: ChangeOutcome | Error) {
  const request = sent.shift();
  if (!request) throw new Error('nothing was sent');
  request.answer(outcome);
  await vi.advanceTimersByTimeAsync(0);
}
const kept = (b: Batch): ChangeOutcome => ({ batch: b, overtaken: false });
const onItsWay = () => sent.map(({ change }) => [change.base.name, change.next.name]);

it('counts an entry as made once the server has it', async () => {
  const saver = opened();
  saver.keep(before, first);
  expect(told).toEqual([{ is: 'saving', next: first }]);
  expect(onItsWay()).toEqual([['before', 'first']]);
  expect(stored.size).toBe(1);
  expect(shown).toEqual([]);
  await answered(kept(first));
  expect(told.at(-1)).toEqual({ is: 'idle' });
  expect(shown).toEqual(['first']);
  expect(stored.size).toBe(0);
});

it('tells of a failure and tries again, each time later', async () => {
  const saver = opened();
  saver.keep(before, first);
  for (const wait of [1000, 2000, 4000]) {
    await answered(new Error('no network'));
    expect(told.at(-1)).toEqual({ is: 'failed', next: first, message: 'no network' });
    expect(stored.size).toBe(1);
    await vi.advanceTimersByTimeAsync(wait - 1);
    expect(sent).toEqual([]);
    await vi.advanceTimersByTimeAsync(1);
    expect(onItsWay()).toEqual([['before', 'first']]);
  }
  await answered(kept(first));
  // The next failure begins with the shortest wait.
  saver.keep(first, second);
  await answered(new Error('no network'));
  await vi.advanceTimersByTimeAsync(1000);
  expect(onItsWay()).toEqual([['first', 'second']]);
});

it('tries at once when asked to, never twice at a time', async () => {
  const saver = opened();
  saver.keep(before, first);
  saver.retry();
  expect(sent).toHaveLength(1);
  await answered(new Error('no network'));
  saver.retry();
  expect(sent).toHaveLength(1);
  await vi.advanceTimersByTimeAsync(60_000);
  expect(sent).toHaveLength(1);
});

it('makes two quick entries one after the other, though the first fails at first', async () => {
  const saver = opened();
  saver.keep(before, first);
  saver.keep(first, second);
  expect(onItsWay()).toEqual([['before', 'first']]);
  await answered(new Error('no network'));
  expect(told.at(-1)).toEqual({ is: 'failed', next: second, message: 'no network' });
  await vi.advanceTimersByTimeAsync(1000);
  await answered(kept(first));
  expect(told.at(-1)).toMatchObject({ is: 'failed' });
  expect(onItsWay()).toEqual([['first', 'second']]);
  await answered(kept(second));
  expect(told.at(-1)).toEqual({ is: 'idle' });
  expect(shown).toEqual(['first', 'second']);
});

it('says where another device went on, shows what stands, and drops what was made upon the entry', async () => {
  const saver = opened();
  saver.keep(before, first);
  saver.keep(first, second);
  await answered({ batch: batch('other'), overtaken: true });
  expect(shown).toEqual(['other']);
  expect(told.at(-1)).toEqual({ is: 'overtaken', next: second });
  expect(sent).toEqual([]);
  expect(stored.size).toBe(0);
});

it('makes, when it is opened again, what was left on this device', async () => {
  const saver = opened();
  saver.keep(before, first);
  saver.keep(first, second);
  await answered(new Error('no network'));
  saver.close();
  await vi.advanceTimersByTimeAsync(60_000);
  expect(sent).toEqual([]);
  told = [];
  opened();
  expect(told).toEqual([{ is: 'saving', next: second }]);
  await answered(kept(first));
  await answered(kept(second));
  expect(stored.size).toBe(0);
});

it('makes what an older page left, one change and no list', async () => {
  stored.set('pouchful.batch.b', JSON.stringify({ base: before, next: first }));
  opened();
  expect(onItsWay()).toEqual([['before', 'first']]);
});

it('hears an answer that comes after the page was closed, and goes on where the same page opens again', async () => {
  const saver = opened();
  saver.keep(before, first);
  saver.close();
  await answered(kept(first));
  expect(stored.size).toBe(0);
  saver.keep(first, second);
  await answered(new Error('no network'));
  await vi.advanceTimersByTimeAsync(60_000);
  expect(sent).toEqual([]);
  saver.open();
  expect(onItsWay()).toEqual([['first', 'second']]);
});
