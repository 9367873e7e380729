/** One of a few, all in sight: the platform's own radio buttons, moved with the arrows. */
import { type ReactNode, useId } from 'react';
import './Radios.css';

export function Radios<T extends string>(props: {
  label: ReactNode;
  /** Undefined while nothing is chosen. */
  value: T | undefined;
  options: readonly (readonly [NoInfer<T>, string])[];
  onChange(value: NoInfer<T>): void;
  className?: string;
}) {
  const name = useId();
  return (
    <fieldset className={`radios ${props.className ?? ''}`}>
      <legend>{props.label}</legend>
      {props.options.map(([value, words]) => (
        <label key={value} className="radio">
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === props.value}
            onChange={() => props.onChange(value)}
            // Enter would send the whole form; a choice is not yet that.
            onKeyDown={(e) => e.key === 'Enter' && e.preventDefault()}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
