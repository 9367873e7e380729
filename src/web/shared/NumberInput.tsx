/** A number typed by hand: decimal point or comma, empty means unknown, arrows step, Enter or leaving commits. */
import { useEffect, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { meanwhileWords, useChangedMeanwhile } from './hooks/changed-meanwhile.ts';

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
  hint?: string;
  required?: boolean;
  placeholder?: string;
  disabled?: boolean;
  error?: string;
}

export function NumberInput(props: Props) {
  const { value, decimals = 2, min, max, step = 0.1 } = props;
  const shown = value === undefined ? '' : String(Number(value.toFixed(decimals)));
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
    if (read === undefined && props.required) return refuse('needs a number');
    if (read !== undefined && Number.isNaN(read))
      return refuse(`“${next}” is not a number; write for example 6.25 or 6,25`);
    if (read !== undefined && min !== undefined && read < min)
      return refuse(`${next} is too low; it may be ${min} or more`);
    if (read !== undefined && max !== undefined && read > max)
      return refuse(`${next} is too high; it may be ${max} at most`);
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
  function refuse(words: string): false {
    setFault(`${props.label} ${words}.`);
    return false;
  }
  function stepBy(by: number) {
    const from = readNumber(text) ?? min ?? 0;
    if (Number.isNaN(from)) return;
    const next = Math.min(
      max ?? Number.POSITIVE_INFINITY,
      Math.max(min ?? Number.NEGATIVE_INFINITY, from + by),
    );
    const words = String(Number(next.toFixed(decimals)));
    setText(words);
    commit(words);
  }
  const error = fault || props.error;

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
