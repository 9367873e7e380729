/** The freezer as the keeper has it: the room given to dry goods, and how cold it is. */
import { useState } from 'react';
import { GRAMS_PER_OUNCE } from '../../words/manner.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useKitchen } from '../store/kitchen.ts';

export function FreezerSettings() {
  const t = words().cupboard.freezer;
  const { kitchen, change, error } = useKitchen();
  const inGrams = words().figures.massUnit === 'g';
  /** g in the unit that the room is said in. */
  const unit = inGrams ? 1000 : GRAMS_PER_OUNCE * 16;
  /** What was said while one of the two is not known. */
  const [said, setSaid] = useState<{ grams: number | undefined; celsius: number | undefined }>();
  const { grams, celsius } = kitchen.freezer ?? said ?? { grams: undefined, celsius: undefined };

  /** Kept as soon as both are known; emptied, nothing is known of it. */
  function keep(nextGrams: number | undefined, nextCelsius: number | undefined) {
    setSaid({ grams: nextGrams, celsius: nextCelsius });
    const freezer =
      nextGrams !== undefined && nextCelsius !== undefined
        ? { grams: nextGrams, celsius: nextCelsius }
        : undefined;
    if (freezer || kitchen.freezer) change({ freezer });
  }

  return (
    <>
      <div className="fields">
        <NumberInput
          label={t.room}
          unit={inGrams ? 'kg' : 'lb'}
          min={0.05}
          max={500}
          step={0.5}
          decimals={3}
          placeholder={t.notSaid}
          value={grams === undefined ? undefined : grams / unit}
          onCommit={(room) => keep(room === undefined ? undefined : Math.round(room * unit), celsius)}
          hint={t.roomHint}
        />
        <NumberInput
          label={t.temperature}
          measure="heat"
          min={-60}
          max={0}
          step={1}
          decimals={1}
          placeholder={t.notSaid}
          value={celsius}
          onCommit={(c) => keep(grams, c)}
          hint={t.temperatureHint(words().figures.degrees(-18))}
        />
      </div>
      <Failed error={error} />
    </>
  );
}
