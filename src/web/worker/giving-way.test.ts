import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { atEveryLook, givingWay, Hand } from './giving-way.ts';

/** What happens while the worker waits, one after the other. */
let meanwhile: (() => void)[] = [];
const wait = vi.fn((_shared: Int32Array, _index: number, _value: number, _limit?: number) => {
  const happens = meanwhile.shift() ?? expect.fail('it waits for ever');
  happens();
  return 'ok' as const;
});
const notify = vi.fn((_shared: Int32Array, _index: number) => 1);
const nothing = () => {};

beforeEach(() => {
  meanwhile = [];
  wait.mockClear();
  notify.mockClear();
  vi.spyOn(Atomics, 'wait').mockImplementation(wait as never);
  vi.spyOn(Atomics, 'notify').mockImplementation(notify as never);
});
afterEach(() => {
  expect(meanwhile, 'the worker went on too soon').toEqual([]);
  vi.restoreAllMocks();
});

/** A hand, and a step of the work that gives way to it. */
function handAndStep() {
  const hand = new Hand(true);
  const shared = hand.shared ?? expect.fail('nothing is shared');
  return { hand, shared, step: givingWay(shared) };
}

test('work goes on where no hand moves', () => {
  const { step } = handAndStep();
  step();
  step();
  expect(wait).not.toHaveBeenCalled();
});

test('it waits while the hand moves, and goes on when that lets go', () => {
  const { hand, step } = handAndStep();
  hand.moves();
  meanwhile = [hand.moves, hand.moves, hand.rests];
  step();
  expect(wait).toHaveBeenCalledTimes(3);
  step();
  expect(wait).toHaveBeenCalledTimes(3);
});

test('who waits is woken at once, and none where none waits', () => {
  const { hand, shared } = handAndStep();
  hand.rests();
  expect(notify).not.toHaveBeenCalled();
  hand.moves();
  expect(notify).not.toHaveBeenCalled();
  hand.rests();
  hand.rests();
  expect(notify.mock.calls).toEqual([[shared, 0]]);
});

test('a hand that holds still, or whose page is gone, is not waited for any longer', () => {
  const { hand, step } = handAndStep();
  hand.moves();
  meanwhile = [hand.moves, nothing];
  step();
  step();
  expect(wait).toHaveBeenCalledTimes(2);
  for (const [, , , limit] of wait.mock.calls) expect(limit).toBeGreaterThan(0);
});

test('once it moves again, it is waited for again', () => {
  const { hand, step } = handAndStep();
  hand.moves();
  meanwhile = [nothing];
  step();
  hand.moves();
  meanwhile = [nothing];
  step();
  hand.rests();
  hand.moves();
  meanwhile = [hand.rests];
  step();
  expect(wait).toHaveBeenCalledTimes(3);
});

test('taken hold of again while it is being woken, it is still waited for', () => {
  const { hand, step } = handAndStep();
  hand.moves();
  meanwhile = [
    () => {
      hand.rests();
      hand.moves();
    },
    hand.rests,
  ];
  step();
  expect(wait).toHaveBeenCalledTimes(2);
});

test('steps are counted, those alone that were taken', () => {
  const { hand, shared, step } = handAndStep();
  step();
  step();
  const counted = Atomics.load(shared, 1);
  expect(counted).toBe(2);
  hand.moves();
  meanwhile = [
    () => {
      expect(Atomics.load(shared, 1)).toBe(2);
      hand.rests();
    },
  ];
  step();
  expect(Atomics.load(shared, 1)).toBe(3);
});

test('where the browser shares nothing, a hand moves as ever', () => {
  const hand = new Hand(false);
  expect(hand.shared).toBeUndefined();
  hand.moves();
  hand.rests();
  expect(notify).not.toHaveBeenCalled();
});

test('who looks at the clock pauses first, and sees the time afterwards', () => {
  const happened: string[] = [];
  const clock = {
    at: 5,
    now() {
      happened.push('looked');
      return this.at;
    },
  };
  atEveryLook(() => {
    happened.push('paused');
    clock.at += 300;
  }, clock);
  expect(clock.now()).toBe(305);
  expect(happened).toEqual(['paused', 'looked']);
});
