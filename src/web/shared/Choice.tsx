/** One of a few, as the platform's own list: known to every keyboard, phone and screen reader. */

import { useId, useState } from 'react';
import { words } from '../../words/words.ts';

/** Of more choices than this only those are listed that hold what is typed. */
const MOST = 150;

export function Choice<T extends string>(props: {
  label: string;
  value: T;
  options: readonly (readonly [NoInfer<T>, string])[];
  onChange(value: NoInfer<T>): void;
}) {
  const t = words().shared.choice;
  const id = useId();
  const { label, value, options } = props;
  const [typed, setTyped] = useState('');
  const many = options.length > MOST;
  const { listed, found } = many ? listedOf(options, value, typed) : { listed: options, found: 0 };
  return (
    <div className="choice">
      <label htmlFor={id}>{label}</label>
      {many && (
        <>
          <input
            type="search"
            aria-label={t.narrow(label)}
            placeholder={t.part}
            autoComplete="off"
            value={typed}
            onChange={(e) => setTyped(e.target.value)}
            // It narrows the list; it must not send the form around it.
            onKeyDown={(e) => e.key === 'Enter' && e.preventDefault()}
          />
          <small role="status">{found > MOST ? t.many(MOST, found) : t.listed(found)}</small>
        </>
      )}
      <select id={id} value={value} onChange={(e) => props.onChange(e.target.value as T)}>
        {listed.map(([each, said]) => (
          <option key={each} value={each}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The first of those with what was typed; what is chosen, and "choose" itself, always. */
function listedOf<T extends string>(
  options: readonly (readonly [T, string])[],
  value: T,
  typed: string,
): { listed: readonly (readonly [T, string])[]; found: number } {
  const part = typed.trim().toLowerCase();
  const fits = options.filter(([, said]) => said.toLowerCase().includes(part));
  const first = new Set(fits.slice(0, MOST).map(([each]) => each));
  return {
    listed: options.filter(([each]) => first.has(each) || each === value || each === ''),
    found: fits.length,
  };
}
