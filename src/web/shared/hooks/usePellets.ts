/** What is fed from packs beside the mixes: what is left of it and until when it lasts, worked out when the household or the day changes. */
import { useMemo } from 'react';
import { batchesFor } from '../../../household/reckon/batch/batches.ts';
import { type PelletStock, pelletStocks } from '../../../household/reckon/cupboard/pellet-stock.ts';
import type { Day } from '../../../kitchen/model.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { dayAt } from '../today.ts';
import { useChosenShares } from './useChosenShares.ts';

/** Undefined while the shares beside a mix are being worked out. */
export function usePellets(day: Day): readonly PelletStock[] | undefined {
  const { house } = useMixDraft();
  const fed = house.mixes.flatMap((mix) => batchesFor(house, mix).at(-1) ?? []);
  const { chosenFor, working } = useChosenShares([...house.mixes, ...fed].map((m) => m.problem));
  return useMemo(
    () => (working ? undefined : pelletStocks(house, { today: day, dayAt, chosenFor })),
    [house, day, chosenFor, working],
  );
}
