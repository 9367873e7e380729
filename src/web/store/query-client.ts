/** The one query client of the page: what the worker and the server were asked. */
import { QueryClient } from '@tanstack/react-query';

/** The server and the worker may be on this machine: both are asked also where the browser says it is offline. */
export const queries = new QueryClient({
  defaultOptions: {
    queries: { retry: 2, refetchOnWindowFocus: false, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
});
