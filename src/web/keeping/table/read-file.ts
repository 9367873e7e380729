/** A table from a file or the clipboard, as the text or the cells that it holds. */
import { decodeText } from '../../../household/exchange/table/decode.ts';
import type { Grid } from '../../../household/exchange/table/grid.ts';
import { gridOfSheet } from '../../../household/exchange/table/sheet.ts';

/** Bytes of a table's file at most. */
const MOST_BYTES = 5_000_000;

export type TableSource =
  | { readonly kind: 'text'; readonly text: string; readonly name: string; readonly encoding?: string }
  | {
      readonly kind: 'sheets';
      readonly sheets: readonly { readonly name: string; readonly grid: Grid }[];
      readonly name: string;
    };

/** @throws RangeError with what to do, where the file cannot be read */
export async function readTableFile(file: File): Promise<TableSource> {
  if (file.size > MOST_BYTES)
    throw new RangeError(
      `${file.name} has more than ${MOST_BYTES / 1_000_000} MB. Leave out what is no table of foods, or copy the table and paste it.`,
    );
  const bytes = new Uint8Array(await file.arrayBuffer());
  const [first, second, third, fourth] = bytes;
  // A spreadsheet's file is a ZIP.
  if (first === 0x50 && second === 0x4b && third === 3 && fourth === 4) return readSheets(file, bytes);
  if (first === 0xd0 && second === 0xcf)
    throw new RangeError(
      `${file.name} is of an older kind of spreadsheet file (.xls). Save it as .xlsx or .csv, or copy the table and paste it.`,
    );
  const { text, encoding } = decodeText(bytes);
  if (text.includes('\0'))
    throw new RangeError(
      `${file.name} is no text and no .xlsx file. Save the table as .xlsx or .csv, or copy it and paste it.`,
    );
  return { kind: 'text', text, name: file.name, encoding };
}

async function readSheets(file: File, bytes: Uint8Array): Promise<TableSource> {
  try {
    const { default: readExcelFile } = await import('read-excel-file/universal');
    const sheets = await readExcelFile(bytes.slice().buffer);
    return {
      kind: 'sheets',
      name: file.name,
      sheets: sheets.map(({ sheet, data }) => ({ name: sheet, grid: gridOfSheet(data) })),
    };
  } catch {
    throw new RangeError(
      `${file.name} could not be read as a spreadsheet; it may be damaged or locked with a password. Save it anew as .xlsx or .csv, or copy the table and paste it.`,
    );
  }
}
