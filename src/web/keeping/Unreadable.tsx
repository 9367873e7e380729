/** Records that are kept and cannot be shown as what they should be: their raw text, to copy or to delete. */
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { KeptRecord } from '../../household/records.ts';
import { AskFirst } from '../shared/AskFirst.tsx';
import { saveAs } from '../shared/save-as.ts';
import { KIND_WORDS } from '../store/conflict-words.ts';
import { useUnreadable } from '../store/household.ts';
import { removeUnreadable } from '../store/unreadable.ts';

export function Unreadable() {
  const records = useUnreadable();
  if (records.length === 0) return null;
  return (
    <section className="panel" aria-label="Not readable">
      <h2>Not readable</h2>
      <p>
        {records.length === 1 ? 'One record is' : `${records.length} records are`} kept and cannot be shown.
        All else goes on. A backup or its history may hold it as it was.
      </p>
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
  const name = `${KIND_WORDS[kind]} “${id}”`;
  return (
    <li aria-label={name}>
      <h3>{name}</h3>
      <p>{unreadable?.why}</p>
      <details>
        <summary>Its raw text</summary>
        <pre className="raw-text">{raw}</pre>
      </details>
      <div className="button-row">
        <Button className="quiet-button" onPress={() => saveAs(`${kind}-${id}.txt`, 'text/plain', raw)}>
          Save the text
        </Button>
        <Button className="quiet-button" onPress={() => setAsking(true)}>
          Delete
        </Button>
      </div>
      {asking && (
        <AskFirst
          question={`Delete ${name}?`}
          error={remove.error}
          keep="Keep it"
          onKeep={() => setAsking(false)}
          lose="Delete it"
          onLose={() => remove.mutate()}
        >
          Save its text first if you may want it again.
        </AskFirst>
      )}
    </li>
  );
}
