/** The freezer as the keeper has it: the room given to dry goods, and how cold it is. */
import { useState } from 'react';
import { Failed } from '../shared/Failed.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useKitchen } from '../store/kitchen.ts';

export function FreezerSettings() {
  const { kitchen, change, error } = useKitchen();
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
          label="Room for dry goods"
          unit="kg"
          min={0.05}
          max={500}
          step={0.5}
          decimals={3}
          placeholder="not said"
          value={grams === undefined ? undefined : grams / 1000}
          onCommit={(kg) => keep(kg === undefined ? undefined : Math.round(kg * 1000), celsius)}
          hint="As many kg as fit in at one time."
        />
        <NumberInput
          label="Temperature"
          unit="°C"
          min={-60}
          max={0}
          step={1}
          decimals={1}
          placeholder="not said"
          value={celsius}
          onCommit={(c) => keep(grams, c)}
          hint="Below zero, so with a minus: -18."
        />
      </div>
      <Failed error={error} />
    </>
  );
}
