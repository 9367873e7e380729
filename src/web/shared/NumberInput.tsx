/** A number typed by hand: decimal point or comma, empty means unknown, arrows step, Enter or leaving commits. */
import { type KeyboardEvent, useId, useState } from 'react';
import { words } from '../../words/words.ts';
import { meanwhileWords, useChangedMeanwhile } from './hooks/changed-meanwhile.ts';
import { useHeldLine } from './hooks/held-line.ts';

interface Props {
  label: string;
  /** Hide the label from sight, not from screen readers. */
  quiet?: boolean;
  value: number | undefined;
  /** Called with a valid number, or undefined when emptied. */
  onCommit(value: number | undefined): void;
  min?: number;
  max?: number;
  step?: number;
  decimals?: number;
  unit?: string;
  /** What is kept in g or °C and read in the keeper's own unit; value, limits and step are in g or °C. */
  measure?: 'mass' | 'heat';
  hint?: string;
  required?: boolean;
  placeholder?: string;
  disabled?: boolean;
  error?: string;
}

export function NumberInput({ measure, ...props }: Props) {
  return <PlainNumberInput {...(measure ? measured(props, measure) : props)} />;
}

/** The same field in the unit that the keeper reads. */
function measured(props: Props, measure: 'mass' | 'heat'): Props {
  const f = words().figures;
  const { value, min, max, step, decimals = 2, onCommit } = props;
  if (measure === 'mass' && f.massUnit === 'g') return { ...props, unit: f.massUnit };
  if (measure === 'heat' && f.heatUnit === '°C') return { ...props, unit: f.heatUnit };
  const [out, back] = measure === 'mass' ? [f.mass, f.gramsOf] : [f.heat, f.celsiusOf];
  const at = (kept: number | undefined) => (kept === undefined ? undefined : out(kept));
  return {
    ...props,
    value: at(value),
    min: at(min),
    max: at(max),
    // A step is a difference: of degrees, without the zero of the scale.
    step: step === undefined ? undefined : Number((out(step) - out(0)).toPrecision(2)),
    decimals: measure === 'mass' ? decimals + 1 : decimals,
    unit: measure === 'mass' ? f.massUnit : f.heatUnit,
    onCommit: (shown) => onCommit(shown === undefined ? undefined : back(shown)),
  };
}

function PlainNumberInput(props: Props) {
  const { value, decimals = 2, min, max, step = 0.1 } = props;
  const f = words().figures;
  const t = words().shared.number;
  const shown = value === undefined ? '' : f.number(value, decimals);
  /** What is typed and not taken yet. */
  const [typed, setTyped] = useState<string>();
  const text = typed ?? shown;
  const [fault, setFault] = useState('');
  const meanwhile = useChangedMeanwhile(shown);

  /** Whether the text could be taken; refused text stays to be mended. */
  function commit(next: string): boolean {
    const read = readNumber(next);
    if (read === undefined && props.required) return refuse(t.needed(props.label));
    if (read !== undefined && Number.isNaN(read)) return refuse(t.none(props.label, next));
    if (read !== undefined && min !== undefined && read < min)
      return refuse(t.tooLow(props.label, next, f.number(min)));
    if (read !== undefined && max !== undefined && read > max)
      return refuse(t.tooHigh(props.label, next, f.number(max)));
    if (next.trim() !== shown && meanwhile.tell()) {
      setFault(meanwhileWords(props.label, shown, next));
      return false;
    }
    settle();
    if (next.trim() !== shown) props.onCommit(read);
    return true;
  }
  /** Nothing is being typed any more. */
  function settle() {
    setFault('');
    meanwhile.done();
  }
  function refuse(why: string): false {
    setFault(why);
    return false;
  }
  function stepBy(by: number) {
    const from = readNumber(text) ?? min ?? 0;
    if (Number.isNaN(from)) return;
    const next = Math.min(
      max ?? Number.POSITIVE_INFINITY,
      Math.max(min ?? Number.NEGATIVE_INFINITY, from + by),
    );
    take(f.number(next, decimals));
  }
  /** What is typed is taken, or stays to be mended. */
  function take(next: string) {
    setTyped(commit(next) ? undefined : next);
  }
  /** Keys that are taken here are nobody else's: Escape would close what stands around, too. */
  function press(event: KeyboardEvent) {
    const { key } = event;
    if (key === 'Enter') take(text);
    else if (key === 'Escape') {
      settle();
      setTyped(undefined);
    } else if (key === 'ArrowUp' || key === 'ArrowDown') {
      event.preventDefault();
      stepBy(key === 'ArrowUp' ? step : -step);
    } else return;
    event.stopPropagation();
  }
  const error = fault || props.error;
  const held = useHeldLine(error ?? '');
  const id = useId();
  const about = [props.hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ');

  return (
    <div className={`number ${props.quiet ? 'quiet' : ''}`} data-invalid={error ? true : undefined}>
      <label htmlFor={id}>{props.label}</label>
      <span className="number-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          placeholder={props.placeholder}
          disabled={props.disabled}
          aria-invalid={error ? true : undefined}
          aria-describedby={about || undefined}
          onFocus={(e) => e.currentTarget.select()}
          onChange={(e) => {
            meanwhile.typed();
            setTyped(e.currentTarget.value);
          }}
          onBlur={() => take(text)}
          onKeyDown={press}
        />
        {props.unit && <span className="unit">{props.unit}</span>}
      </span>
      {props.hint && (
        <span id={`${id}-hint`} className="hint">
          {props.hint}
        </span>
      )}
      {error && (
        <span id={`${id}-error`} className="field-error">
          {error}
        </span>
      )}
      {!error && held && (
        <span className="field-error gone" aria-hidden="true">
          {held}
        </span>
      )}
    </div>
  );
}

/** The number written; undefined when empty, NaN when it is none. The last of "." and "," is the decimal sign. */
export function readNumber(text: string): number | undefined {
  const plain = text.replace(/[\s%']/g, '');
  if (plain === '') return undefined;
  const decimal = Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(','));
  const whole = decimal < 0 ? plain : plain.slice(0, decimal).replace(/[.,]/g, '');
  const joined = decimal < 0 ? whole : `${whole}.${plain.slice(decimal + 1)}`;
  return /^-?(\d+\.?\d*|\.\d+)$/.test(joined) ? Number(joined) : Number.NaN;
}
