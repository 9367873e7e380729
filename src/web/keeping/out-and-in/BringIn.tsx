/** A file chosen to come in: what kind it is, what it would change, and the press that does it. */
import { useId, useRef, useState } from 'react';
import { MOST_FILE_BYTES, PART_FORMAT } from '../../../household/exchange/format.ts';
import { HouseholdFile } from './HouseholdFile.tsx';
import { PartFile } from './PartFile.tsx';

interface Chosen {
  readonly name: string;
  readonly text: string;
}

export function BringIn() {
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
    if (file.size > MOST_FILE_BYTES)
      return setFault(
        `${file.name} has more than ${MOST_FILE_BYTES / 1_000_000} MB, the most that is taken in. Is it the right file?`,
      );
    setChosen({ name: file.name, text: await file.text() });
  }

  function end(words: string) {
    setChosen(undefined);
    setDone(words);
    if (input.current) input.current.value = '';
  }

  return (
    <section className="panel" aria-label="Bring in">
      <h2>Bring in</h2>
      <p>
        A file saved from Pouchful: a whole household, or one mix or food from another keeper. It is looked at
        first; nothing is written until you have seen what would change.
      </p>
      <label htmlFor={id}>File</label>
      <input
        ref={input}
        id={id}
        type="file"
        accept=".json,application/json"
        onChange={(e) => {
          choose(e.target.files?.[0]).catch(() => setFault('The file could not be read. Choose it again.'));
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
