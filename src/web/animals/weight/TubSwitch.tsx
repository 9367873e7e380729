/** Whether it is weighed in a tub: the tub is weighed once, and from then on taken off. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import type { Weighing } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { useSave } from '../../store/household.ts';
import '../../shared/styles/ticks.css';

export function TubSwitch({ animal, weighings }: { animal: Animal; weighings: readonly Weighing[] }) {
  const t = words().bodyWeight.tub;
  const save = useSave('animals');
  const [asking, setAsking] = useState(false);
  const [grams, setGrams] = useState<number>();
  const before = lastTub(weighings);

  function keep(tub: number | undefined) {
    const { tub: _, ...rest } = animal;
    save.mutate(tub === undefined ? rest : { ...rest, tub }, animal);
    setAsking(false);
    setGrams(undefined);
    focusWhenThere('.tub-switch input[type=checkbox]');
  }
  function turn(on: boolean) {
    if (!on) return animal.tub === undefined ? setAsking(false) : keep(undefined);
    setAsking(true);
    focusWhenThere('.tub-weight input');
  }
  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const field = event.currentTarget.querySelector<HTMLElement>('input');
    if (grams === undefined || field?.ariaInvalid === 'true') return field?.focus();
    keep(grams);
  }

  const on = asking || animal.tub !== undefined;
  return (
    <div className="tub-switch">
      <label className="tick">
        <input type="checkbox" checked={on} onChange={(e) => turn(e.target.checked)} />
        {t.switch}
      </label>
      {!on && <p className="hint">{t.hint}</p>}
      {animal.tub !== undefined && !asking && (
        <p className="hint">
          {t.now(animal.tub)}{' '}
          <Button className="quiet-button small" onPress={() => turn(true)}>
            {t.again}
          </Button>
        </p>
      )}
      {asking && (
        <Form className="tub-weight" onSubmit={submit}>
          <NumberInput
            label={t.weigh}
            measure="mass"
            min={0.1}
            max={20_000}
            step={1}
            value={grams}
            onCommit={setGrams}
            hint={t.once}
          />
          <div className="button-row">
            <Button type="submit" className="button">
              {t.keep}
            </Button>
            {before !== undefined && (
              <Button className="quiet-button" onPress={() => keep(before)}>
                {t.same(before)}
              </Button>
            )}
          </div>
        </Form>
      )}
      <Failed error={save.error} />
    </div>
  );
}

/** g of the tub that was used last. */
function lastTub(weighings: readonly Weighing[]): number | undefined {
  return weighings.filter((w) => w.tub !== undefined).sort((a, b) => (a.at < b.at ? 1 : -1))[0]?.tub;
}
