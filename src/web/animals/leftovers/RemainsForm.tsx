/** What lay there: all together on the pad, which foods were mostly left, or grams food by food. */
import { useState } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import type { Remains } from '../../../care/model.ts';
import { words } from '../../../words/words.ts';
import { useLeaving } from '../../shared/hooks/leaving.ts';
import { NumberInput, readNumber } from '../../shared/NumberInput.tsx';
import { GramPad } from './GramPad.tsx';
import type { LeftFood } from './view-model.ts';

/** More grams than an animal is ever fed in a week. */
const MOST_GRAMS = 5000;

export function RemainsForm(props: {
  /** What the weight is of. */
  label: string;
  foods: readonly LeftFood[];
  /** As it was noted before, to be corrected. */
  before: Remains | undefined;
  /** Foods may be said to be mostly left; of a hoard that says nothing. */
  byEye: boolean;
  onKeep(remains: Remains): void;
  onCancel?(): void;
}) {
  const { foods, before, byEye } = props;
  const { leftovers, figures: f, common } = words();
  const t = leftovers.ask;
  const [text, setText] = useState(before?.grams === undefined ? '' : f.number(f.mass(before.grams), 2));
  const [mostly, setMostly] = useState<readonly string[]>(before?.mostly ?? []);
  const [parts, setParts] = useState<Readonly<Record<string, number>>>(before?.parts ?? {});
  const [byFood, setByFood] = useState(before?.parts !== undefined);
  const [some, setSome] = useState(before?.parts !== undefined && !before.sorted);
  const [rest, setRest] = useState(restOf(before));
  const [fault, setFault] = useState('');
  const [touched, setTouched] = useState(false);
  const free = useLeaving(touched);

  /** What is said here; a text says what is wrong with it. */
  function said(): Remains | string {
    if (byFood) {
      const sum = Object.values(parts).reduce((all, g) => all + g, 0);
      if (Object.keys(parts).length === 0) return t.none;
      if (!some) return { parts, sorted: true };
      return { parts, ...(rest !== undefined && { grams: sum + rest }) };
    }
    const typed = readNumber(text);
    if (typed !== undefined && !(typed >= 0 && f.gramsOf(typed) <= MOST_GRAMS)) return t.notNumber(text);
    if (typed === undefined && mostly.length === 0) return t.none;
    return {
      ...(typed !== undefined && { grams: f.gramsOf(typed) }),
      ...(mostly.length > 0 && { mostly }),
    };
  }

  function keep() {
    const remains = said();
    setFault(typeof remains === 'string' ? remains : '');
    if (typeof remains === 'string') return;
    free();
    setTouched(false);
    props.onKeep(remains);
  }

  function changed<T>(set: (value: T) => void) {
    return (value: T) => {
      setFault('');
      setTouched(true);
      set(value);
    };
  }

  const keepButton = (
    <Button className="big-button left-keep" onPress={keep}>
      {t.keep}
    </Button>
  );
  const told = fault && (
    <p role="alert" className="field-error">
      {fault}
    </p>
  );
  const ways = (
    <div className="button-row">
      {foods.length > 1 && (
        <Button className="quiet-button" onPress={() => setByFood(!byFood)}>
          {byFood ? t.together : t.byFood}
        </Button>
      )}
      {props.onCancel && (
        <Button className="quiet-button" onPress={props.onCancel}>
          {common.cancel}
        </Button>
      )}
    </div>
  );

  return (
    <div className="remains-form">
      {byFood ? (
        <fieldset className="left-by-food">
          <legend>{t.sorted}</legend>
          <p className="hint">{some ? t.someHint : t.sortedHint}</p>
          <label className="tick">
            <input type="checkbox" checked={some} onChange={(e) => changed(setSome)(e.target.checked)} />
            <span>{t.some}</span>
          </label>
          <div className="fields">
            {foods.map((food) => (
              <NumberInput
                key={food.id}
                label={food.name}
                measure="mass"
                min={0}
                max={MOST_GRAMS}
                value={parts[food.id]}
                onCommit={(grams) => {
                  const { [food.id]: _, ...others } = parts;
                  changed(setParts)(grams === undefined ? others : { ...others, [food.id]: grams });
                }}
              />
            ))}
            {some && (
              <NumberInput
                label={t.rest}
                measure="mass"
                min={0}
                max={MOST_GRAMS}
                value={rest}
                onCommit={changed(setRest)}
              />
            )}
          </div>
          {told}
          {keepButton}
          {ways}
        </fieldset>
      ) : (
        <>
          <GramPad label={props.label} text={text} onChange={changed(setText)}>
            {keepButton}
          </GramPad>
          {told}
          {ways}
          {byEye && foods.length > 1 && (
            <fieldset className="left-mostly">
              <legend>{t.mostly}</legend>
              <p className="hint">{t.mostlyHint}</p>
              <div className="left-chips">
                {foods.map(({ id, name }) => (
                  <ToggleButton
                    key={id}
                    className="left-chip"
                    isSelected={mostly.includes(id)}
                    onChange={(on) =>
                      changed(setMostly)(on ? [...mostly, id] : mostly.filter((other) => other !== id))
                    }
                  >
                    {name}
                  </ToggleButton>
                ))}
              </div>
              {mostly.length > 0 && (
                <Button className="button strong left-keep-again" onPress={keep}>
                  {t.keep}
                </Button>
              )}
            </fieldset>
          )}
        </>
      )}
    </div>
  );
}

/** g of what was not sorted out, where it was weighed. */
function restOf(before: Remains | undefined): number | undefined {
  if (before?.grams === undefined || before.parts === undefined || before.sorted) return undefined;
  return Math.max(0, before.grams - Object.values(before.parts).reduce((sum, g) => sum + g, 0));
}
