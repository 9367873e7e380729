/** Hearing of changes: at once while the page is in sight, by asking where nothing can be heard. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { listen } from './live.ts';

class Stream extends EventTarget {
  closed = false;
  close() {
    this.closed = true;
  }
  say(type: string, data: unknown) {
    this.dispatchEvent(new MessageEvent(type, { data: JSON.stringify(data) }));
  }
}
let streams: Stream[];
let pulls: number;
let reached: number;
let build: string | undefined;
let heard: { epoch: string; seq: number } | undefined;
let available: boolean;

beforeEach(() => {
  vi.useFakeTimers();
  [streams, pulls, reached, build, heard, available] = [[], 0, 0, undefined, { epoch: 'e', seq: 3 }, true];
});
afterEach(() => void vi.useRealTimers());

function opened() {
  const live = listen({
    open() {
      if (!available) return undefined;
      const stream = new Stream();
      streams.push(stream);
      return stream as unknown as EventSource;
    },
    heard: () => heard,
    pull: () => void pulls++,
    reached: () => void reached++,
    served(said) {
      build = said;
    },
  });
  live.seen(true);
  pulls = 0;
  return live;
}

it('fetches what is new when it hears of it, and nothing that it has', () => {
  opened();
  streams[0]!.say('hello', { seq: 3, epoch: 'e', build: 'b1' });
  expect([pulls, reached, build]).toEqual([0, 1, 'b1']);
  streams[0]!.say('change', { seq: 3, epoch: 'e' });
  expect(pulls).toBe(0);
  streams[0]!.say('change', { seq: 4, epoch: 'e' });
  expect(pulls).toBe(1);
});

it('fetches all of another household, whatever its numbers', () => {
  opened();
  streams[0]!.say('hello', { seq: 1, epoch: 'another', build: 'b1' });
  expect(pulls).toBe(1);
});

it('is not led astray by what is no Pouchful', () => {
  opened();
  streams[0]!.dispatchEvent(new MessageEvent('change', { data: '<html>' }));
  streams[0]!.say('hello', { hello: 'world' });
  expect([pulls, reached]).toEqual([0, 0]);
});

it('holds no connection out of sight, and catches up when seen', () => {
  const live = opened();
  live.seen(false);
  expect(streams[0]!.closed).toBe(true);
  vi.advanceTimersByTime(600_000);
  expect([pulls, streams.length]).toEqual([0, 1]);
  live.seen(true);
  expect([pulls, streams.length]).toEqual([1, 2]);
});

it('listens again after a failure, each time later, and fetches what it missed', () => {
  opened();
  for (const wait of [1000, 2000]) {
    streams.at(-1)!.dispatchEvent(new Event('error'));
    expect(streams.at(-1)!.closed).toBe(true);
    const before = [pulls, streams.length] as const;
    vi.advanceTimersByTime(wait - 1);
    expect([pulls, streams.length]).toEqual(before);
    vi.advanceTimersByTime(1);
    expect([pulls, streams.length]).toEqual([before[0] + 1, before[1] + 1]);
  }
});

it('asks every few seconds where there is nothing to listen to', () => {
  available = false;
  opened();
  vi.advanceTimersByTime(9000);
  expect(pulls).toBe(3);
});

it('asks now and then though it hears nothing: the connection may be gone without a word', () => {
  opened();
  vi.advanceTimersByTime(120_000);
  expect([pulls, streams.length]).toEqual([2, 1]);
});
