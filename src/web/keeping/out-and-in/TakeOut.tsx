/** What can be saved as files: everything, tables for a spreadsheet, one mix or food for another keeper. */
import { useState } from 'react';
import { Choice } from '../../shared/Choice.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';

const TABLES: readonly (readonly [name: string, words: string])[] = [
  ['foods', 'Own foods'],
  ['mixes', 'Shares of mixes'],
  ['lots', 'Lots'],
  ['batches', 'Batches'],
  ['pours', 'Pours'],
  ['animals', 'Animals'],
];

export function TakeOut() {
  const [decimal, setDecimal] = useState<'point' | 'comma'>('point');
  return (
    <section className="panel" aria-label="Take out">
      <h2>Take out</h2>
      <p>
        Everything as one open file that any program can read, and that Pouchful brings in again as it was.
        Its history and its backups stay here.
      </p>
      <a className="button strong" href="/api/export" download="pouchful-household.json">
        Save everything as one file
      </a>
      <h3>Tables for a spreadsheet</h3>
      <Choice
        label="Decimal mark"
        value={decimal}
        options={[
          ['point', '6.25, columns parted by commas'],
          ['comma', '6,25, columns parted by semicolons'],
        ]}
        onChange={setDecimal}
      />
      <ul className="file-list">
        {TABLES.map(([name, words]) => (
          <li key={name}>
            <a href={`/api/export/${name}.csv?decimal=${decimal}`} download={`pouchful-${name}.csv`}>
              {words}
            </a>
          </li>
        ))}
      </ul>
      <ForAnother />
    </section>
  );
}

function ForAnother() {
  const { house } = useMixDraft();
  const things = [
    ...house.mixes.map((m) => [`mix/${m.id}`, `Mix: ${m.name}`] as const),
    ...house.foods.map((f) => [`food/${f.id}`, `Food: ${f.name}`] as const),
  ];
  const [chosen, setChosen] = useState('');
  const [first] = things;
  if (!first) return null;
  const path = things.some(([p]) => p === chosen) ? chosen : first[0];
  const [what = '', ...id] = path.split('/');
  return (
    <>
      <h3>One mix or food for another keeper</h3>
      <p className="hint">
        With the own foods and the own target that a mix names; without animals, cupboard, prices and what
        your animal refuses.
      </p>
      <Choice label="Mix or food" value={path} options={things} onChange={setChosen} />
      <p>
        <a
          className="button"
          href={`/api/export/${what}/${encodeURIComponent(id.join('/'))}`}
          download={`pouchful-${what}.json`}
        >
          Save as a file
        </a>
      </p>
    </>
  );
}
