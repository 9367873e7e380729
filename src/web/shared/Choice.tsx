/** One of a few, as the platform's own list: known to every keyboard, phone and screen reader. */
import { useId } from 'react';

export function Choice<T extends string>(props: {
  label: string;
  value: T;
  options: readonly (readonly [NoInfer<T>, string])[];
  onChange(value: NoInfer<T>): void;
}) {
  const id = useId();
  return (
    <div className="choice">
      <label htmlFor={id}>{props.label}</label>
      <select id={id} value={props.value} onChange={(e) => props.onChange(e.target.value as T)}>
        {props.options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
