/** Weighed: dry, unsure or damp, and what may become of it. What is damp does not go into the cupboard. */
import { useState } from 'react';
import { Button, FieldError, Input, Label, TextField } from 'react-aria-components';
import { driedOn, lotFrom } from '../../household/reckon/drying/dried-lot.ts';
import type { Outcome } from '../../household/reckon/drying/drying-outcome.ts';
import { CHECK_EVERY } from '../../kitchen/drying/check-times.ts';
import type { DryingRun } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { MoistureSample } from './MoistureSample.tsx';
import type { DryParts } from './RunChecks.tsx';
import { RunFacts } from './RunFacts.tsx';
import { RunMark } from './RunMark.tsx';

const MARKS = { dry: 'done', unsure: 'due', damp: 'lost' } as const;

export function DampnessVerdict(parts: DryParts & { outcome: Outcome }) {
  const { line, save, outcome } = parts;
  const { run } = line;
  const { house } = useMixDraft();
  const t = words().drying.verdict;
  const { dampFood } = words().kitchen;
  const lots = useSave('lots');
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const busy = save.isPending || lots.isPending;

  /** The lot first: should the second step fail, it is made again as the same lot. */
  async function end(more: Partial<DryingRun>, frozen?: 'dry' | 'damp') {
    if (!outcome.ok || busy) return;
    const { moisture } = outcome.value;
    const lot = lotFrom(house, run, { moisture, on: today(), ...(frozen && { frozen }) });
    await lots.mutateAsync(
      lot,
      house.lots.find((l) => l.id === lot.id),
    );
    await save.mutateAsync({ ...run, ...more, endedAt: new Date().toISOString() }, run);
    focusWhenThere('.dry-run h2');
  }
  const settle = (more: Partial<DryingRun>, frozen?: 'dry' | 'damp') =>
    void end(more, frozen).catch(() => {});
  function dryOn() {
    if (busy) return;
    save.mutate(driedOn(run, new Date().toISOString()), run);
    focusWhenThere('.dry-run h2');
  }
  const dryOnButton = (
    <Button className="button strong" isDisabled={busy} onPress={dryOn}>
      {t.dryOn}
    </Button>
  );

  // The lot is there, and the second step failed: what is left is to end the run.
  if (line.dried && outcome.ok)
    return (
      <section className="dry-verdict unsure" aria-label={t.section}>
        <h3 tabIndex={-1}>
          <RunMark kind="due" /> {t.notEnded}
        </h3>
        <p>{t.keptNotEnded(line.dried.name)}</p>
        <Button
          className="button strong"
          onPress={() => save.mutate({ ...run, endedAt: new Date().toISOString() }, run)}
        >
          {t.end}
        </Button>
      </section>
    );

  if (!outcome.ok)
    return (
      <section className="dry-verdict unsure" aria-label={t.section}>
        <h3 tabIndex={-1}>
          <RunMark kind="due" /> {t.notKnown}
        </h3>
        <p>{outcome.fault}</p>
        {outcome.needsSample && <MoistureSample {...parts} />}
        <div className="button-row">{dryOnButton}</div>
      </section>
    );

  const { keep } = outcome.value;
  return (
    <section className={`dry-verdict ${keep.state}`} aria-label={t.section}>
      <h3 tabIndex={-1}>
        <RunMark kind={MARKS[keep.state]} /> {t[keep.state]}
      </h3>
      <p>{keep.sentence}</p>
      <RunFacts run={run} dried={outcome.value} />
      {keep.state !== 'dry' && (
        <p className="notice-line">
          {dampFood.sentence} <span className="source">({dampFood.source})</span>
        </p>
      )}
      {keep.state === 'dry' && (
        <Button className="big-button" isDisabled={busy} onPress={() => settle({})}>
          {t.toStock}
        </Button>
      )}
      {keep.state === 'damp' && (
        <>
          <div className="button-row">
            {dryOnButton}
            <Button className="button" isDisabled={busy} onPress={() => settle({}, 'damp')}>
              {t.toFreezer}
            </Button>
          </div>
          <p className="hint">{t.dampMeans(CHECK_EVERY.hours)}</p>
        </>
      )}
      {keep.state === 'unsure' && (
        <>
          <div className="button-row">
            {dryOnButton}
            <Button className="button" isDisabled={busy} onPress={() => settle({}, 'dry')}>
              {t.toFreezer}
            </Button>
          </div>
          <details open={run.sample !== undefined}>
            <summary>{t.sampleToBeSure}</summary>
            <MoistureSample {...parts} />
          </details>
          <details>
            <summary>{t.keepAnyway}</summary>
            <TextField
              value={note}
              onChange={(text) => {
                setNote(text);
                setTried(false);
              }}
              isInvalid={tried && note.trim() === ''}
              validationBehavior="aria"
            >
              <Label>{t.whyKeep}</Label>
              <Input autoComplete="off" maxLength={500} placeholder={t.whyExample} />
              <FieldError className="field-error">{t.sayWhy}</FieldError>
            </TextField>
            <Button
              className="button"
              isDisabled={busy}
              onPress={() => {
                if (note.trim() === '') {
                  setTried(true);
                  focusWhenThere('.dry-verdict details input[aria-invalid]');
                } else settle({ accepted: { note: note.trim(), on: today() } });
              }}
            >
              {t.keepUnderNote}
            </Button>
          </details>
        </>
      )}
      {keep.state === 'dry' && (
        <div className="button-row">
          <Button className="quiet-button" isDisabled={busy} onPress={dryOn}>
            {t.dryOnAnyway}
          </Button>
        </div>
      )}
      <Failed error={lots.error} />
    </section>
  );
}
