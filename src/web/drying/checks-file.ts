/** The checks of a drying run as a file for other calendars, made on the page. */
import type { DryingRun, Moment } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { withRandomIds } from '../shared/random-ids.ts';
import { saveAs } from '../shared/save-as.ts';

/** Downloads the checks as an .ics file with reminders. @throws Error where the browser cannot make it */
export async function downloadChecks(
  run: Pick<DryingRun, 'id'>,
  name: string,
  times: readonly Moment[],
): Promise<void> {
  const { asIcs, dryingEntries } = await import('../../kitchen/calendar/icalendar.ts');
  const text = withRandomIds(() =>
    asIcs(dryingEntries({ id: run.id, name }, times), { stamp: new Date().toISOString(), reminders: true }),
  );
  saveAs(words().drying.check.fileName, 'text/calendar', text);
}
