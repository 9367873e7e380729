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
  const open = rows.filter((r) => r.become === undefined);
  // What waits for the keeper stands first.
  const { shown, more } = useParts([...open, ...rows.filter((r) => r.become !== undefined)], {
    part: 20,
  });
  const t = words().table.screen;
  return (
    <section className="panel" aria-label={t.rows}>
      <h2>{t.rowsTitle}</h2>
      <p role="status" className="hint">
        {open.length > 0 ? t.rowsOpen(rows.length, open.length) : t.rowCount(rows.length)}
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
          {t.leaveRows(open.length)}
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
  const { table, figures: f } = words();
  const t = table.screen;
  const same = ownFoods.filter((f) => f.name.toLowerCase() === name.toLowerCase()).slice(0, 3);
  const [asked, setLooking] = useState<boolean>();
  // A row without figures is most likely a food of the tables: some are offered at once.
  const looking = asked ?? (become === undefined && faults.length === 0 && same.length === 0);
  const value = looking ? LOOK : answerOf(row);

  if (kind !== 'food')
    return (
      <li className="left-out">
        <strong>{name || t.rowNo(row.row + 1)}</strong> <small>{t[KINDS[kind]]}</small>
      </li>
    );
  return (
    <li className={become === undefined ? 'open' : ''}>
      <p>
        <strong>{name}</strong>
        {share !== undefined && ` ${f.percent(share)}`}
        {group && <small> {FOOD_GROUPS[group]}</small>}
      </p>
      <p className="hint">{figureWords(row.figures)}</p>
      {faults.map((fault) => (
        <p key={fault} className="field-error">
          {fault}
        </p>
      ))}
      {notes.length > 0 && <p className="hint">{notes.join('; ')}</p>}
      <Choice
        label={t.becomes(name)}
        value={value}
        options={[
          ...(value === ASK ? [[ASK, t.choose] as const] : []),
          ...(faults.length === 0 ? [[ROW_ANSWERS.own, t.own] as const] : []),
          ...same.map((food) => [`${ROW_ANSWERS.kept}${food.id}`, t.kept(food.name)] as const),
          ...(ref ? [[`${ROW_ANSWERS.ref}${ref}`, t.fromTables(chosen?.name ?? ref)] as const] : []),
          [LOOK, t.lookUp],
          [ROW_ANSWERS.out, t.out],
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
  const [typed, setTyped] = useState(name);
  const { data: found = [] } = useFoodSearch(typed, 6);
  return (
    <div className="suggestions">
      <label>
        {words().table.screen.lookFor}
        <input type="search" value={typed} onChange={(e) => setTyped(e.target.value)} />
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

const KINDS = {
  total: 'total',
  section: 'section',
  'heading again': 'headingAgain',
  nameless: 'nameless',
} as const satisfies Record<Exclude<ReadTableRow['kind'], 'food'>, string>;

function answerOf({ become }: ReadTableRow): string {
  if (!become) return ASK;
  if (become.as === 'own') return ROW_ANSWERS.own;
  if (become.as === 'left out') return ROW_ANSWERS.out;
  return become.as === 'kept' ? `${ROW_ANSWERS.kept}${become.id}` : `${ROW_ANSWERS.ref}${become.ref}`;
}

function figureWords(figures: Figures): string {
  const all = { ...figures.composition, ...figures.low, ...figures.high };
  const t = words().table.screen;
  const said = NUTRIENTS.filter((n) => n.tag in all).map(
    (n) => `${n.name.toLowerCase()} ${amountWords(figures, n.tag)}`,
  );
  return said.length > 0 ? t.inHundred(said.join(', ')) : t.noFigures;
}
