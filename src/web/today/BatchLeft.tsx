/** What is left of a batch being fed: weighed, or all eaten. The day on which it runs out follows. */
import { useState } from 'react';
import { capital } from '../../formulation/explain/sentences.ts';
import { gramsMade } from '../../household/reckon/batch/batches.ts';
import { leftOn, type PresentBatch } from '../../household/reckon/batch/present-batch.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { useSave } from '../store/household.ts';

/** @param present absent where the batch before it was all eaten, and none is fed now */
export function BatchLeft({ present, day }: { present: PresentBatch | undefined; day: Day }) {
  const save = useSave('batches');
  const [said, setSaid] = useState<{ words: string; before: Batch; after: Batch }>();
  if (!present && !said) return null;
  const t = words().today.left;

  // Said at once, as it is seen at once: until it is kept, the way back would otherwise be that of the press before.
  async function keep(before: Batch, next: Batch, words: string) {
    const now = { words, before, after: next };
    setSaid(now);
    try {
      await save.mutateAsync(next, before);
    } catch {
      setSaid((s) => (s === now ? undefined : s)); // `save.error` says why
    }
  }

  return (
    <section className="today-left" aria-label={t.title}>
      <h2 tabIndex={-1}>{present ? t.of(present.name) : t.title}</h2>
      {present && <Counted present={present} day={day} />}
      {present && (
        <div className="today-weigh">
          <NumberInput
            key={present.batch.id}
            label={t.weigh(present.name)}
            measure="mass"
            min={0}
            max={Math.ceil(gramsMade(present.batch))}
            step={1}
            decimals={1}
            placeholder={t.notWeighed}
            hint={t.before}
            value={present.counted.weighed && present.counted.on === day ? present.counted.grams : undefined}
            onCommit={(grams) =>
              grams !== undefined &&
              void keep(
                present.batch,
                { ...present.batch, left: { grams, on: day } },
                grams === 0 ? t.saidEaten(present.name) : t.said(grams, present.name),
              )
            }
          />
          <Button
            className="button"
            onPress={() => {
              void keep(
                present.batch,
                { ...present.batch, left: { grams: 0, on: day } },
                t.saidEaten(present.name),
              );
              focusWhenThere('.today-left h2');
            }}
          >
            {t.allEaten}
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
            {words().common.undo}
          </Button>
        )}
      </div>
    </section>
  );
}

function Counted({ present, day }: { present: PresentBatch; day: Day }) {
  const { counted, name } = present;
  const left = leftOn(present, day);
  const { today: t, figures: f } = words();
  const on = f.day(counted.on, day);
  const about = left === undefined ? undefined : Math.round(left);
  const { made, madeAbout, weighed, weighedAbout } = t.left;
  const say =
    about === undefined
      ? (counted.weighed ? weighed : made)(counted.grams, name, on)
      : (counted.weighed ? weighedAbout : madeAbout)(counted.grams, name, on, about);
  return <p>{say}</p>;
}
