/** Weighed: dry, unsure or damp, and what may become of it. What is damp does not go into the cupboard. */
import { useState } from 'react';
import { Button, FieldError, Input, Label, TextField } from 'react-aria-components';
import { driedOn, lotFrom } from '../../household/reckon/drying/dried-lot.ts';
import type { Outcome } from '../../household/reckon/drying/drying-outcome.ts';
import { DAMP_FOOD } from '../../kitchen/advice.ts';
import { CHECK_EVERY } from '../../kitchen/drying/check-times.ts';
import type { DryingRun } from '../../kitchen/model.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { MoistureSample } from './MoistureSample.tsx';
import type { DryParts } from './RunChecks.tsx';
import { RunFacts } from './RunFacts.tsx';
import { RunMark } from './RunMark.tsx';

const HEADS = {
  dry: 'Dry enough to keep',
  unsure: 'Perhaps not dry enough',
  damp: 'Too damp to keep',
} as const;
const MARKS = { dry: 'done', unsure: 'due', damp: 'lost' } as const;

export function DampnessVerdict(parts: DryParts & { outcome: Outcome }) {
  const { line, save, outcome } = parts;
  const { run } = line;
  const { house } = useMixDraft();
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
    <Button className="button strong" onPress={dryOn}>
      Dry on
    </Button>
  );

  // The lot is there, and the second step failed: what is left is to end the run.
  if (line.dried && outcome.ok)
    return (
      <section className="dry-verdict unsure" aria-label="Verdict">
        <h3 tabIndex={-1}>
          <RunMark kind="due" /> Not ended yet
        </h3>
        <p>{line.dried.name} is kept, but the end of this run was not saved.</p>
        <Button
          className="button strong"
          onPress={() => save.mutate({ ...run, endedAt: new Date().toISOString() }, run)}
        >
          End the run
        </Button>
      </section>
    );

  if (!outcome.ok)
    return (
      <section className="dry-verdict unsure" aria-label="Verdict">
        <h3 tabIndex={-1}>
          <RunMark kind="due" /> Not known yet
        </h3>
        <p>{outcome.fault}</p>
        {outcome.needsSample && <MoistureSample {...parts} />}
        <div className="button-row">{dryOnButton}</div>
      </section>
    );

  const { keep } = outcome.value;
  return (
    <section className={`dry-verdict ${keep.state}`} aria-label="Verdict">
      <h3 tabIndex={-1}>
        <RunMark kind={MARKS[keep.state]} /> {HEADS[keep.state]}
      </h3>
      <p>{keep.sentence}</p>
      <RunFacts run={run} dried={outcome.value} />
      {keep.state !== 'dry' && (
        <p className="notice-line">
          {DAMP_FOOD.sentence} <span className="source">({DAMP_FOOD.source})</span>
        </p>
      )}
      {keep.state === 'dry' && (
        <Button className="big-button" onPress={() => settle({})}>
          Put it into the cupboard
        </Button>
      )}
      {keep.state === 'damp' && (
        <>
          <div className="button-row">
            {dryOnButton}
            <Button className="button" onPress={() => settle({}, 'damp')}>
              Put it into the freezer
            </Button>
          </div>
          <p className="hint">
            It does not go into the cupboard. Dried on, the next look is {CHECK_EVERY.hours} h from now. From
            the freezer it can be dried another day; it is not weighed out till then.
          </p>
        </>
      )}
      {keep.state === 'unsure' && (
        <>
          <div className="button-row">
            {dryOnButton}
            <Button className="button" onPress={() => settle({}, 'dry')}>
              Put it into the freezer
            </Button>
          </div>
          <details open={run.sample !== undefined}>
            <summary>Dry out a small sample to be sure</summary>
            <MoistureSample {...parts} />
          </details>
          <details>
            <summary>Keep it all the same</summary>
            <TextField
              value={note}
              onChange={(text) => {
                setNote(text);
                setTried(false);
              }}
              isInvalid={tried && note.trim() === ''}
              validationBehavior="aria"
            >
              <Label>Why you keep it, and how you watch it</Label>
              <Input
                autoComplete="off"
                maxLength={500}
                placeholder="every piece breaks; in a glass for a week"
              />
              <FieldError className="field-error">
                Write a note that says why; it stays with the run.
              </FieldError>
            </TextField>
            <Button
              className="button"
              onPress={() => {
                if (note.trim() === '') {
                  setTried(true);
                  focusWhenThere('.dry-verdict details input[aria-invalid]');
                } else settle({ accepted: { note: note.trim(), on: today() } });
              }}
            >
              Keep it under this note
            </Button>
          </details>
        </>
      )}
      {keep.state === 'dry' && (
        <div className="button-row">
          <Button className="quiet-button" onPress={dryOn}>
            Dry on all the same
          </Button>
        </div>
      )}
      <Failed error={lots.error} />
    </section>
  );
}
