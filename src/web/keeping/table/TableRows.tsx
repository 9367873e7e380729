/** What becomes of each row: a food of the keeper's own, one that is there, one of the tables, or nothing. */

import { useState } from 'react';
import { amountWords } from '../../../foods/figure-words.ts';
import { type Figures, FOOD_GROUPS } from '../../../foods/food.ts';
import type { ReadTableRow } from '../../../household/exchange/table/read-table.ts';
import { ROW_ANSWERS } from '../../../household/exchange/table/row-fate.ts';
import type { OwnFood } from '../../../household/model.ts';
import { NUTRIENTS } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
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
  const t = words().ownTable.rows;
  const open = rows.filter((r) => r.become === undefined);
  // What waits for the keeper stands first.
  const { shown, more } = useParts([...open, ...rows.filter((r) => r.become !== undefined)], {
    part: 20,
  });
  return (
    <section className="panel" aria-label={t.region}>
      <h2>{t.title}</h2>
      <p role="status" className="hint">
        {open.length > 0 ? t.countOpen(rows.length, open.length) : t.count(rows.length)}
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
          {t.leaveOpen(open.length)}
        </button>
      )}
    </section>
  );
}

const LOOK = 'look';
const ASK = '';

function RowLine({ row, inHand, ownFoods }: Omit<Props, 'rows'> & { row: ReadTableRow }) {
  const t = words().ownTable.rows;
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
        <strong>{name || t.nth(row.row + 1)}</strong> <small>{t.leftOut[kind]}</small>
      </li>
    );
  return (
    <li className={become === undefined ? 'open' : ''}>
      <p>
        <strong>{name}</strong>
        {share !== undefined && ` ${words().figures.percent(share)}`}
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
        label={t.becomes(name)}
        value={value}
        options={[
          ...(value === ASK ? [[ASK, words().ownTable.columns.choose] as const] : []),
          ...(faults.length === 0 ? [[ROW_ANSWERS.own, t.own] as const] : []),
          ...same.map((f) => [`${ROW_ANSWERS.kept}${f.id}`, t.kept(f.name)] as const),
          ...(ref ? [[`${ROW_ANSWERS.ref}${ref}`, t.ofTables(chosen?.name ?? ref)] as const] : []),
          [LOOK, t.look],
          [ROW_ANSWERS.out, t.nothing],
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
  const [sought, setSought] = useState(name);
  const { data: found = [] } = useFoodSearch(sought, 6);
  return (
    <div className="suggestions">
      <label>
        {words().ownTable.rows.lookFor}
        <input type="search" value={sought} onChange={(e) => setSought(e.target.value)} />
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

function answerOf({ become }: ReadTableRow): string {
  if (!become) return ASK;
  if (become.as === 'own') return ROW_ANSWERS.own;
  if (become.as === 'left-out') return ROW_ANSWERS.out;
  return become.as === 'kept' ? `${ROW_ANSWERS.kept}${become.id}` : `${ROW_ANSWERS.ref}${become.ref}`;
}

function figureWords(figures: Figures): string {
  const all = { ...figures.composition, ...figures.low, ...figures.high };
  const t = words().ownTable.rows;
  const said = NUTRIENTS.filter((n) => n.tag in all).map(
    (n) => `${n.name.toLowerCase()} ${amountWords(figures, n.tag)}`,
  );
  return said.length > 0 ? t.figures(said.join(', ')) : t.noFigures;
}
