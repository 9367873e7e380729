/** A small sample dried till it loses no more weight: it says the water, exact but for the scale. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { sentence } from '../../household/reckon/drying/drying-outcome.ts';
import { sampleAdvice } from '../../kitchen/advice.ts';
import { freshMoistureBySample, moistureOfSample } from '../../kitchen/drying/moisture.ts';
import { asText, focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import type { DryParts } from './RunChecks.tsx';

/** Of the dried food once the run is weighed, else of the fresh one. */
export function MoistureSample({ line: { run }, scaleStep, save }: DryParts) {
  const kept = run.sample;
  const [before, setBefore] = useState(asText(kept?.before, 2));
  const [dry, setDry] = useState(asText(kept?.dry, 2));
  const [step, setStep] = useState(asText(kept?.step ?? scaleStep, 3));
  const [tried, setTried] = useState(false);
  const of = run.gramsAfter;
  const read = {
    before: readAbove0(before, 'Sample before'),
    dry: readAbove0(dry, 'Sample dried out'),
    step: readAbove0(step, 'The scale shows steps of'),
  };
  const sample = read.before.value !== undefined &&
    read.dry.value !== undefined && {
      before: read.before.value,
      dry: read.dry.value,
      ...(read.step.value !== undefined && { step: read.step.value }),
      ...(of !== undefined && { of }),
    };
  const contradiction = sample ? faultOf(() => freshMoistureBySample(sample, run.gramsBefore)) : undefined;
  const shown = (fault: string | undefined) => (tried ? fault : undefined);

  function keep(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    setTried(true);
    if (!sample || contradiction || read.step.fault) return focusFault(event.currentTarget);
    save.mutate({ ...run, sample }, run);
  }

  const advice = sampleAdvice(of === undefined);
  return (
    <Form className="dry-sample" onSubmit={keep}>
      <p>
        {advice.sentence} <span className="source">({advice.source})</span>.{' '}
        {of !== undefined && 'Put it back with the rest then.'}
      </p>
      <div className="fields">
        <LabelledNumber
          label="Sample before"
          unit="g"
          value={before}
          onChange={setBefore}
          error={shown(read.before.fault)}
        />
        <LabelledNumber
          label="Sample dried out"
          unit="g"
          value={dry}
          onChange={setDry}
          error={shown(read.dry.fault ?? contradiction)}
          hint={
            sample && !contradiction
              ? `It held ${asText(moistureOfSample(sample.before, sample.dry))} % water.`
              : undefined
          }
        />
        <LabelledNumber
          label="The scale shows steps of"
          unit="g"
          value={step}
          onChange={setStep}
          error={shown(read.step.fault)}
        />
      </div>
      <div className="button-row">
        <Button type="submit" className="button">
          Count with the sample
        </Button>
        {kept && (
          <Button
            className="quiet-button"
            onPress={() => {
              const { sample: _, ...rest } = run;
              save.mutate(rest, run);
            }}
          >
            Leave the sample out
          </Button>
        )}
      </div>
      <p className="hint" aria-live="polite">
        {kept && 'The sample counts in place of the table; all that is left of the doubt is the scale.'}
      </p>
    </Form>
  );
}

function faultOf(work: () => unknown): string | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return sentence(error.message);
    throw error;
  }
}
