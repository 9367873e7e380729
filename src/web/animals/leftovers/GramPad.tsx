/** Grams by big keys: for a phone in one hand beside the scale. Typing in the field does as well. */
import { type ReactNode, useId } from 'react';
import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;
const MOST_SIGNS = 7;

/** @param text as typed, in the keeper's own unit of weight */
export function GramPad(props: {
  label: string;
  text: string;
  onChange(text: string): void;
  /** What stands beside the field: the button that keeps it. */
  children: ReactNode;
}) {
  const { leftovers, figures } = words();
  const t = leftovers.ask;
  const id = useId();
  const { text, onChange } = props;
  const add = (sign: string) => onChange(`${text}${sign}`.slice(0, MOST_SIGNS));
  // The decimal sign that this language writes.
  const dot = figures.number(0.5, 1).includes(',') ? ',' : '.';
  return (
    <div className="gram-pad">
      <label htmlFor={id}>{props.label}</label>
      <span className="gram-pad-shown">
        <input
          id={id}
          // The keys below are the keyboard; the phone's own would cover them.
          inputMode="none"
          autoComplete="off"
          value={text}
          onChange={(e) => onChange(e.target.value.slice(0, MOST_SIGNS))}
        />
        <span className="unit">{figures.massUnit}</span>
        {props.children}
      </span>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would read its legend before every key */}
      <div className="gram-pad-keys" role="group" aria-label={t.pad}>
        {DIGITS.map((d) => (
          <Button key={d} className="button" onPress={() => add(d)}>
            {d}
          </Button>
        ))}
        <Button className="button" aria-label={t.dot} onPress={() => !/[.,]/.test(text) && add(dot)}>
          {dot}
        </Button>
        <Button className="button" onPress={() => add('0')}>
          0
        </Button>
        <Button className="button" aria-label={t.wipe} onPress={() => onChange(text.slice(0, -1))}>
          ⌫
        </Button>
      </div>
    </div>
  );
}
