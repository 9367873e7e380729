/** Which pages of one browser are open. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { joinTabs } from './tabs.ts';

/** Channels of one name: what one says all others hear. */
let channels: EventTarget[];
const open = (): BroadcastChannel => {
  const channel = Object.assign(new EventTarget(), {
    postMessage(data: unknown) {
      for (const other of channels)
        if (other !== channel) other.dispatchEvent(new MessageEvent('message', { data }));
    },
  });
  channels.push(channel);
  return channel as unknown as BroadcastChannel;
};

beforeEach(() => {
  channels = [];
  vi.useFakeTimers();
});
afterEach(() => void vi.useRealTimers());

it('tells the pages that answer from those that are gone', () => {
  const here = joinTabs('here', () => {}, open);
  joinTabs('there', () => {}, open);
  const found = vi.fn((isOpen: (tab: string) => boolean) => [isOpen('there'), isOpen('gone')]);
  here.ask(found);
  vi.advanceTimersByTime(1000);
  expect(found.mock.results).toEqual([{ type: 'return', value: [true, false] }]);
});

it('hears when another page is left', () => {
  const left = vi.fn();
  const here = joinTabs('here', left, open);
  const there = joinTabs('there', () => {}, open);
  there.leaving();
  expect(left).toHaveBeenCalledTimes(1);
  here.leaving();
  expect(left).toHaveBeenCalledTimes(1);
});

it('takes every other page for gone where pages cannot talk: what two send is still one write', () => {
  const alone = joinTabs(
    'here',
    () => {},
    () => undefined,
  );
  let isThere: boolean | undefined;
  alone.ask((isOpen) => {
    isThere = isOpen('there');
  });
  vi.advanceTimersByTime(0);
  expect(isThere).toBe(false);
});
