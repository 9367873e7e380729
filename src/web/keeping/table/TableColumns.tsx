/** Every column of a table: what its heading says, an example, and what it is read as, which the keeper can change. */
import { type ReadColumn, ROLE_WORDS } from '../../../household/exchange/table/read-columns.ts';
import { unitWord } from '../../../nutrition/nutrients.ts';
import { Choice } from '../../shared/Choice.tsx';
import type { TableInHand } from './useTable.ts';

const ASK = '';

export function TableColumns({ inHand, columns }: { inHand: TableInHand; columns: readonly ReadColumn[] }) {
  const unknown = columns.filter((c) => c.role === undefined && c.heading.roles.length === 0);
  return (
    <section className="panel" aria-label="Columns">
      <h2>What the columns hold</h2>
      <ul className="table-columns">
        {columns.map((c) => (
          <li key={c.index} className={c.role === undefined ? 'open' : ''}>
            <p>
              <strong>{c.heading.text || `Column ${c.index + 1}`}</strong>
              <small> for example {c.example}</small>
            </p>
            <Choice<string>
              label={`Column “${c.heading.text || c.index + 1}” holds`}
              value={c.role ?? ASK}
              options={[
                ...(c.role === undefined ? [[ASK, 'choose'] as const] : []),
                ...ROLE_WORDS.map((o) => [o.answer, o.label] as const),
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
          Leave out the {unknown.length} columns that are not known
        </button>
      )}
    </section>
  );
}

function measureWords({ role, heading, unit, per, basis, why }: ReadColumn): string {
  const said = [
    role === 'PROCNT' && heading.crude && 'crude protein (nitrogen × 6.25)',
    unit && `in ${unit === 'ug' ? unitWord('ug') : unit}`,
    per !== undefined && perWords(per),
    basis,
    heading.bound && (heading.bound === 'low' ? 'a guaranteed least' : 'a guaranteed most'),
  ];
  return [said.filter(Boolean).join(', '), why].filter(Boolean).join('. ');
}

function perWords(per: NonNullable<ReadColumn['per']>): string {
  if (per === 'row') return 'per what the row weighs in the mix';
  return per === 'mix' ? 'per 100 g of the whole mix' : `per ${per} g of the food`;
}
