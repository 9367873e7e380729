/** The one query client of the page. */
import { notifyManager, QueryClient } from '@tanstack/react-query';

// A change reaches React within the call that makes it. By default it comes a timer later: then React, at the end of
// a press, sets a radio or checkbox back to what its component last said, and it springs back before it changes.
notifyManager.setScheduler((tell) => tell());

export const queries = new QueryClient({
  defaultOptions: { queries: { retry: 2, refetchOnWindowFocus: false } },
});
