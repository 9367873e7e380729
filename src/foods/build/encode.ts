/** Writes the reference file, as `../reference-layout.ts` says that it lies. */
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { crudeProtein } from '../crude-protein.ts';
import type { Composition } from '../food.ts';
import { bytesOfBits, HEADER_AT, type Header, MAGIC, padded, TEXTS } from '../reference-layout.ts';
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

/** Amounts of one kind, as integers, undefined where unknown. */
interface Column {
  readonly decimals: number;
  readonly ints: readonly (number | undefined)[];
}

/** One column of amounts, undefined where unknown; undefined when nothing is known. */
function encodeColumn(
  name: string,
  amounts: readonly (number | undefined)[],
  refs: readonly string[],
): Column | undefined {
  const known = amounts.filter((value) => value !== undefined);
  if (known.length === 0) return undefined;

  const largest = known.reduce((most, value) => Math.max(most, value), 1);
  const room = Math.floor(Math.log10(LARGEST_INT / largest));
  const decimals = Math.min(
    room,
    known.reduce((most, value) => Math.max(most, decimalsOf(value)), 0),
  );
  const ints = amounts.map((value, row) => {
    if (value === undefined) return undefined;
    const refused = (why: string) => new TableError(refs[row] ?? `row ${row}`, `${name} ${value} ${why}`);
    if (value < 0) throw refused('is below 0');
    const int = Math.round(value * 10 ** decimals);
    // Half a part in a thousand is far below any laboratory's error; more would be a fault in the scale.
    if (Math.abs(int / 10 ** decimals - value) > 5e-4 * value)
      throw refused(`does not fit ${decimals} decimals`);
    return int;
  });
  return { decimals, ints };
}

/** The known amounts of a row, as the layout says. */
function encodeRow(columns: readonly Column[], row: number): Uint8Array {
  const bytes: number[] = Array.from({ length: bytesOfBits(columns.length) }, () => 0);
  for (const [column, { ints }] of columns.entries()) {
    const int = ints[row];
    if (int === undefined) continue;
    bytes[column >> 3] = (bytes[column >> 3] ?? 0) | (1 << (column & 7));
    let left = int;
    for (; left > 127; left = Math.floor(left / 128)) bytes.push((left % 128) + 128);
    bytes.push(left);
  }
  return Uint8Array.from(bytes);
}

/** Things that lie one behind the other, with the length of each before them. */
function inOne(things: readonly Uint8Array[], lengths: readonly number[]): [Uint8Array, Uint8Array] {
  const view = new DataView(new ArrayBuffer(2 * lengths.length));
  for (const [i, length] of lengths.entries()) {
    if (length > 0xffff) throw new TableError(`row ${i}`, 'lengths are u16');
    view.setUint16(2 * i, length, true);
  }
  const all = new Uint8Array(things.reduce((sum, thing) => sum + thing.length, 0));
  let at = 0;
  for (const thing of things) {
    all.set(thing, at);
    at += thing.length;
  }
  return [new Uint8Array(view.buffer), all];
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
  const columnOf = ({ tag, decimals }: Column & { tag: Tag }) => [tag, decimals] as const;

  const groups = [...new Set(rows.map((row) => row.tableGroup))];
  if (groups.length > 0xff) throw new TableError('reference', 'group numbers are u8');
  const plain = plainNames.map(({ ref, name, group, also }) => {
    const row = rowOf.get(ref);
    if (row === undefined) throw new TableError(ref, `"${name}" points to a food that no table holds`);
    return [row, name, group, also] as const;
  });
  const plainGroupOf = new Map<number, string>(plain.map(([row, , group]) => [row, group]));
  const groupsOf = (row: number) =>
    [rows[row]?.tableGroup, plainGroupOf.get(row)].filter((group) => group !== undefined);

  const columns = [...(refuse ? [refuse] : []), ...(proteinFactor ? [proteinFactor] : []), ...values, ...sds];
  const texts = TEXTS.flatMap((text) => {
    const given = rows.map((row) => row[text] ?? '');
    return inOne(
      given.map((one) => new TextEncoder().encode(one)),
      given.map((one) => one.length),
    );
  });
  const amounts = rows.map((_, row) => encodeRow(columns, row));
  const sections = [
    ...texts,
    Uint8Array.from(rows, (row) => groups.indexOf(row.tableGroup)),
    ...inOne(
      amounts,
      amounts.map((one) => one.length),
    ),
  ];
  const header: Header = {
    rows: rows.length,
    sections: sections.map((section) => section.length),
    groups,
    plain,
    notSuggestible: rows.flatMap((row, i) => (row.suggestible ? [] : [i])),
    values: values.map(columnOf),
    sds: sds.map(columnOf),
    refuse: refuse?.decimals ?? null,
    proteinFactor: proteinFactor?.decimals ?? null,
    largest: largestIn(values, rows.length, groupsOf),
    largestCrudeProtein: largestCrudeIn(rows, groupsOf),
  };
  return fileOf(header, sections);
}

/** Groups of a row: that of its table, and our own where it has one. */
type GroupsOf = (row: number) => readonly string[];

/** Largest amount of each column by group, as it is read back. */
function largestIn(columns: readonly Column[], rows: number, groupsOf: GroupsOf): Header['largest'] {
  const largest: Record<string, (number | null)[]> = {};
  for (let row = 0; row < rows; row++)
    for (const group of groupsOf(row)) {
      largest[group] ??= columns.map(() => null);
      const of = largest[group];
      for (const [column, { decimals, ints }] of columns.entries()) {
        const int = ints[row];
        if (int !== undefined) of[column] = Math.max(of[column] ?? 0, int / 10 ** decimals);
      }
    }
  return largest;
}

function largestCrudeIn(rows: readonly TableRow[], groupsOf: GroupsOf): Header['largestCrudeProtein'] {
  const largest: Record<string, number> = {};
  for (const [row, food] of rows.entries()) {
    const crude = crudeProtein(food)?.value;
    if (crude === undefined) continue;
    for (const group of groupsOf(row)) largest[group] = Math.max(largest[group] ?? 0, crude);
  }
  return largest;
}

function fileOf(header: Header, sections: readonly Uint8Array[]): Uint8Array {
  const json = new TextEncoder().encode(JSON.stringify(header));
  const start = HEADER_AT + padded(json.length);
  const file = new Uint8Array(start + sections.reduce((sum, section) => sum + padded(section.length), 0));
  file.set(MAGIC);
  new DataView(file.buffer).setUint32(8, padded(json.length), true);
  file.fill(0x20, HEADER_AT, start);
  file.set(json, HEADER_AT);
  let at = start;
  for (const section of sections) {
    file.set(section, at);
    at += padded(section.length);
  }
  return file;
}
