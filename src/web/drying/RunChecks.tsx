/** While it dries: when to check next, the checks that were made, and reminders elsewhere. */
import { type FormEvent, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { checkMoments } from '../../household/reckon/drying/drying-checks.ts';
import { outcomeOf } from '../../household/reckon/drying/drying-outcome.ts';
import type { RunLine } from '../../household/reckon/drying/drying-runs.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useNotifications } from '../shared/hooks/reminders.ts';
import { clockOf } from '../shared/words/clock.ts';
import type { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { checkLine } from './checks-due.ts';
import { downloadChecks } from './checks-file.ts';
import { focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import { RunMark } from './RunMark.tsx';
import { sayWater } from './view-model.ts';
import '../shared/lots/lots.css';

/** What the page of a run hands to its parts. */
export interface DryParts {
  readonly line: RunLine;
  readonly fresh: FreshFood | undefined;
  readonly scaleStep: number;
  readonly now: number;
  readonly save: ReturnType<typeof useSave<'dryingRuns'>>;
}

export function RunChecks({ line, fresh, scaleStep, now, save }: DryParts) {
  const { run, name } = line;
  const { house } = useMixDraft();
  const [grams, setGrams] = useState('');
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const [fault, setFault] = useState('');
  const notes = useNotifications();
  const check = checkLine(run, now)!;
  const t = words().drying.check;
  const read = readAbove0(grams, t.weightShort, { optional: true, measure: 'mass' });
  const so =
    read.value === undefined ? undefined : outcomeOf(house, run, fresh, { scaleStep, grams: read.value });
  // Without the fresh food a weight is only kept; where it is known, it has to fit.
  const error = read.fault ?? (so && !so.ok && fresh && !so.needsSample ? so.fault : undefined);

  function record(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    if (error !== undefined) {
      setTried(true);
      return focusFault(event.currentTarget);
    }
    const check = {
      at: new Date().toISOString(),
      ...(read.value !== undefined && { grams: read.value }),
      ...(note.trim() && { note: note.trim() }),
    };
    save.mutate({ ...run, checks: [...run.checks, check] }, run, {
      onSuccess: () => {
        setGrams('');
        setNote('');
        setTried(false);
        focusWhenThere('.dry-run h2');
      },
    });
  }

  return (
    <>
      <section className={`dry-next ${check.due ? 'due' : ''}`} aria-label={t.section}>
        <p className="dry-next-words">
          <RunMark kind={check.due ? 'due' : 'drying'} />
          <strong>{check.words}</strong>
        </p>
        <Form onSubmit={record}>
          <div className="fields">
            <LabelledNumber
              label={t.weight}
              measure="mass"
              value={grams}
              onChange={setGrams}
              hint={so?.ok ? t.waterNow(sayWater(so.value)) : t.noTrays}
              error={tried ? error : undefined}
            />
            <TextField value={note} onChange={setNote}>
              <Label>{t.note}</Label>
              <Input autoComplete="off" maxLength={200} placeholder={t.noteExample} />
            </TextField>
          </div>
          <Button type="submit" className={check.due ? 'button strong' : 'button'}>
            {t.done}
          </Button>
        </Form>
      </section>
      {run.checks.length > 0 && (
        <section aria-label={t.soFar}>
          <h3>{t.soFar}</h3>
          <ul className="reach-list">
            {run.checks.map((check) => {
              const at =
                check.grams === undefined
                  ? undefined
                  : outcomeOf(house, run, fresh, { scaleStep, grams: check.grams });
              const when = clockOf(check.at, now);
              const line =
                check.grams === undefined
                  ? when
                  : at?.ok
                    ? t.atWater(when, sayGrams(check.grams), sayWater(at.value))
                    : t.atGrams(when, sayGrams(check.grams));
              return <li key={check.at}>{check.note ? t.withNote(line, check.note) : line}</li>;
            })}
          </ul>
        </section>
      )}
      <div className="button-row">
        <Button
          className="quiet-button"
          onPress={() => {
            setFault('');
            downloadChecks(run, name, checkMoments(run)).catch((e) =>
              setFault(e instanceof Error ? e.message : String(e)),
            );
          }}
        >
          {t.asFile}
        </Button>
        {notes.state === 'default' && (
          <Button className="quiet-button" onPress={notes.ask}>
            {t.notify}
          </Button>
        )}
      </div>
      <p className="hint" aria-live="polite">
        {[
          ...(notes.state === 'granted' ? [t.notified] : []),
          ...(notes.state === 'denied' ? [t.notNotified] : []),
          ...(fault ? [t.fileFailed(fault)] : []),
        ].join(' ')}
      </p>
    </>
  );
}
