/** What becomes of each row: a food of the keeper's own, one that is there, one of the tables, or nothing. */
import { useState } from 'react';
import { amountWords } from '../../../foods/figure-words.ts';
import { type Figures, FOOD_GROUPS } from '../../../foods/food.ts';
import type { ReadTableRow } from '../../../household/exchange/table/read-table.ts';
import { ROW_ANSWERS } from '../../../household/exchange/table/row-fate.ts';
import type { OwnFood } from '../../../household/model.ts';
import { NUTRIENTS } from '../../../nutrition/nutrients.ts';
import { Choice } from '../../shared/Choice.tsx';
import { useParts } from '../../shared/parts.tsx';
import { useFoodSearch, useReferenceFoods } from '../../worker/engine.ts';
import type { TableInHand } from './useTable.ts';

interface Props {
  rows: readonly ReadTableRow[];
  inHand: TableInHand;
  ownFoods: readonly OwnFood[];
}

export function TableRows({ rows, inHand, ownFoods }: Props) {
  const open = rows.filter((r) => r.become === undefined);
  // What waits for the keeper stands first.
  const { shown, more } = useParts([...open, ...rows.filter((r) => r.become !== undefined)], {
    part: 20,
    of: 'rows',
  });
  return (
    <section className="panel" aria-label="Rows">
      <h2>What becomes of the rows</h2>
      <p role="status" className="hint">
        {rows.length} rows{open.length > 0 && `, ${open.length} to be decided`}
      </p>
      <ul className="table-rows">
        {shown.map((row) => (
          <RowLine key={`${row.row} ${row.name}`} row={row} inHand={inHand} ownFoods={ownFoods} />
        ))}
      </ul>
      {more}
      {open.length > 1 && (
        <button
          type="button"
          className="quiet-button"
          onClick={() =>
            inHand.answerAll(Object.fromEntries(open.map((r) => [`row ${r.row}`, ROW_ANSWERS.out])))
          }
        >
          Leave out all {open.length} rows that are not decided
        </button>
      )}
    </section>
  );
}

const LOOK = 'look';
const ASK = '';

function RowLine({ row, inHand, ownFoods }: Omit<Props, 'rows'> & { row: ReadTableRow }) {
  const { become, kind, name, share, faults, notes, group } = row;
  const ref = become?.as === 'reference' ? become.ref : undefined;
  const chosen = useReferenceFoods(ref ? [ref] : []).get(ref ?? '');
  const id = `row ${row.row}`;
  const same = ownFoods.filter((f) => f.name.toLowerCase() === name.toLowerCase()).slice(0, 3);
  const [asked, setLooking] = useState<boolean>();
  // A row without figures is most likely a food of the tables: some are offered at once.
  const looking = asked ?? (become === undefined && faults.length === 0 && same.length === 0);
  const value = looking ? LOOK : answerOf(row);

  if (kind !== 'food')
    return (
      <li className="left-out">
        <strong>{name || `Row ${row.row + 1}`}</strong> <small>{KINDS[kind]}: left out</small>
      </li>
    );
  return (
    <li className={become === undefined ? 'open' : ''}>
      <p>
        <strong>{name}</strong>
        {share !== undefined && ` ${share} %`}
        {group && <small> {FOOD_GROUPS[group]}</small>}
      </p>
      <p className="hint">{figureWords(row.figures)}</p>
      {faults.map((f) => (
        <p key={f} className="field-error">
          {f}
        </p>
      ))}
      {notes.length > 0 && <p className="hint">{notes.join('; ')}</p>}
      <Choice
        label={`${name} becomes`}
        value={value}
        options={[
          ...(value === ASK ? [[ASK, 'choose'] as const] : []),
          ...(faults.length === 0
            ? [[ROW_ANSWERS.own, 'a food of your own, with these figures'] as const]
            : []),
          ...same.map((f) => [`${ROW_ANSWERS.kept}${f.id}`, `your food “${f.name}” as it is here`] as const),
          ...(ref ? [[`${ROW_ANSWERS.ref}${ref}`, `${chosen?.name ?? ref}, from the tables`] as const] : []),
          [LOOK, 'a food of the tables…'],
          [ROW_ANSWERS.out, 'nothing: leave it out'],
        ]}
        onChange={(next) => {
          setLooking(next === LOOK);
          if (next !== LOOK) inHand.answer(id, next === ASK ? undefined : next);
        }}
      />
      {looking && (
        <Suggestions
          name={name}
          onChoose={(food) => {
            setLooking(false);
            inHand.answer(id, `${ROW_ANSWERS.ref}${food}`);
          }}
        />
      )}
    </li>
  );
}

function Suggestions({ name, onChoose }: { name: string; onChoose(ref: string): void }) {
  const [words, setWords] = useState(name);
  const { data: found = [] } = useFoodSearch(words, 6);
  return (
    <div className="suggestions">
      <label>
        Look in the tables for
        <input type="search" value={words} onChange={(e) => setWords(e.target.value)} />
      </label>
      <ul>
        {found.map((f) => (
          <li key={f.ref}>
            <button type="button" className="button small" onClick={() => onChoose(f.ref)}>
              {f.name}
            </button>{' '}
            <small>{f.source}</small>
          </li>
        ))}
      </ul>
    </div>
  );
}

const KINDS: Readonly<Record<Exclude<ReadTableRow['kind'], 'food'>, string>> = {
  total: 'a sum or mean',
  section: 'the heading of a section',
  'heading again': 'the headings again',
  nameless: 'no food is named',
};

function answerOf({ become }: ReadTableRow): string {
  if (!become) return ASK;
  if (become.as === 'own') return ROW_ANSWERS.own;
  if (become.as === 'left out') return ROW_ANSWERS.out;
  return become.as === 'kept' ? `${ROW_ANSWERS.kept}${become.id}` : `${ROW_ANSWERS.ref}${become.ref}`;
}

function figureWords(figures: Figures): string {
  const all = { ...figures.composition, ...figures.low, ...figures.high };
  const words = NUTRIENTS.filter((n) => n.tag in all).map(
    (n) => `${n.name.toLowerCase()} ${amountWords(figures, n.tag)}`,
  );
  return words.length > 0 ? `In 100 g as fed: ${words.join(', ')}` : 'No figures: all it holds is unknown';
}
