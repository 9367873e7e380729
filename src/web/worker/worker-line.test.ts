import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LOAD_ERROR, type WorkerEnd, WorkerLine } from './worker-line.ts';

interface Made extends WorkerEnd {
  fail(why: string): void;
  readonly calls: {
    method: string;
    answer(value: unknown): void;
    refuse(error: Error): void;
    tell(told: unknown): void;
  }[];
  ended: boolean;
}

/** Workers as they are made, each answering when the test says so. */
function workers() {
  const made: Made[] = [];
  const open = (): WorkerEnd => {
    let failed: (why: string) => void = () => {};
    const worker: Made = {
      calls: [],
      ended: false,
      ask: (method, _, tell) =>
        new Promise((answer, refuse) => {
          worker.calls.push({ method, answer, refuse, tell: (told) => tell?.(told) });
        }),
      onFailure(hear) {
        failed = hear;
      },
      fail: (why) => failed(why),
      end() {
        worker.ended = true;
      },
    };
    made.push(worker);
    return worker;
  };
  return {
    made,
    line: new WorkerLine(open, 20_000),
    at: (i: number) => made[i] ?? expect.fail('no such worker'),
  };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('a worker is started when it is first asked, or made ready, and once', async () => {
  const { line, made } = workers();
  expect(made).toHaveLength(0);
  line.warm();
  expect(made).toHaveLength(1);
  void line.ask('solve', []);
  line.warm();
  expect(made).toHaveLength(1);
});

test('an answer comes through', async () => {
  const { line, at } = workers();
  const asked = line.ask('solve', [1]);
  at(0).calls[0]?.answer(42);
  expect(await asked).toBe(42);
  expect(line.state()).toEqual({ is: 'well' });
});

test('who waits when the worker goes is told, and so is who asks later, till it is started again', async () => {
  const { line, at, made } = workers();
  const heard = vi.fn();
  line.subscribe(heard);
  const asked = line.ask('solve', []);
  const told = expect(asked).rejects.toThrow('has stopped');
  at(0).fail('script error');
  await told;
  expect(heard).toHaveBeenCalled();
  expect(line.state()).toEqual({ is: 'gone', why: 'script error' });
  expect(at(0).ended).toBe(true);
  await expect(line.ask('solve', [])).rejects.toThrow('has stopped');
  line.restart();
  expect(line.state()).toEqual({ is: 'well' });
  expect(line.generation()).toBe(1);
  expect(made).toHaveLength(2);
  const again = line.ask('solve', []);
  at(1).calls[0]?.answer('there');
  expect(await again).toBe('there');
});

test('a worker that cannot be made is one that is gone', async () => {
  const line = new WorkerLine(() => {
    throw new Error('no workers here');
  }, 1000);
  line.warm();
  expect(line.state()).toEqual({ is: 'gone', why: 'no workers here' });
  await expect(line.ask('solve', [])).rejects.toThrow('has stopped');
});

test('an old worker that fails after it was replaced is not heard', () => {
  const { line, at } = workers();
  line.warm();
  line.restart();
  at(0).fail('late');
  expect(line.state()).toEqual({ is: 'well' });
});

test('an answer that is late is told, and no more once it is there', async () => {
  const { line, at } = workers();
  const asked = line.ask('solve', []);
  await vi.advanceTimersByTimeAsync(20_001);
  expect(line.state()).toEqual({ is: 'slow' });
  at(0).calls[0]?.answer(1);
  await asked;
  expect(line.state()).toEqual({ is: 'well' });
});

test('one that never comes ends when it is stopped', async () => {
  const { line } = workers();
  const told = expect(line.ask('solve', [])).rejects.toThrow('stopped before');
  await vi.advanceTimersByTimeAsync(20_001);
  line.restart();
  await told;
  expect(line.state()).toEqual({ is: 'well' });
});

test('an answer that tells how far it is comes in time', async () => {
  const { line, at } = workers();
  const heard = vi.fn();
  const asked = line.ask('solve', [], heard);
  for (const far of [1, 2, 3]) {
    await vi.advanceTimersByTimeAsync(15_000);
    at(0).calls[0]?.tell(far);
  }
  expect(heard.mock.calls).toEqual([[1], [2], [3]]);
  expect(line.state().is).toBe('well');
  await vi.advanceTimersByTimeAsync(20_001);
  expect(line.state().is).toBe('slow');
  at(0).calls[0]?.tell(4);
  expect(line.state().is).toBe('well');
  at(0).calls[0]?.answer(1);
  await asked;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(line.state().is).toBe('well');
});

test('a worker that is dropped ends, tells who waits, and the next who asks has another', async () => {
  const { line, at, made } = workers();
  const heard = vi.fn();
  const told = expect(line.ask('solve', [], heard)).rejects.toThrow('stopped before');
  line.drop();
  await told;
  expect(at(0).ended).toBe(true);
  expect(made).toHaveLength(1);
  at(0).calls[0]?.tell('too late');
  at(0).fail('late');
  expect(heard).not.toHaveBeenCalled();
  expect(line.state().is).toBe('well');
  const again = line.ask('solve', []);
  at(1).calls[0]?.answer(2);
  expect(await again).toBe(2);
});

test('what could not be loaded is told until the same question has an answer', async () => {
  const { line, at } = workers();
  const refused = expect(line.ask('find', [])).rejects.toThrow('(500)');
  at(0).calls[0]?.refuse(
    Object.assign(new Error('The reference foods could not be loaded (500).'), { name: LOAD_ERROR }),
  );
  await refused;
  expect(line.state()).toMatchObject({
    is: 'lacking',
    why: 'The reference foods could not be loaded (500).',
  });
  const other = line.ask('plainFoods', []);
  at(0).calls[1]?.answer(1);
  await other;
  expect(line.state().is).toBe('lacking');
  const same = line.ask('find', []);
  at(0).calls[2]?.answer(1);
  await same;
  expect(line.state().is).toBe('well');
});

test('an answer that is an error of another kind says nothing of the worker', async () => {
  const { line, at } = workers();
  const refused = expect(line.ask('find', [])).rejects.toThrow('odd');
  at(0).calls[0]?.refuse(new Error('odd'));
  await refused;
  expect(line.state()).toEqual({ is: 'well' });
});
