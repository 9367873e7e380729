import { MutationObserver, onlineManager } from '@tanstack/react-query';
import { expect, it } from 'vitest';
import { queries } from './query-client.ts';

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
