/** The one query client of the page, and how its changes reach React. */
import { defaultScheduler, notifyManager, QueryClient } from '@tanstack/react-query';

let atOnce = false;

notifyManager.setScheduler((tell) => (atOnce ? tell() : defaultScheduler(tell)));

/**
 * Makes a change of the cache that reaches React before this returns. Others reach it a timer later: too late for what
 * was pressed, since React, at the end of a press, sets a radio or checkbox back to what its component last said.
 */
export function toldAtOnce(change: () => void): void {
  atOnce = true;
  try {
    change();
  } finally {
    atOnce = false;
  }
}

/** The server and the worker may be on this machine: both are asked also where the browser says it is offline. */
export const queries = new QueryClient({
  defaultOptions: {
    queries: { retry: 2, refetchOnWindowFocus: false, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
});
