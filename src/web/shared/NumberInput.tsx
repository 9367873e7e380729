/** A number typed by hand: decimal point or comma, empty means unknown, arrows step, Enter or leaving commits. */
import { useEffect, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
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
  const [text, setText] = useState(shown);
  const [typing, setTyping] = useState(false);
  const [fault, setFault] = useState('');
  const meanwhile = useChangedMeanwhile(shown);
  useEffect(() => {
    if (!typing) setText(shown);
  }, [shown, typing]);

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
    const stepped = f.number(next, decimals);
    setText(stepped);
    commit(stepped);
  }
  const error = fault || props.error;
  const held = useHeldLine(error ?? '');

  return (
    <TextField
      className={`number ${props.quiet ? 'quiet' : ''}`}
      value={text}
      onChange={(next) => {
        meanwhile.typed();
        setTyping(true);
        setText(next);
      }}
      onBlur={() => {
        setTyping(!commit(text));
      }}
      onKeyDown={(e) => {
        if (e.key === 'Enter') {
          setTyping(!commit(text));
        }
        if (e.key === 'Escape') {
          settle();
          setTyping(false);
          setText(shown);
        }
        if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
          e.preventDefault();
          stepBy(e.key === 'ArrowUp' ? step : -step);
        }
      }}
      isInvalid={Boolean(error)}
      isDisabled={props.disabled}
      validationBehavior="aria"
    >
      <Label>{props.label}</Label>
      <span className="number-box">
        <Input
          inputMode="decimal"
          autoComplete="off"
          placeholder={props.placeholder}
          onFocus={(e) => e.currentTarget.select()}
        />
        {props.unit && <span className="unit">{props.unit}</span>}
      </span>
      {props.hint && (
        <Text slot="description" className="hint">
          {props.hint}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
      {!error && held && (
        <span className="field-error gone" aria-hidden="true">
          {held}
        </span>
      )}
    </TextField>
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
