/** One amount of a label: exactly, at least, at most, or between two figures. Blank is unknown. */
import { useState } from 'react';
import type { Stated } from '../../foods/label/form.ts';
import { nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { NumberInput } from '../shared/NumberInput.tsx';

type Saying = 'exactly' | 'least' | 'most' | 'between';

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
  const t = words().foods.figures;
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
    <div className="amount-field" data-amount={tag}>
      <NumberInput
        label={name}
        unit={shown}
        min={0}
        decimals={4}
        placeholder={t.unknown}
        value={first}
        hint={[guaranteed(stated, shown), hint].filter(Boolean).join('; ') || undefined}
        error={error}
        onCommit={(v) => say(saying, v)}
      />
      <select
        aria-label={t.bound(name)}
        value={saying}
        onChange={(e) => {
          const next = e.target.value as Saying;
          setSaying(next);
          if (stated) say(next, first, undefined);
        }}
      >
        {Object.entries(t.sayings).map(([value, said]) => (
          <option key={value} value={value}>
            {said}
          </option>
        ))}
      </select>
      {saying === 'between' && (
        <NumberInput
          label={t.upTo(name)}
          unit={shown}
          min={0}
          decimals={4}
          placeholder={t.unknown}
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
  const t = words().foods.figures;
  if (low !== undefined && high !== undefined) return t.alsoBoth(low, high, unit);
  if (low !== undefined) return t.alsoLeast(low, unit);
  return high === undefined ? undefined : t.alsoMost(high, unit);
}
