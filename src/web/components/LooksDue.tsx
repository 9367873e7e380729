/** Looks at what dries that are due: in the title of the page and as notifications, whichever screen is open. */
import type { Household } from '../../household/model.ts';
import { nextCheck } from '../../kitchen/drying.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { useNow } from '../data/now.ts';
import { useReminders } from '../data/reminders.ts';
import { looksDue } from '../mix/drying-view.ts';

export function LooksDue() {
  const { house } = useMixDraft();
  // While nothing dries, no clock runs.
  return house.dryingRuns.some((run) => nextCheck(run) !== undefined) ? <Reminding house={house} /> : null;
}

function Reminding({ house }: { house: Household }) {
  useReminders(looksDue(house, useNow()));
  return null;
}
