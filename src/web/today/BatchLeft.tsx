/** What is left of the batch being fed: weighed, or all eaten. The day on which it runs out follows. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { capital } from '../../formulation/explain/sentences.ts';
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { leftOn } from '../../household/reckon/batch/present-batch.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useSave } from '../store/household.ts';

export function BatchLeft({ view, day }: { view: BatchCalendar | undefined; day: Day }) {
  const save = useSave('batches');
  const [said, setSaid] = useState<{ words: string; before: Batch; after: Batch }>();
  const present = view?.present;
  if (!present && !said) return null;

  async function keep(before: Batch, next: Batch, words: string) {
    try {
      await save.mutateAsync(next, before);
      setSaid({ words, before, after: next });
    } catch {
      setSaid(undefined); // `save.error` says why
    }
  }

  return (
    <section className="today-left" aria-label="What is left">
      <h2 tabIndex={-1}>What is left{present && ` of ${present.name}`}</h2>
      {present && <Counted view={view} day={day} />}
      {present && (
        <div className="today-weigh">
          <NumberInput
            key={present.batch.id}
            label={`Weigh what is left of ${present.name}`}
            unit="g"
            min={0}
            max={Math.ceil(gramsMade(present.batch))}
            step={1}
            decimals={1}
            placeholder="not weighed today"
            hint="Before today’s food is taken."
            value={present.counted.weighed && present.counted.on === day ? present.counted.grams : undefined}
            onCommit={(grams) =>
              grams !== undefined &&
              void keep(
                present.batch,
                { ...present.batch, left: { grams, on: day } },
                grams === 0 ? `${present.name}: all eaten.` : `${sayGrams(grams)} of ${present.name} kept.`,
              )
            }
          />
          <Button
            className="button"
            onPress={() => {
              void keep(
                present.batch,
                { ...present.batch, left: { grams: 0, on: day } },
                `${present.name}: all eaten.`,
              );
              focusWhenThere('.today-left h2');
            }}
          >
            All eaten
          </Button>
        </div>
      )}
      <div className="button-row">
        <p aria-live="polite" className={save.error ? 'field-error' : 'hint'}>
          {save.error ? save.error.message : said && capital(said.words)}
        </p>
        {said && (
          <Button
            className="quiet-button small"
            onPress={() => {
              save.mutate(said.before, said.after);
              setSaid(undefined);
              focusWhenThere('.today-left h2');
            }}
          >
            Undo
          </Button>
        )}
      </div>
    </section>
  );
}

function Counted({ view, day }: { view: BatchCalendar; day: Day }) {
  const { counted, name } = view.present!;
  const left = leftOn(view.present!, day);
  return (
    <p>
      {sayGrams(counted.grams)} of {name} {counted.weighed ? 'were left' : 'were made'} on{' '}
      {dayInWords(counted.on, day)}
      {left !== undefined && `; by what is eaten, about ${sayGrams(Math.round(left))} should be left today`}.
    </p>
  );
}
