/** Records that are kept and cannot be shown as what they should be: their raw text, to copy or to delete. */
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { KeptRecord } from '../../household/records.ts';
import { words } from '../../words/words.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { saveAs } from '../shared/save-as.ts';
import { useUnreadable } from '../store/household.ts';
import { removeUnreadable } from '../store/unreadable.ts';

export function Unreadable() {
  const records = useUnreadable();
  const t = words().keeping.unreadable;
  if (records.length === 0) return null;
  return (
    <section className="panel" aria-label={t.title}>
      <h2>{t.title}</h2>
      <p>{t.some(records.length)}</p>
      <ul>
        {records.map((record) => (
          <Item key={`${record.kind} ${record.id}`} record={record} />
        ))}
      </ul>
    </section>
  );
}

function Item({ record }: { record: KeptRecord }) {
  const [asking, setAsking] = useState(false);
  const remove = useMutation({ mutationFn: () => removeUnreadable(record) });
  const { kind, id, unreadable } = record;
  const raw = unreadable?.raw ?? '';
  const { keeping, household, common } = words();
  const t = keeping.unreadable;
  const name = t.name(household.kinds[kind], id);
  return (
    <li aria-label={name}>
      <h3>{name}</h3>
      <p>{unreadable?.why}</p>
      <details>
        <summary>{t.raw}</summary>
        <pre className="raw-text">{raw}</pre>
      </details>
      <div className="button-row">
        <Button className="quiet-button" onPress={() => saveAs(`${kind}-${id}.txt`, 'text/plain', raw)}>
          {t.saveText}
        </Button>
        <Button className="quiet-button" onPress={() => setAsking(true)}>
          {common.delete}
        </Button>
      </div>
      {asking && (
        <AskFirst
          question={t.ask(name)}
          error={remove.error}
          keep={t.keep}
          onKeep={() => setAsking(false)}
          lose={t.lose}
          onLose={() => remove.mutate()}
        >
          {t.saveFirst}
        </AskFirst>
      )}
    </li>
  );
}
