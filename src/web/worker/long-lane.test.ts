import { expect, test, vi } from 'vitest';
import { LongLane } from './long-lane.ts';
import { WorkerLine } from './worker-line.ts';

/** A lane whose workers answer when the test says so. */
function lane() {
  const calls: {
    readonly method: string;
    readonly args: readonly unknown[];
    /** Which worker was asked, from 0. */
    readonly worker: number;
    answer(value: unknown): void;
    refuse(error: Error): void;
    tell(told: unknown): void;
  }[] = [];
  const ended: number[] = [];
  let made = 0;
  const line = new WorkerLine(() => {
    const worker = made++;
    return {
      ask: (method, args, tell) =>
        new Promise((answer, refuse) => {
          calls.push({ method, args, worker, answer, refuse, tell: (told) => tell?.(told) });
        }),
      onFailure: () => {},
      end: () => ended.push(worker),
    };
  }, 20_000);
  return {
    line,
    lane: new LongLane(line),
    calls,
    ended,
    made: () => made,
    call: (i: number) => calls[i] ?? expect.fail(`call ${i} was not made`),
  };
}

/** Lets what was answered arrive. */
const settled = () => vi.waitFor(() => Promise.resolve());

test('long answers are worked out one after the other, by one worker', async () => {
  const { lane: l, call, calls, made } = lane();
  const first = l.ask('solve', [1]);
  const second = l.ask('frontier', [2]);
  await settled();
  expect(calls).toHaveLength(1);
  call(0).answer('one');
  expect(await first).toBe('one');
  await vi.waitFor(() => expect(calls).toHaveLength(2));
  call(1).answer('two');
  expect(await second).toBe('two');
  expect(made()).toBe(1);
});

test('who asks the same waits along and hears what was told before', async () => {
  const { lane: l, call, calls } = lane();
  const first = l.ask('solve', [1]);
  await settled();
  call(0).tell('half');
  const tell = vi.fn();
  const second = l.ask('solve', [1], { tell });
  expect(tell.mock.calls).toEqual([['half']]);
  call(0).tell('most');
  expect(tell).toHaveBeenLastCalledWith('most');
  call(0).answer('all');
  expect([await first, await second]).toEqual(['all', 'all']);
  expect(calls).toHaveLength(1);
});

test('what was answered is not worked out again, though its worker was ended since', async () => {
  const { lane: l, call, calls } = lane();
  const first = l.ask('solve', [1]);
  await settled();
  call(0).answer('one');
  await first;
  const leaving = new AbortController();
  const left = l.ask('solve', [2], leaving).catch(() => 'left');
  await settled();
  leaving.abort();
  expect(await left).toBe('left');
  expect(await l.ask('solve', [1])).toBe('one');
  expect(calls).toHaveLength(2);
});

test('an answer that failed is worked out again', async () => {
  const { lane: l, call } = lane();
  const failing = expect(l.ask('solve', [1])).rejects.toThrow('odd');
  await settled();
  call(0).refuse(new Error('odd'));
  await failing;
  const again = l.ask('solve', [1]);
  await settled();
  call(1).answer('one');
  expect(await again).toBe('one');
});

test('what nobody waits for any more ends with its worker, and the next is asked of another', async () => {
  const { lane: l, call, calls, ended } = lane();
  const leaving = new AbortController();
  const left = expect(l.ask('solve', [1], { signal: leaving.signal })).rejects.toThrow();
  const next = l.ask('solve', [2]);
  await settled();
  leaving.abort();
  await left;
  expect(ended).toEqual([0]);
  await vi.waitFor(() => expect(calls).toHaveLength(2));
  expect(call(1).worker).toBe(1);
  call(1).answer('two');
  expect(await next).toBe('two');
});

test('it goes on while one of two still waits', async () => {
  const { lane: l, call, ended } = lane();
  const leaving = new AbortController();
  const left = expect(l.ask('solve', [1], { signal: leaving.signal })).rejects.toThrow();
  const stays = l.ask('solve', [1]);
  await settled();
  leaving.abort();
  await left;
  expect(ended).toEqual([]);
  call(0).answer('one');
  expect(await stays).toBe('one');
});

test('what only waits for its turn leaves without ending what runs', async () => {
  const { lane: l, call, calls, ended } = lane();
  const runs = l.ask('solve', [1]);
  const leaving = new AbortController();
  const left = expect(l.ask('solve', [2], { signal: leaving.signal })).rejects.toThrow();
  await settled();
  leaving.abort();
  await left;
  expect(ended).toEqual([]);
  call(0).answer('one');
  expect(await runs).toBe('one');
  await settled();
  expect(calls).toHaveLength(1);
});

test('who left before asking asks nothing', async () => {
  const { lane: l, calls } = lane();
  await expect(l.ask('solve', [1], { signal: AbortSignal.abort(new Error('left')) })).rejects.toThrow('left');
  expect(calls).toHaveLength(0);
});

test('where the worker goes, who waits is told, and who stands in line finds it gone until it is started again', async () => {
  const { lane: l, line, call, calls } = lane();
  const first = expect(l.ask('solve', [1])).rejects.toThrow('stopped before');
  await settled();
  line.restart();
  await first;
  const again = l.ask('solve', [1]);
  await settled();
  expect(calls).toHaveLength(2);
  call(1).answer('one');
  expect(await again).toBe('one');
});

test('what is asked aside gives way to what is not, and begins anew after it', async () => {
  const { lane: l, call, calls, ended } = lane();
  const aside = l.ask('why', [1], { aside: true });
  await settled();
  const keepers = l.ask('settle', [2]);
  await vi.waitFor(() => expect(calls).toHaveLength(2));
  expect(ended).toEqual([0]);
  expect(call(1).method).toBe('settle');
  call(1).answer('two');
  expect(await keepers).toBe('two');
  await vi.waitFor(() => expect(calls).toHaveLength(3));
  expect(call(2).method).toBe('why');
  call(2).answer('one');
  expect(await aside).toBe('one');
});

test('what is asked aside goes after all that is not, and no longer is where the keeper asks for it too', async () => {
  const { lane: l, call, calls, ended } = lane();
  const first = l.ask('solve', [1]);
  const aside = l.ask('why', [2], { aside: true });
  const second = l.ask('frontier', [3]);
  await settled();
  call(0).answer('one');
  await first;
  await vi.waitFor(() => expect(call(1).method).toBe('frontier'));
  call(1).answer('three');
  await second;
  await vi.waitFor(() => expect(call(2).method).toBe('why'));
  const asked = l.ask('why', [2]);
  const third = l.ask('solve', [4]);
  await settled();
  expect(calls).toHaveLength(3);
  call(2).answer('two');
  expect([await aside, await asked]).toEqual(['two', 'two']);
  await vi.waitFor(() => expect(calls).toHaveLength(4));
  call(3).answer('four');
  expect(await third).toBe('four');
  expect(ended).toEqual([]);
});
