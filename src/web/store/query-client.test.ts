import { MutationObserver, notifyManager, onlineManager, QueryObserver } from '@tanstack/react-query';
import { expect, it, vi } from 'vitest';
import { queries, toldAtOnce } from './query-client.ts';

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

it('asks and saves also where the browser says it is offline: the server may be on this machine', async () => {
  onlineManager.setOnline(false);
  try {
    const asked = queries.fetchQuery({ queryKey: ['offline'], queryFn: async () => 'answered' });
    const saved = new MutationObserver(queries, { mutationFn: async () => 'saved' }).mutate();
    const first = (promise: Promise<string>) => Promise.race([promise, waited()]);
    expect([await first(asked), await first(saved)]).toEqual(['answered', 'saved']);
  } finally {
    onlineManager.setOnline(true);
  }
});

/** A paused question would never answer; all timers of the library have run by then. */
async function waited(): Promise<string> {
  for (let n = 0; n < 5; n++) await new Promise((done) => setTimeout(done));
  return 'paused';
}
