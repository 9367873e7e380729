/** How old an animal is: not known, about, or by the day it was born. */
import { type Born, bornAbout, monthsOld } from '../../../care/animal/age.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { DayInput } from '../../shared/DayInput.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';

const HOW = ['unknown', 'age', 'day'] as const;

/** What is said of its birth: an age in months stays with the day from which it is counted. */
export interface BornSaid {
  readonly how: (typeof HOW)[number];
  readonly born?: Born;
}

export function bornSaid(born: Born | undefined): BornSaid {
  return { how: born === undefined ? 'unknown' : born.about ? 'age' : 'day', born };
}

export function BornFields({
  said,
  today,
  error,
  onChange,
}: {
  said: BornSaid;
  today: Day;
  /** What is wrong with the day. */
  error?: string;
  onChange(next: BornSaid): void;
}) {
  const t = words().animals.form;
  const { how, born } = said;

  function choose(next: BornSaid['how']) {
    if (next === 'unknown' || !born) return onChange({ how: next });
    onChange({ how: next, born: next === 'age' ? { on: born.on, about: true } : { on: born.on } });
  }

  return (
    <>
      <Choice
        label={t.born}
        value={how}
        options={HOW.map((each) => [each, t.bornHow[each]] as const)}
        onChange={choose}
      />
      {how === 'age' && (
        <NumberInput
          label={t.months}
          min={0}
          max={120}
          step={1}
          decimals={0}
          value={born && monthsOld(born.on, today)}
          onCommit={(months) =>
            onChange({ how, born: months === undefined ? undefined : bornAbout(Math.round(months), today) })
          }
          hint={t.monthsHint}
        />
      )}
      {how === 'day' && (
        <DayInput
          label={t.bornOn}
          value={born?.on}
          onChange={(on) => onChange({ how, born: on === undefined ? undefined : { on } })}
          error={error}
        />
      )}
    </>
  );
}
