/** Where a table comes from: pasted from the clipboard, or a file. */
import { useId, useState } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import { DELIMITER_WORDS, type Delimiter } from '../../../household/exchange/table/split-text.ts';
import { Choice } from '../../shared/Choice.tsx';
import { Radios } from '../../shared/Radios.tsx';
import { readTableFile } from './read-file.ts';
import type { TableInHand } from './useTable.ts';

const DELIMITERS = Object.entries(DELIMITER_WORDS) as [Delimiter, string][];
/** Characters that are read while they are typed. */
const MOST_PASTED = 1_000_000;

export function TableSourceForm({ inHand }: { inHand: TableInHand }) {
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
    setFault(
      text.length > MOST_PASTED
        ? 'That is more than a table of foods has. Leave out what is not needed.'
        : '',
    );
    inHand.setSource(
      text.trim() === '' || text.length > MOST_PASTED ? undefined : { kind: 'text', text, name: 'my table' },
    );
  }

  async function read(file: File | undefined) {
    setFault('');
    inHand.setSource(undefined);
    if (!file) return;
    try {
      inHand.setSource(await readTableFile(file));
    } catch (error) {
      setFault(error instanceof RangeError ? error.message : 'The file could not be read. Choose it again.');
    }
  }

  return (
    <section className="panel" aria-label="Your table">
      <h2>Your own table</h2>
      <p>
        A table of foods with their shares, figures or both, as you keep it: in English, German, French, Dutch
        or Spanish. Nothing is written before you have seen how it reads.
      </p>
      <Radios
        label="Where is it?"
        value={way}
        options={[
          ['paste', 'Copied from a spreadsheet or a page'],
          ['file', 'In a file (.xlsx, .csv, .tsv, .txt)'],
        ]}
        onChange={choose}
      />
      {way === 'paste' ? (
        <TextField
          className="wide table-paste"
          value={source?.kind === 'text' ? source.text : ''}
          onChange={paste}
        >
          <Label>The table</Label>
          <TextArea rows={7} spellCheck={false} autoComplete="off" wrap="off" />
          <Text slot="description" className="hint">
            Select the cells with their headings, copy them, and paste them here.
          </Text>
        </TextField>
      ) : (
        <div className="wide">
          <label htmlFor={id}>File</label>
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
          label="Sheet"
          value={String(inHand.sheet)}
          options={source.sheets.map((s, i) => [String(i), s.name] as const)}
          onChange={(i) => inHand.setSheet(Number(i))}
        />
      )}
      {split && (
        <>
          <Choice
            label="Columns are parted by"
            value={split.delimiter}
            options={DELIMITERS}
            onChange={inHand.setDelimiter}
          />
          {split.rivals.length > 0 && (
            <div role="alert" className="notice-line">
              The columns may also be parted by {split.rivals.map((r) => DELIMITER_WORDS[r]).join(' or ')}.
              Look at the columns below, and choose what parts them.{' '}
              <button
                type="button"
                className="quiet-button"
                onClick={() => inHand.setDelimiter(split.delimiter)}
              >
                It is {DELIMITER_WORDS[split.delimiter]}
              </button>
            </div>
          )}
        </>
      )}
      {source?.kind === 'text' && source.encoding === 'Windows-1252' && (
        <p className="hint">
          Read as Windows-1252, as older spreadsheet programs write. Are ä, é and ñ right below?
        </p>
      )}
      {grid && inHand.table?.lacking && (
        <p role="status" className="notice-line">
          {inHand.table.lacking}
        </p>
      )}
    </section>
  );
}
