/** What can be saved as files: everything, tables for a spreadsheet, one mix or food for another keeper. */

import { useState } from 'react';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';

const TABLES = [
  ...(['foods', 'mixes', 'lots', 'batches', 'pours'] as const),
  ...(['animals', 'weighings', 'feedings', 'trials', 'notes'] as const),
];

export function TakeOut() {
  const [decimal, setDecimal] = useState<'point' | 'comma'>(
    words().figures.number(0.5) === '0.5' ? 'point' : 'comma',
  );
  const t = words().exchange.takeOut;
  return (
    <section className="panel" aria-label={t.title}>
      <h2>{t.title}</h2>
      <p>{t.text}</p>
      <a className="button strong" href="/api/export" download="pouchful-household.json">
        {t.all}
      </a>
      <h3>{t.tables}</h3>
      <Choice
        label={t.decimal}
        value={decimal}
        options={[
          ['point', t.point],
          ['comma', t.comma],
        ]}
        onChange={setDecimal}
      />
      <ul className="file-list">
        {TABLES.map((name) => (
          <li key={name}>
            <a href={`/api/export/${name}.csv?decimal=${decimal}`} download={`pouchful-${name}.csv`}>
              {t.names[name]}
            </a>
          </li>
        ))}
      </ul>
      <ForAnother />
    </section>
  );
}

function ForAnother() {
  const t = words().exchange.takeOut;
  const { house } = useMixDraft();
  const things = [
    ...house.mixes.map((m) => [`mix/${m.id}`, t.mix(m.name)] as const),
    ...house.foods.map((f) => [`food/${f.id}`, t.food(f.name)] as const),
  ];
  const [chosen, setChosen] = useState('');
  const [first] = things;
  if (!first) return null;
  const path = things.some(([p]) => p === chosen) ? chosen : first[0];
  const [what = '', ...id] = path.split('/');
  return (
    <>
      <h3>{t.forAnother}</h3>
      <p className="hint">{t.forAnotherText}</p>
      <Choice label={t.mixOrFood} value={path} options={things} onChange={setChosen} />
      <p>
        <a
          className="button"
          href={`/api/export/${what}/${encodeURIComponent(id.join('/'))}`}
          download={`pouchful-${what}.json`}
        >
          {t.save}
        </a>
      </p>
    </>
  );
}
