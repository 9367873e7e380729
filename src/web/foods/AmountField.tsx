/** One amount of a label: exactly, at least, at most, or between two figures. Blank is unknown. */
import { useState } from 'react';
import type { Stated } from '../../foods/label/form.ts';
import { nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { NumberInput } from '../shared/NumberInput.tsx';

const SAYINGS = {
  exactly: 'exactly',
  least: 'at least',
  most: 'at most',
  between: 'between',
} as const;
type Saying = keyof typeof SAYINGS;

interface Props {
  tag: Tag;
  stated: Stated | undefined;
  hint?: string;
  error?: string;
  /** Undefined when the field was emptied. */
  onChange(stated: Stated | undefined): void;
}

export function AmountField({ tag, stated, hint, error, onChange }: Props) {
  const [saying, setSaying] = useState<Saying>(() => sayingOf(stated));
  const { name, unit } = nutrient(tag);
  const shown = tag === 'WATER' ? '%' : unitWord(unit);
  const first = stated?.value ?? stated?.low ?? (saying === 'between' ? undefined : stated?.high);

  function say(next: Saying, from = first, to = stated?.high) {
    const told: Stated =
      next === 'exactly'
        ? { value: from }
        : next === 'least'
          ? { low: from }
          : next === 'most'
            ? { high: from }
            : { low: from, high: to };
    onChange(Object.values(told).some((v) => v !== undefined) ? told : undefined);
  }

  return (
    <div className="amount-field">
      <NumberInput
        label={name}
        unit={shown}
        min={0}
        decimals={4}
        placeholder="unknown"
        value={first}
        hint={[guaranteed(stated, shown), hint].filter(Boolean).join('; ') || undefined}
        error={error}
        onCommit={(v) => say(saying, v)}
      />
      <select
        aria-label={`${name}: exact or a bound`}
        value={saying}
        onChange={(e) => {
          const next = e.target.value as Saying;
          setSaying(next);
          if (stated) say(next, first, undefined);
        }}
      >
        {Object.entries(SAYINGS).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
      {saying === 'between' && (
        <NumberInput
          label={`${name}, at most`}
          unit={shown}
          min={0}
          decimals={4}
          placeholder="unknown"
          value={stated?.high}
          onCommit={(v) => say(saying, first, v)}
        />
      )}
    </div>
  );
}

function sayingOf(stated: Stated | undefined): Saying {
  if (!stated || stated.value !== undefined) return 'exactly';
  if (stated.low === undefined) return 'most';
  return stated.high === undefined ? 'least' : 'between';
}

/** The bounds beside a value, which have no field of their own and go when the value is changed. */
function guaranteed(stated: Stated | undefined, unit: string): string | undefined {
  if (stated?.value === undefined) return undefined;
  const { low, high } = stated;
  const bounds = [low !== undefined && `at least ${low}`, high !== undefined && `at most ${high}`].filter(
    Boolean,
  );
  return bounds.length > 0 ? `the label also says ${bounds.join(' and ')} ${unit}` : undefined;
}
