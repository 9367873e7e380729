/** The end of a run: the weight after, and a sample where the fresh food's water is not known. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { focusWhenThere } from '../data/focus.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { outcomeOf } from '../mix/drying-view.ts';
import { DryField, focusFault, readAbove0 } from './DryField.tsx';
import type { DryParts } from './DryLooks.tsx';
import { DrySample } from './DrySample.tsx';

export function DryEnd({ line, fresh, scaleStep, save, now }: DryParts) {
  const { run } = line;
  const { house } = useMixDraft();
  const [grams, setGrams] = useState('');
  const [tried, setTried] = useState(false);
  const read = readAbove0(grams, 'Weight after');
  const outcome =
    read.value === undefined ? undefined : outcomeOf(house, run, fresh, { scaleStep, grams: read.value });
  const fault = read.fault ?? (outcome && !outcome.ok && !outcome.needsSample ? outcome.fault : undefined);
  const unknown = outcomeOf(house, run, fresh, { scaleStep, grams: run.gramsBefore / 2 });
  const needsSample = !unknown.ok && unknown.needsSample === true;

  function weigh(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    if (fault !== undefined || read.value === undefined) return focusFault(event.currentTarget);
    save.mutate({ ...run, gramsAfter: read.value }, { onSuccess: () => focusWhenThere('.dry-verdict h3') });
  }

  return (
    <section className="dry-end" aria-label="Done drying">
      <h3>Done?</h3>
      <p>Let it cool, then weigh all of it without the trays.</p>
      <Form onSubmit={weigh}>
        <div className="fields">
          <DryField
            label="Weight after"
            unit="g"
            value={grams}
            onChange={(text) => {
              setGrams(text);
              setTried(false);
            }}
            error={tried ? fault : undefined}
          />
        </div>
        <Button type="submit" className="button">
          Weigh it
        </Button>
      </Form>
      {needsSample ? (
        <>
          <p className="notice-line">{!unknown.ok && unknown.fault}</p>
          <DrySample line={line} fresh={fresh} scaleStep={scaleStep} save={save} now={now} />
        </>
      ) : (
        <details>
          <summary>{run.sample ? 'A sample was dried out' : 'Dry out a sample of the fresh food'}</summary>
          <DrySample line={line} fresh={fresh} scaleStep={scaleStep} save={save} now={now} />
        </details>
      )}
    </section>
  );
}
