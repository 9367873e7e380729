/** A table on its way in: where it comes from, the keeper's answers, and how it reads with them. */
import { useMemo, useState } from 'react';
import type { TableAnswers } from '../../../household/exchange/table/asked.ts';
import { readTable } from '../../../household/exchange/table/read-table.ts';
import { type Delimiter, splitText } from '../../../household/exchange/table/split-text.ts';
import type { OwnFood } from '../../../household/model.ts';
import type { TableSource } from './read-file.ts';

export function useTable(ownFoods: readonly OwnFood[]) {
  const [source, setSource] = useState<TableSource>();
  const [answers, setAnswers] = useState<TableAnswers>({});
  const [delimiter, setDelimiter] = useState<Delimiter>();
  const [sheet, setSheet] = useState(0);

  const split = useMemo(
    () => (source?.kind === 'text' ? splitText(source.text, delimiter) : undefined),
    [source, delimiter],
  );
  const grid = source?.kind === 'sheets' ? source.sheets[sheet]?.grid : split?.grid;
  const names = useMemo(() => new Map(ownFoods.map((f) => [f.id, f.name])), [ownFoods]);
  const table = useMemo(
    () => (grid && grid.length > 0 ? readTable(grid, answers, names) : undefined),
    [grid, answers, names],
  );

  return {
    source,
    split,
    grid,
    table,
    answers,
    sheet,
    /** Another table: what was answered of the last one says nothing of it. */
    setSource(next: TableSource | undefined) {
      setSource(next);
      setDelimiter(undefined);
      setSheet(0);
      setAnswers({});
    },
    setDelimiter(next: Delimiter) {
      setDelimiter(next);
      setAnswers({});
    },
    setSheet(next: number) {
      setSheet(next);
      setAnswers({});
    },
    /** Undefined takes an answer back. */
    answer(id: string, answer: string | undefined) {
      setAnswers(({ [id]: _before, ...rest }) => (answer === undefined ? rest : { ...rest, [id]: answer }));
    },
    answerAll(all: TableAnswers) {
      setAnswers((before) => ({ ...before, ...all }));
    },
  };
}

export type TableInHand = ReturnType<typeof useTable>;
