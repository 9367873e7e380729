/** Every column of a table: what its heading says, an example, and what it is read as, which the keeper can change. */

import { type ReadColumn, roleOptions } from '../../../household/exchange/table/read-columns.ts';
import { unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import type { TableInHand } from './useTable.ts';

const ASK = '';

export function TableColumns({ inHand, columns }: { inHand: TableInHand; columns: readonly ReadColumn[] }) {
  const t = words().table.screen;
  const unknown = columns.filter((c) => c.role === undefined && c.heading.roles.length === 0);
  const roles = roleOptions();
  return (
    <section className="panel" aria-label={t.columns}>
      <h2>{t.columnsTitle}</h2>
      <ul className="table-columns">
        {columns.map((c) => (
          <li key={c.index} className={c.role === undefined ? 'open' : ''}>
            <p>
              <strong>{c.heading.text || t.columnOf(c.index + 1)}</strong>{' '}
              <small>{t.forExample(c.example)}</small>
            </p>
            <Choice<string>
              label={t.holds(c.heading.text || String(c.index + 1))}
              value={c.role ?? ASK}
              options={[
                ...(c.role === undefined ? [[ASK, t.choose] as const] : []),
                ...roles.map((o) => [o.answer, o.label] as const),
              ]}
              onChange={(role) => inHand.answer(`column ${c.index}`, role === ASK ? undefined : role)}
            />
            <p className="hint">{measureWords(c)}</p>
          </li>
        ))}
      </ul>
      {unknown.length > 1 && (
        <button
          type="button"
          className="quiet-button"
          onClick={() =>
            inHand.answerAll(Object.fromEntries(unknown.map((c) => [`column ${c.index}`, 'none'])))
          }
        >
          {t.leaveUnknown(unknown.length)}
        </button>
      )}
    </section>
  );
}

function measureWords({ role, heading, unit, per, basis, why }: ReadColumn): string {
  const t = words().table.screen;
  const said = [
    role === 'PROCNT' && heading.crude && t.crudeProtein,
    unit && t.inUnit(unit === 'ug' ? unitWord('ug') : unit),
    per !== undefined && perWords(per),
    basis && (basis === 'as fed' ? t.asFedWord : t.dryWord),
    heading.bound && (heading.bound === 'low' ? t.leastWord : t.mostWord),
  ];
  return [said.filter(Boolean).join(', '), why].filter(Boolean).join('. ');
}

function perWords(per: NonNullable<ReadColumn['per']>): string {
  const t = words().table.screen;
  if (per === 'row') return t.perRowWords;
  return per === 'mix' ? t.perMixWords : t.perGrams(per);
}
