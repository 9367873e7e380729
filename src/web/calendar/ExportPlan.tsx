/** The plan as a file for other calendars, with the checks of what dries. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { checkMoments } from '../../household/reckon/drying/drying-checks.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import type { FedBeside } from '../../kitchen/calendar/fed-beside.ts';
import { words } from '../../words/words.ts';
import { withRandomIds } from '../shared/random-ids.ts';
import { saveAs } from '../shared/save-as.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import '../shared/styles/ticks.css';

export function ExportPlan({ view, beside }: { view: BatchCalendar; beside: readonly FedBeside[] }) {
  const { house } = useMixDraft();
  const t = words().calendar.file;
  const [reminders, setReminders] = useState(false);
  const [said, setSaid] = useState<{ words: string; fault?: true }>();

  async function save() {
    try {
      // Only who asks for the file has to wait for what writes it.
      const { besideEntries, dryingEntries, planAsIcs } = await import('../../kitchen/calendar/icalendar.ts');
      const stamp = new Date().toISOString();
      const checks = runLines(house)
        .filter(({ state }) => state === 'drying')
        .flatMap(({ run, name }) => dryingEntries({ id: run.id, name }, checkMoments(run)))
        .filter((e) => e.at > stamp);
      const text = withRandomIds(() =>
        planAsIcs(view.plan, { stamp, reminders }, [...besideEntries(beside), ...checks]),
      );
      const name = `${t.fileName(view.plan.input.name.replace(/\s+/g, '-'))}.ics`;
      saveAs(name, 'text/calendar', text);
      setSaid({ words: t.saved(name) });
    } catch (error) {
      setSaid({
        words: t.failed(error instanceof Error ? error.message : String(error)),
        fault: true,
      });
    }
  }

  return (
    <section aria-label={t.title} className="cal-export">
      <h2>{t.title}</h2>
      <p className="hint">{t.about}</p>
      <label className="tick">
        <input type="checkbox" checked={reminders} onChange={(e) => setReminders(e.target.checked)} />
        <span>{t.reminder}</span>
      </label>
      <Button className="button" onPress={() => void save()}>
        {t.save}
      </Button>
      <p aria-live="polite" className={said?.fault ? 'field-error' : 'hint'}>
        {said?.words}
      </p>
    </section>
  );
}
