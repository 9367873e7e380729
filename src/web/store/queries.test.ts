import { notifyManager, QueryObserver } from '@tanstack/react-query';
import { expect, it } from 'vitest';
import { queries } from './queries.ts';

it('tells of a change within the call that makes it', () => {
  const observer = new QueryObserver(queries, { queryKey: ['kept'], enabled: false });
  let seen: unknown;
  // As useQuery listens.
  const heard = notifyManager.batchCalls(() => {
    seen = observer.getCurrentResult().data;
  });
  const stop = observer.subscribe(heard);
  queries.setQueryData(['kept'], 'changed');
  expect(seen).toBe('changed');
  stop();
});
