/** Checks of what dries that are due: in the title of the page and as notifications, whichever screen is open. */
import type { Household } from '../../household/model.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import { checksDue } from '../drying/checks-due.ts';
import { useNow } from '../shared/hooks/now.ts';
import { useReminders } from '../shared/hooks/reminders.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

export function ChecksDue() {
  const { house } = useMixDraft();
  // While nothing dries, no clock runs.
  return house.dryingRuns.some((run) => nextCheck(run) !== undefined) ? <Reminding house={house} /> : null;
}

function Reminding({ house }: { house: Household }) {
  useReminders(checksDue(house, useNow()));
  return null;
}
