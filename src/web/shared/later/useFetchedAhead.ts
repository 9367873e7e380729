/** Once the screen stands and the page is at rest, everything else is fetched, so that the server may go away. */
import { useEffect } from 'react';
import { fetchAll } from './later.ts';
import { whenIdle } from './when-idle.ts';

/** From the screen's standing to fetching the rest, ms; our own choice: what the keeper came for is drawn first. */
const REST = 2000;

export function useFetchedAhead(stands: boolean): void {
  useEffect(() => {
    if (!stands) return;
    const timer = setTimeout(() => whenIdle(() => void fetchAll()), REST);
    return () => clearTimeout(timer);
  }, [stands]);
}
