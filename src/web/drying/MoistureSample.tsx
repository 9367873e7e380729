/** A small sample dried till it loses no more weight: it says the water, exact but for the scale. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { sentence } from '../../household/reckon/drying/drying-outcome.ts';
import { freshMoistureBySample, moistureOfSample } from '../../kitchen/drying/moisture.ts';
import { words } from '../../words/words.ts';
import { asText, focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import type { DryParts } from './RunChecks.tsx';

/** How much of it, g, and how hot it is dried out, °C (common practice, no source). */
const SAMPLE = { grams: 20, celsius: 100 };

/** Of the dried food once the run is weighed, else of the fresh one. */
export function MoistureSample({ line: { run }, scaleStep, save }: DryParts) {
  const { drying, kitchen } = words();
  const t = drying.sample;
  const kept = run.sample;
  const [before, setBefore] = useState(asText(kept?.before, 2, 'mass'));
  const [dry, setDry] = useState(asText(kept?.dry, 2, 'mass'));
  const [step, setStep] = useState(asText(kept?.step ?? scaleStep, 3, 'mass'));
  const [tried, setTried] = useState(false);
  const of = run.gramsAfter;
  const read = {
    before: readAbove0(before, t.before, { measure: 'mass' }),
    dry: readAbove0(dry, t.dry, { measure: 'mass' }),
    step: readAbove0(step, t.step, { measure: 'mass' }),
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

  const advice = kitchen.sample;
  const say = of === undefined ? advice.freshSentence : advice.sentence;
  return (
    <Form className="dry-sample" onSubmit={keep}>
      <p>
        {say(SAMPLE.grams, SAMPLE.celsius)} <span className="source">({advice.source})</span>.{' '}
        {of !== undefined && t.putBack}
      </p>
      <div className="fields">
        <LabelledNumber
          label={t.before}
          measure="mass"
          value={before}
          onChange={setBefore}
          error={shown(read.before.fault)}
        />
        <LabelledNumber
          label={t.dry}
          measure="mass"
          value={dry}
          onChange={setDry}
          error={shown(read.dry.fault ?? contradiction)}
          hint={sample && !contradiction ? t.held(moistureOfSample(sample.before, sample.dry)) : undefined}
        />
        <LabelledNumber
          label={t.step}
          measure="mass"
          value={step}
          onChange={setStep}
          error={shown(read.step.fault)}
        />
      </div>
      <div className="button-row">
        <Button type="submit" className="button">
          {t.count}
        </Button>
        {kept && (
          <Button
            className="quiet-button"
            onPress={() => {
              const { sample: _, ...rest } = run;
              save.mutate(rest, run);
            }}
          >
            {t.leaveOut}
          </Button>
        )}
      </div>
      <p className="hint" aria-live="polite">
        {kept && t.counts}
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
