/** What a change-over starts from: the present food, days, first day, grams a day and the scale. */
import { useId, useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import type { Mix } from '../../../../household/model.ts';
import { CHANGE_DAYS } from '../../../../kitchen/feeding/change-days.ts';
import { Choice } from '../../../shared/Choice.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { NumberInput } from '../../../shared/NumberInput.tsx';
import { tableNote } from '../../../shared/table-name.ts';
import { useFoodSearch, useReferenceFoods } from '../../../worker/engine.ts';
import { TABLE, usePresentOptions } from './ChangeOverPresent.tsx';

export interface ChangeOverChoices {
  /** What is fed now, as the list of choices writes it; '' while nothing is chosen. */
  readonly present: string;
  readonly days: number;
  /** ISO 8601 date. */
  readonly start: string;
  /** Grams a day and step of the scale; those of the mix and its animals unless chosen. */
  readonly daily?: number;
  readonly step?: number;
}

interface Props {
  mix: Mix;
  choices: ChangeOverChoices;
  choose(patch: Partial<ChangeOverChoices>): void;
  daily: number | undefined;
  /** Whose grams they are, where the keeper chose none. */
  dailyFrom: string | undefined;
  dailyFault: string | undefined;
  step: number;
}

/** The choice that opens the search in the tables. */
const SEARCH = 'search';

export function ChangeOverFields({ mix, choices, choose, daily, dailyFrom, dailyFault, step }: Props) {
  const [searching, search] = useState(false);
  const options = usePresentOptions(mix);
  const ref = choices.present.startsWith(TABLE) ? choices.present.slice(TABLE.length) : undefined;
  const table = useReferenceFoods(ref === undefined ? [] : [ref]).get(ref ?? '');
  const date = useId();

  function pick(value: string) {
    search(value === SEARCH);
    if (value === SEARCH) focusWhenThere('.present-search input');
    else choose({ present: value });
  }

  return (
    <>
      <div className="fields change-fields">
        <Choice
          label="Present food"
          value={searching ? SEARCH : choices.present}
          options={[
            ['', 'Choose…'],
            ...options.map((o) => [o.value, o.name] as const),
            ...(ref === undefined ? [] : [[choices.present, table?.name ?? ref] as const]),
            [SEARCH, 'A food of the tables…'],
          ]}
          onChange={pick}
        />
        <NumberInput
          label="Days"
          value={choices.days}
          min={CHANGE_DAYS.least}
          max={CHANGE_DAYS.most}
          step={1}
          decimals={0}
          required
          hint="10 to 14 are usual (common practice, no source)"
          onCommit={(v) => v !== undefined && choose({ days: Math.round(v) })}
        />
        <div className="choice">
          <label htmlFor={date}>First day</label>
          <input
            id={date}
            type="date"
            required
            value={choices.start}
            onChange={(e) => choose({ start: e.target.value })}
          />
        </div>
        <NumberInput
          label="Fed in a day"
          unit="g"
          value={daily}
          min={0.1}
          max={10_000}
          step={1}
          hint={dailyFrom}
          error={dailyFault}
          onCommit={(v) => choose({ daily: v })}
        />
        <NumberInput
          label="Weighed in steps of"
          unit="g"
          value={step}
          min={0.01}
          max={100}
          required
          onCommit={(v) => choose({ step: v })}
        />
      </div>
      {searching && (
        <TableSearch
          pick={(found) => {
            search(false);
            choose({ present: TABLE + found });
            focusWhenThere('.change-fields select');
          }}
        />
      )}
    </>
  );
}

function TableSearch({ pick }: { pick(ref: string): void }) {
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 12);
  return (
    <div className="present-search">
      <SearchField value={query} onChange={setQuery} className="search">
        <Label>Search the tables for the present food</Label>
        <Input placeholder="oats, lentils, maize…" />
      </SearchField>
      <p className="hint" role="status">
        {isFetching ? 'Searching…' : `${found.length} foods`}
      </p>
      <ul className="swap-list">
        {found.map((f) => (
          <li key={f.ref}>
            <span className="swap-words">
              {f.name} {!f.plain && <small>{tableNote(f)}</small>}
            </span>
            <Button className="button small" aria-label={`Now fed: ${f.name}`} onPress={() => pick(f.ref)}>
              Choose
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
