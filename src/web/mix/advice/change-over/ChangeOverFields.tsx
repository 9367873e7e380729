/** What a change-over starts from: the present food, days, first day, grams a day and the scale. */

import { useId, useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import { tableNote } from '../../../../foods/food-name.ts';
import type { Mix } from '../../../../household/model.ts';
import { CHANGE_DAYS } from '../../../../kitchen/feeding/change-days.ts';
import { words } from '../../../../words/words.ts';
import { Choice } from '../../../shared/Choice.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { NumberInput } from '../../../shared/NumberInput.tsx';
import { useFoodSearch, useReferenceFoods } from '../../../worker/engine.ts';
import { type ChangeOverChoices, TABLE } from './choices.ts';
import { usePresentOptions } from './present-food.ts';

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
  const t = words().changeOver.fields;
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
          label={t.present}
          value={searching ? SEARCH : choices.present}
          options={[
            ['', t.choose],
            ...options.map((o) => [o.value, o.name] as const),
            ...(ref === undefined ? [] : [[choices.present, table?.name ?? ref] as const]),
            [SEARCH, t.table],
          ]}
          onChange={pick}
        />
        <NumberInput
          label={t.days}
          value={choices.days}
          min={CHANGE_DAYS.least}
          max={CHANGE_DAYS.most}
          step={1}
          decimals={0}
          required
          hint={t.daysHint}
          onCommit={(v) => v !== undefined && choose({ days: Math.round(v) })}
        />
        <div className="choice">
          <label htmlFor={date}>{t.first}</label>
          <input
            id={date}
            type="date"
            required
            value={choices.start}
            onChange={(e) => choose({ start: e.target.value })}
          />
        </div>
        <NumberInput
          label={t.daily}
          measure="mass"
          value={daily}
          min={0.1}
          max={10_000}
          step={1}
          hint={dailyFrom}
          error={dailyFault}
          onCommit={(v) => choose({ daily: v })}
        />
        <NumberInput
          label={t.step}
          measure="mass"
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
  const t = words().changeOver.fields;
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 12);
  return (
    <div className="present-search">
      <SearchField value={query} onChange={setQuery} className="search">
        <Label>{t.search}</Label>
        <Input placeholder={t.example} />
      </SearchField>
      <p className="hint" role="status">
        {isFetching ? t.searching : t.found(found.length)}
      </p>
      <ul className="swap-list">
        {found.map((f) => (
          <li key={f.ref}>
            <span className="swap-words">
              {f.name} {!f.plain && <small>{tableNote(f)}</small>}
            </span>
            <Button className="button small" aria-label={t.nowFed(f.name)} onPress={() => pick(f.ref)}>
              {t.pick}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
