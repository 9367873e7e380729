/** A day, picked or typed in the browser's own field; empty is unknown. */
import { useId } from 'react';
import type { Day } from '../../kitchen/model.ts';
import { FIRST_YEAR, LAST_YEAR } from '../../nutrition/calendar-years.ts';
import './DayInput.css';

export function DayInput(props: {
  label: string;
  value: Day | undefined;
  onChange(value: Day | undefined): void;
  error?: string;
}) {
  const id = useId();
  return (
    <div className="lot-date">
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        type="date"
        value={props.value ?? ''}
        min={`${FIRST_YEAR}-01-01`}
        max={`${LAST_YEAR}-12-31`}
        onChange={(e) => props.onChange(e.target.value || undefined)}
        aria-invalid={props.error !== undefined || undefined}
        aria-describedby={props.error === undefined ? undefined : `${id}-error`}
      />
      {props.error !== undefined && (
        <p id={`${id}-error`} className="field-error">
          {props.error}
        </p>
      )}
    </div>
  );
}
