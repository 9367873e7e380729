/** Looks at what dries that are due: in the title of the page and as notifications, whichever screen is open. */
import { useMixDraft } from '../data/mix-draft.tsx';
import { useNow } from '../data/now.ts';
import { useReminders } from '../data/reminders.ts';
import { looksDue } from '../mix/drying-view.ts';

export function LooksDue() {
  const { house } = useMixDraft();
  useReminders(looksDue(house, useNow()));
  return null;
}
