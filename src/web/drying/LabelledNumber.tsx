/** A number typed by hand and read when the form is sent; what is wrong stands beside it. */
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { readNumber } from '../shared/NumberInput.tsx';

/** What is kept in g or °C, and typed in the keeper's own unit. */
export type Measure = 'mass' | 'heat';

export function LabelledNumber(props: {
  label: string;
  value: string;
  onChange(text: string): void;
  unit?: string;
  /** Instead of a unit: the keeper's own. */
  measure?: Measure;
  hint?: string;
  placeholder?: string;
  error?: string | undefined;
  className?: string;
}) {
  const { massUnit, heatUnit } = words().figures;
  const unit = props.measure ? { mass: massUnit, heat: heatUnit }[props.measure] : props.unit;
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
        {unit && <span className="unit">{unit}</span>}
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

/**
 * Reads a number above 0; with a measure, out of the keeper's own unit.
 * @param p.optional whether the field may stay empty @param p.max in the unit that is kept
 */
export function readAbove0(
  text: string,
  label: string,
  p: {
    readonly optional?: boolean;
    readonly whole?: boolean;
    readonly max?: number;
    readonly measure?: Measure;
  } = {},
): Read {
  const { drying, figures } = words();
  const t = drying.number;
  const typed = readNumber(text);
  if (typed === undefined) return p.optional ? {} : { fault: t.empty(label) };
  if (Number.isNaN(typed)) return { fault: t.none(label, text, 250, 62.5) };
  const value =
    p.measure === 'mass' ? figures.gramsOf(typed) : p.measure === 'heat' ? figures.celsiusOf(typed) : typed;
  if (!(value > 0)) return { fault: t.tooLow(label, text) };
  if (p.max !== undefined && value > p.max) return { fault: t.tooHigh(label, text, own(p.max, p.measure)) };
  if (p.whole && !Number.isInteger(value)) return { fault: t.notWhole(label, text) };
  return { value };
}

/** A number that is kept, in the keeper's own unit. */
function own(value: number, measure: Measure | undefined): number {
  const { mass, heat } = words().figures;
  return measure === 'mass' ? mass(value) : measure === 'heat' ? heat(value) : value;
}

/** What is typed for a number that is known. @param decimals of grams, degrees or whatever it is */
export function asText(value: number | undefined, decimals = 1, measure?: Measure): string {
  if (value === undefined) return '';
  const { number, massUnit } = words().figures;
  // An ounce is much, so it takes more places.
  const more = measure === 'mass' && massUnit === 'oz' ? 2 : 0;
  return number(own(value, measure), decimals + more);
}

/** The first field of a form that is wrong gets the keyboard, once the fault is drawn. */
export function focusFault(form: HTMLFormElement): void {
  requestAnimationFrame(() => form.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus());
}
