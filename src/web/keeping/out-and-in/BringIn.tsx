/** A file chosen to come in: what kind it is, what it would change, and the press that does it. */

import { useId, useRef, useState } from 'react';
import { MOST_FILE_BYTES, PART_FORMAT } from '../../../household/exchange/format.ts';
import { words } from '../../../words/words.ts';
import { HouseholdFile } from './HouseholdFile.tsx';
import { PartFile } from './PartFile.tsx';

interface Chosen {
  readonly name: string;
  readonly text: string;
}

export function BringIn() {
  const t = words().exchange.bringIn;
  const id = useId();
  const [chosen, setChosen] = useState<Chosen>();
  const [fault, setFault] = useState('');
  const [done, setDone] = useState('');
  const input = useRef<HTMLInputElement>(null);

  async function choose(file: File | undefined) {
    setFault('');
    setDone('');
    setChosen(undefined);
    if (!file) return;
    if (file.size > MOST_FILE_BYTES) return setFault(t.tooBig(file.name, MOST_FILE_BYTES / 1_000_000));
    setChosen({ name: file.name, text: await file.text() });
  }

  function end(told: string) {
    setChosen(undefined);
    setDone(told);
    if (input.current) input.current.value = '';
  }

  return (
    <section className="panel" aria-label={t.title}>
      <h2>{t.title}</h2>
      <p>{t.text}</p>
      <label htmlFor={id}>{t.file}</label>
      <input
        ref={input}
        id={id}
        type="file"
        accept=".json,application/json"
        onChange={(e) => {
          choose(e.target.files?.[0]).catch(() => setFault(t.notRead));
        }}
      />
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      {done && (
        <p role="status" className="notice-line">
          {done}
        </p>
      )}
      {chosen &&
        (isPart(chosen.text) ? (
          <PartFile key={chosen.text} {...chosen} onDone={end} />
        ) : (
          <HouseholdFile key={chosen.text} {...chosen} onDone={end} />
        ))}
    </section>
  );
}

/** Which kind of file it is; whether it is a good one, the server finds out. */
function isPart(text: string): boolean {
  try {
    return (JSON.parse(text) as { format?: unknown } | null)?.format === PART_FORMAT;
  } catch {
    return false;
  }
}
