/** Where a table comes from: pasted from the clipboard, or a file. */

import { useId, useState } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import { delimiterWords } from '../../../household/exchange/table/split-text.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { Radios } from '../../shared/Radios.tsx';
import { readTableFile } from './read-file.ts';
import type { TableInHand } from './useTable.ts';

/** Characters that are read while they are typed. */
const MOST_PASTED = 1_000_000;

export function TableSourceForm({ inHand }: { inHand: TableInHand }) {
  const t = words().ownTable.source;
  const f = words().figures;
  const delimiters = delimiterWords();
  const named = (delimiter: string) => delimiters.find(([d]) => d === delimiter)?.[1] ?? delimiter;
  const id = useId();
  const [way, setWay] = useState<'paste' | 'file'>('paste');
  const [fault, setFault] = useState('');
  const { source, split, grid } = inHand;

  function choose(next: 'paste' | 'file') {
    setWay(next);
    setFault('');
    inHand.setSource(undefined);
  }

  function paste(text: string) {
    setFault(text.length > MOST_PASTED ? t.tooLong : '');
    inHand.setSource(
      text.trim() === '' || text.length > MOST_PASTED ? undefined : { kind: 'text', text, name: t.name },
    );
  }

  async function read(file: File | undefined) {
    setFault('');
    inHand.setSource(undefined);
    if (!file) return;
    try {
      inHand.setSource(await readTableFile(file));
    } catch (error) {
      setFault(error instanceof RangeError ? error.message : t.notRead);
    }
  }

  return (
    <section className="panel" aria-label={t.region}>
      <h2>{t.title}</h2>
      <p>{t.text}</p>
      <Radios
        label={t.where}
        value={way}
        options={[
          ['paste', t.pasted],
          ['file', t.inFile],
        ]}
        onChange={choose}
      />
      {way === 'paste' ? (
        <TextField
          className="wide table-paste"
          value={source?.kind === 'text' ? source.text : ''}
          onChange={paste}
        >
          <Label>{t.table}</Label>
          <TextArea rows={7} spellCheck={false} autoComplete="off" wrap="off" />
          <Text slot="description" className="hint">
            {t.how}
          </Text>
        </TextField>
      ) : (
        <div className="wide">
          <label htmlFor={id}>{t.file}</label>
          <input
            id={id}
            type="file"
            accept=".xlsx,.csv,.tsv,.txt,text/csv,text/plain"
            onChange={(e) => void read(e.target.files?.[0])}
          />
        </div>
      )}
      {fault && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      {source?.kind === 'sheets' && source.sheets.length > 1 && (
        <Choice
          label={t.sheet}
          value={String(inHand.sheet)}
          options={source.sheets.map((s, i) => [String(i), s.name] as const)}
          onChange={(i) => inHand.setSheet(Number(i))}
        />
      )}
      {split && (
        <>
          <Choice
            label={t.parted}
            value={split.delimiter}
            options={delimiters}
            onChange={inHand.setDelimiter}
          />
          {split.rivals.length > 0 && (
            <div role="alert" className="notice-line">
              {t.alsoParted(f.either(split.rivals.map(named)))}{' '}
              <button
                type="button"
                className="quiet-button"
                onClick={() => inHand.setDelimiter(split.delimiter)}
              >
                {t.itIs(named(split.delimiter))}
              </button>
            </div>
          )}
        </>
      )}
      {source?.kind === 'text' && source.encoding === 'Windows-1252' && <p className="hint">{t.oldText}</p>}
      {grid && inHand.table?.lacking && (
        <p role="status" className="notice-line">
          {inHand.table.lacking}
        </p>
      )}
    </section>
  );
}
