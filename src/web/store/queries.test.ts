import { notifyManager, QueryObserver } from '@tanstack/react-query';
import { expect, it, vi } from 'vitest';
import { queries, toldAtOnce } from './queries.ts';

it('tells of a change within the call that makes it, where that is asked for', async () => {
  const observer = new QueryObserver(queries, { queryKey: ['kept'], enabled: false });
  let seen: unknown;
  // As useQuery listens.
  const heard = notifyManager.batchCalls(() => {
    seen = observer.getCurrentResult().data;
  });
  const stop = observer.subscribe(heard);
  toldAtOnce(() => queries.setQueryData(['kept'], 'pressed'));
  expect(seen).toBe('pressed');
  queries.setQueryData(['kept'], 'later');
  expect(seen).toBe('pressed');
  await vi.waitFor(() => expect(seen).toBe('later'));
  expect(() =>
    toldAtOnce(() => {
      throw new Error('refused');
    }),
  ).toThrow('refused');
  queries.setQueryData(['kept'], 'after a fault');
  expect(seen).toBe('later');
  stop();
});
