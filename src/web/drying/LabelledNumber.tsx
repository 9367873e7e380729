/** A number typed by hand and read when the form is sent; what is wrong stands beside it. */
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { readNumber } from '../shared/NumberInput.tsx';

export function LabelledNumber(props: {
  label: string;
  value: string;
  onChange(text: string): void;
  unit?: string;
  hint?: string;
  placeholder?: string;
  error?: string | undefined;
  className?: string;
}) {
  return (
    <TextField
      className={`number ${props.className ?? ''}`}
      value={props.value}
      onChange={props.onChange}
      isInvalid={props.error !== undefined}
      validationBehavior="aria"
    >
      <Label>{props.label}</Label>
      <span className="number-box">
        <Input inputMode="decimal" autoComplete="off" placeholder={props.placeholder} />
        {props.unit && <span className="unit">{props.unit}</span>}
      </span>
      {props.hint && (
        <Text slot="description" className="hint">
          {props.hint}
        </Text>
      )}
      <FieldError className="field-error">{props.error}</FieldError>
    </TextField>
  );
}

export interface Read {
  readonly value?: number;
  /** A sentence that names the field. */
  readonly fault?: string;
}

/** Reads a number above 0. @param p.optional whether the field may stay empty */
export function readAbove0(
  text: string,
  label: string,
  p: { readonly optional?: boolean; readonly whole?: boolean; readonly max?: number } = {},
): Read {
  const value = readNumber(text);
  if (value === undefined) return p.optional ? {} : { fault: `${label} is empty: enter a number.` };
  if (Number.isNaN(value))
    return { fault: `${label}: “${text}” is not a number; write for example 250 or 62,5.` };
  if (!(value > 0)) return { fault: `${label}: ${text} is too low; it must be above 0.` };
  if (p.max !== undefined && value > p.max)
    return { fault: `${label}: ${text} is too high; it may be ${p.max} at most.` };
  if (p.whole && !Number.isInteger(value)) return { fault: `${label}: ${text} is not a whole number.` };
  return { value };
}

/** What is typed for a number that is known. */
export function asText(value: number | undefined, decimals = 1): string {
  return value === undefined ? '' : String(Number(value.toFixed(decimals)));
}

/** The first field of a form that is wrong gets the keyboard, once the fault is drawn. */
export function focusFault(form: HTMLFormElement): void {
  requestAnimationFrame(() => form.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus());
}
