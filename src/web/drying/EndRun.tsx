/** The end of a run: the weight after, and a sample where the fresh food's water is not known. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { outcomeOf } from '../../household/reckon/drying/drying-outcome.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import { MoistureSample } from './MoistureSample.tsx';
import type { DryParts } from './RunChecks.tsx';

export function EndRun({ line, fresh, scaleStep, save, now }: DryParts) {
  const { run } = line;
  const { house } = useMixDraft();
  const [grams, setGrams] = useState('');
  const [tried, setTried] = useState(false);
  const t = words().drying.end;
  const read = readAbove0(grams, t.weight, { measure: 'mass' });
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
    save.mutate({ ...run, gramsAfter: read.value }, run, {
      onSuccess: () => focusWhenThere('.dry-verdict h3'),
    });
  }

  return (
    <section className="dry-end" aria-label={t.section}>
      <h3>{t.title}</h3>
      <p>{t.how}</p>
      <Form onSubmit={weigh}>
        <div className="fields">
          <LabelledNumber
            label={t.weight}
            measure="mass"
            value={grams}
            onChange={(text) => {
              setGrams(text);
              setTried(false);
            }}
            error={tried ? fault : undefined}
          />
        </div>
        <Button type="submit" className="button">
          {t.weigh}
        </Button>
      </Form>
      {needsSample ? (
        <>
          <p className="notice-line">{!unknown.ok && unknown.fault}</p>
          <MoistureSample line={line} fresh={fresh} scaleStep={scaleStep} save={save} now={now} />
        </>
      ) : (
        <details>
          <summary>{run.sample ? t.sampleDone : t.sample}</summary>
          <MoistureSample line={line} fresh={fresh} scaleStep={scaleStep} save={save} now={now} />
        </details>
      )}
    </section>
  );
}
