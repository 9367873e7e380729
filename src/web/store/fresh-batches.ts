/** Batches as the server has them, for a page that may have been left open while another device went on. */
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { Household } from '../../household/model.ts';
import { fetchHousehold } from './api.ts';
import { HOUSEHOLD_KEY } from './household-cache.ts';

/** Takes the batches as the server has them: on opening, and whenever the page comes back into sight. */
export function useFreshBatches(): { readonly ready: boolean } {
  const client = useQueryClient();
  const [ready, setReady] = useState(false);
  useEffect(() => {
    let stale = false;
    async function refresh() {
      if (document.visibilityState === 'hidden') return;
      try {
        const { batches } = await fetchHousehold();
        if (!stale) client.setQueryData<Household>(HOUSEHOLD_KEY, (house) => house && { ...house, batches });
      } catch {
        // What is here already is shown; a failed save is told where it happens.
      }
      if (!stale) setReady(true);
    }
    void refresh();
    document.addEventListener('visibilitychange', refresh);
    return () => {
      stale = true;
      document.removeEventListener('visibilitychange', refresh);
    };
  }, [client]);
  return { ready };
}
