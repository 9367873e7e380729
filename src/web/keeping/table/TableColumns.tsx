/** Every column of a table: what its heading says, an example, and what it is read as, which the keeper can change. */

import { type ReadColumn, roleOptions } from '../../../household/exchange/table/read-columns.ts';
import { unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import type { TableInHand } from './useTable.ts';

const ASK = '';

export function TableColumns({ inHand, columns }: { inHand: TableInHand; columns: readonly ReadColumn[] }) {
  const t = words().ownTable.columns;
  const roles = roleOptions();
  const unknown = columns.filter((c) => c.role === undefined && c.heading.roles.length === 0);
  return (
    <section className="panel" aria-label={t.region}>
      <h2>{t.title}</h2>
      <ul className="table-columns">
        {columns.map((c) => (
          <li key={c.index} className={c.role === undefined ? 'open' : ''}>
            <p>
              <strong>{c.heading.text || t.nth(c.index + 1)}</strong>
              <small> {t.example(c.example)}</small>
            </p>
            <Choice<string>
              label={t.holds(String(c.heading.text || c.index + 1))}
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
  const t = words().ownTable.columns;
  const said = [
    role === 'PROCNT' && heading.crude && t.crude,
    unit && t.inUnit(unit === 'ug' ? unitWord('ug') : unit),
    per !== undefined && perWords(per),
    basis && (basis === 'as fed' ? t.asFed : t.dryMatter),
    heading.bound && (heading.bound === 'low' ? t.least : t.most),
  ];
  return [said.filter(Boolean).join(', '), why].filter(Boolean).join('. ');
}

function perWords(per: NonNullable<ReadColumn['per']>): string {
  const t = words().ownTable.columns;
  if (per === 'row') return t.perRow;
  return per === 'mix' ? t.perMix : t.per(per);
}
