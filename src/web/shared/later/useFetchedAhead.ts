/** Once the screen stands and the page is at rest, everything else is fetched, so that the server may go away. */
import { useEffect } from 'react';
import { PARTS } from '../../../words/parts.ts';
import { fetchTexts } from '../words/texts.ts';
import { askAnew, fetchAll } from './later.ts';
import { whenIdle } from './when-idle.ts';

/** From the screen's standing to fetching the rest, ms; our own choice: what the keeper came for is drawn first. */
const REST = 2000;

/** @param stands whether the screen stands @param last what is done once all is fetched */
export function useFetchedAhead(stands: boolean, last: () => Promise<void>): void {
  useEffect(() => {
    if (!stands) return;
    const timer = setTimeout(() => whenIdle(() => void ahead(last)), REST);
    return () => clearTimeout(timer);
  }, [stands, last]);
}

async function ahead(last: () => Promise<void>): Promise<void> {
  // Texts first, since whatever is pressed may have something to say.
  for (const part of PARTS) await fetchTexts(part).catch(askAnew);
  await fetchAll();
  await last();
}
