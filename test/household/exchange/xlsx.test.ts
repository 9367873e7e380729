/** Sheets of spreadsheet programs: written as files, read as the page reads them. */
import readExcelFile from 'read-excel-file/universal';
import { describe, expect, it } from 'vitest';
import writeExcelFile from 'write-excel-file/node';
import type { Grid } from '../../../src/household/exchange/table/grid.ts';
import { gridOfSheet } from '../../../src/household/exchange/table/sheet.ts';
import { TABLES } from './invented-tables.ts';
import { settle } from './settle-table.ts';

type SheetCell =
  | string
  | number
  | Date
  | null
  | { value: number | string | Date; format?: string; columnSpan?: number };

async function sheetsOf(sheets: readonly { sheet: string; data: SheetCell[][] }[]): Promise<Grid[]> {
  const buffer = await writeExcelFile(sheets as never).toBuffer();
  const bytes = Uint8Array.from(buffer);
  const read = await readExcelFile(bytes.buffer);
  return read.map(({ data }) => gridOfSheet(data));
}

describe('sheets', () => {
  for (const { what, cells, answers, rows } of TABLES.filter((t) => t.cells))
    it(`hold ${what}`, async () => {
      const data = (cells ?? []).map((row) => row.map((cell) => (cell === '' ? null : cell)));
      const [grid = []] = await sheetsOf([{ sheet: 'Mix', data }]);
      const { table } = settle(grid, answers);
      const foods = table.rows.filter((r) => r.become?.as === 'own');
      expect(foods.map((r) => [r.name, r.share, r.figures.composition])).toEqual(
        rows.map((r) => [r.name, r.share, r.values]),
      );
    });

  it('show percents that are parts of one: it is asked, and both readings are right', async () => {
    const percent = (value: number) => ({ value, format: '0.0%' });
    const [grid = [], notes] = await sheetsOf([
      {
        sheet: 'Winter',
        data: [
          ['Zutat', 'Anteil', 'Rohprotein (%)'],
          ['Hafer', percent(0.6), percent(0.115)],
          ['Erbsen', percent(0.4), percent(0.24)],
        ],
      },
      {
        sheet: 'Notes',
        data: [['only a note'], [{ value: new Date('2026-01-02T00:00:00Z'), format: 'dd/mm/yyyy' }]],
      },
    ]);
    expect(notes).toEqual([['only a note'], ['2026-01-02']]);
    const open = settle(grid, { basis: 'as fed' });
    expect(open.table.settled).toBe(false);
    expect(open.asked).toContain('share-means');
    const { table, asked } = settle(grid, {
      basis: 'as fed',
      'share-means': 'fraction',
      fraction: 'fraction',
    });
    expect(asked).toContain('fraction 2');
    expect(table.rows.map((r) => [r.share, r.figures.composition.PROCNT])).toEqual([
      [60, 11.5],
      [40, 24],
    ]);
  });

  it('with merged headings read as what stands over each column', async () => {
    const [grid = []] = await sheetsOf([
      {
        sheet: 'Mix',
        data: [
          ['Food', { value: 'Per 100 g of dry matter', columnSpan: 2 }, null, 'Moisture'],
          [null, 'Crude protein', 'Crude fat', '%'],
          ['Oats', 12.5, 7, 10],
          ['Peas', 26, 2, 12],
        ],
      },
    ]);
    const { table } = settle(grid, {});
    expect(table.questions.filter((q) => q.answer === undefined)).toEqual([]);
    expect(table.rows.map((r) => r.figures.composition)).toEqual([
      { PROCNT: 11.25, FAT: 6.3, WATER: 10 },
      { PROCNT: 22.88, FAT: 1.76, WATER: 12 },
    ]);
  });
});
