/**
 * Writes the reference file. Layout, all little-endian:
 *
 *     0   magic "POUCHRF" and one version byte
 *     8   length of the header, u32
 *     12  header, UTF-8 JSON, padded with spaces to a multiple of 4
 *     ..  one block per entry of `header.values`, then one per entry of `header.sds`, then one each for refuse and
 *         for the nitrogen factor, where `header.refuse` and `header.proteinFactor` are not null
 *
 * A block is `rows` i32 integers (dense), or n i32 integers and then n u16 row numbers, padded to 4
 * (sparse), whichever is shorter. An amount is its integer / 10^decimals: a division of two exact numbers,
 * so every printed decimal comes back as the same double.
 */
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import { type Header, MAGIC, type Packing, UNKNOWN_INT } from '../reference.ts';
import { type PlainName, TableError, type TableRow } from './table.ts';

const LARGEST_INT = 2 ** 31 - 1;

/** Decimals a number needs when written out, at most 9. */
function decimalsOf(value: number): number {
  for (let d = 0; d < 9; d++) if (Math.round(value * 10 ** d) / 10 ** d === value) return d;
  return 9;
}

/** Rounds to 7 significant digits: more than any table measures, few enough for an i32. */
export function significant(value: number): number {
  return Number(value.toPrecision(7));
}

interface Column {
  readonly packing: Packing;
  readonly bytes: Uint8Array;
}

/** One column of amounts, undefined where unknown; undefined when nothing is known. */
function encodeColumn(
  name: string,
  amounts: readonly (number | undefined)[],
  refs: readonly string[],
): Column | undefined {
  const known = amounts.flatMap((value, row) => (value === undefined ? [] : [{ row, value }]));
  if (known.length === 0) return undefined;

  const largest = known.reduce((most, { value }) => Math.max(most, value), 1);
  const room = Math.floor(Math.log10(LARGEST_INT / largest));
  const decimals = Math.min(
    room,
    known.reduce((most, { value }) => Math.max(most, decimalsOf(value)), 0),
  );
  const cells = known.map(({ row, value }) => {
    const int = Math.round(value * 10 ** decimals);
    // Half a part in a thousand is far below any laboratory's error; more would be a fault in the scale.
    if (Math.abs(int / 10 ** decimals - value) > 5e-4 * value) {
      throw new TableError(refs[row] ?? `row ${row}`, `${name} ${value} does not fit ${decimals} decimals`);
    }
    return { row, int };
  });

  const sparse = cells.length * 6 < amounts.length * 4;
  const size = sparse ? cells.length * 4 + Math.ceil(cells.length / 2) * 4 : amounts.length * 4;
  const view = new DataView(new ArrayBuffer(size));
  if (sparse) {
    for (const [i, { row, int }] of cells.entries()) {
      view.setInt32(i * 4, int, true);
      view.setUint16(cells.length * 4 + i * 2, row, true);
    }
  } else {
    for (let row = 0; row < amounts.length; row++) view.setInt32(row * 4, UNKNOWN_INT, true);
    for (const { row, int } of cells) view.setInt32(row * 4, int, true);
  }
  return { packing: [decimals, sparse ? cells.length : -1], bytes: new Uint8Array(view.buffer) };
}

/**
 * The reference file's bytes. The same rows always give the same bytes.
 * @throws TableError when a reference occurs twice, a plain name points nowhere, or an amount does not fit
 */
export function encodeReference(rows: readonly TableRow[], plainNames: readonly PlainName[]): Uint8Array {
  const rowOf = new Map<string, number>();
  rows.forEach((row, i) => {
    if (rowOf.has(row.ref)) throw new TableError(row.ref, 'occurs twice');
    rowOf.set(row.ref, i);
  });
  if (rows.length > 0xffff) throw new TableError('reference', 'row numbers are u16');
  const refs = rows.map((row) => row.ref);

  const encodeAll = (compositions: Composition[]) =>
    NUTRIENTS.flatMap(({ tag }) => {
      const amounts = compositions.map((composition) => composition[tag]);
      const column = encodeColumn(tag, amounts, refs);
      return column ? [{ ...column, tag }] : [];
    });
  const values = encodeAll(rows.map((row) => row.composition));
  const sds = encodeAll(rows.map((row) => row.sd));
  const refuse = encodeColumn(
    'refuse',
    rows.map((row) => row.refuse),
    refs,
  );
  const proteinFactor = encodeColumn(
    'nitrogen factor',
    rows.map((row) => row.proteinFactor),
    refs,
  );
  const blockOf = (c: Column & { tag: Tag }) => [c.tag, ...c.packing] as const;

  const textsOf = (text: (row: TableRow) => string | undefined) =>
    rows.flatMap((row, i) => {
      const found = text(row);
      return found === undefined ? [] : [[i, found] as const];
    });
  const groups = [...new Set(rows.map((row) => row.tableGroup))];
  const header: Header = {
    refs,
    tableNames: rows.map((row) => row.tableName),
    groups,
    groupOf: rows.map((row) => groups.indexOf(row.tableGroup)),
    plain: plainNames.map(({ ref, name, group, also }) => {
      const row = rowOf.get(ref);
      if (row === undefined) throw new TableError(ref, `"${name}" points to a food that no table holds`);
      return [row, name, group, also];
    }),
    sources: textsOf((row) => row.source),
    scientific: textsOf((row) => row.scientific),
    refuseDescriptions: textsOf((row) => row.refuseDescription),
    notSuggestible: rows.flatMap((row, i) => (row.suggestible ? [] : [i])),
    values: values.map(blockOf),
    sds: sds.map(blockOf),
    refuse: refuse?.packing ?? null,
    proteinFactor: proteinFactor?.packing ?? null,
  };
  const json = new TextEncoder().encode(JSON.stringify(header));

  const headerSize = Math.ceil(json.length / 4) * 4;
  const blocks = [
    ...values,
    ...sds,
    ...(refuse ? [refuse] : []),
    ...(proteinFactor ? [proteinFactor] : []),
  ].map((c) => c.bytes);
  const file = new Uint8Array(12 + headerSize + blocks.reduce((sum, b) => sum + b.length, 0));
  file.set(MAGIC);
  new DataView(file.buffer).setUint32(8, headerSize, true);
  file.fill(0x20, 12, 12 + headerSize);
  file.set(json, 12);
  let at = 12 + headerSize;
  for (const block of blocks) {
    file.set(block, at);
    at += block.length;
  }
  return file;
}
