/** The worker starts while the page is read, so that the first question finds it with its table and its solver. */
import { useEffect } from 'react';
import { whenIdle } from '../shared/later/when-idle.ts';
import { warm } from './engine.ts';

/** @param stands whether the screen is drawn: what the keeper came for is drawn first */
export function useWarmed(stands: boolean): void {
  useEffect(() => {
    if (stands) whenIdle(() => warm(['mixes']));
  }, [stands]);
}
