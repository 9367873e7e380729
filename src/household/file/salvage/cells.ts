/**
 * The rows on one page of a table, read without SQLite. A cell that does not make sense is passed over.
 * After "Database File Format", sections 1.5 to 1.6 (cells, overflow) and 2.1 (records), https://www.sqlite.org/fileformat2.html
 */
import { PAGE, type Pages } from './pages.ts';

/** A value of a row; blobs, which our tables have none of, are undefined. */
export type Value = string | number | null | undefined;

export interface Row {
  readonly values: readonly Value[];
  /** Numbers of all pages that it lies on. */
  readonly pages: readonly number[];
}

const TABLE_LEAF = 0x0d;
const LEAF_HEADER = 8;
/** Page 1 begins with the file's header. */
const FILE_HEADER = 100;
/** What of a long row stays on its own page, by the format's formulas for tables. */
const MOST_LOCAL = PAGE - 35;
const LEAST_LOCAL = Math.floor(((PAGE - 12) * 32) / 255) - 23;
/** No row of ours is longer, in bytes: a length beyond is damage. */
const LONGEST = 64 * 1024 * 1024;

/** The rows of a page; none where it is no page of a table. */
export function rowsOn(pages: Pages, number: number): Row[] {
  const page = pages.at(number);
  const start = number === 1 ? FILE_HEADER : 0;
  if (!page || page[start] !== TABLE_LEAF) return [];
  const cells = page.readUInt16BE(start + 3);
  const rows: Row[] = [];
  for (let i = 0; i < cells; i++) {
    const pointer = start + LEAF_HEADER + 2 * i;
    if (pointer + 2 > PAGE) break;
    const row = rowAt(pages, number, page, page.readUInt16BE(pointer));
    if (row) rows.push(row);
  }
  return rows;
}

function rowAt(pages: Pages, number: number, page: Buffer, at: number): Row | undefined {
  const length = varint(page, at);
  const rowid = length && varint(page, length.end);
  if (!rowid || length.value < 2 || length.value > LONGEST) return undefined;
  const local = localLength(length.value);
  if (rowid.end + local > PAGE) return undefined;
  const parts = [page.subarray(rowid.end, rowid.end + local)];
  const from = [number];
  if (local < length.value) {
    if (rowid.end + local + 4 > PAGE) return undefined;
    const rest = overflow(pages, page.readUInt32BE(rowid.end + local), length.value - local);
    if (!rest) return undefined;
    parts.push(...rest.parts);
    from.push(...rest.from);
  }
  const values = valuesOf(Buffer.concat(parts));
  return values && { values, pages: from };
}

function localLength(length: number): number {
  if (length <= MOST_LOCAL) return length;
  const some = LEAST_LOCAL + ((length - LEAST_LOCAL) % (PAGE - 4));
  return some <= MOST_LOCAL ? some : LEAST_LOCAL;
}

/** The rest of a long row, page after page; undefined where the chain is broken. */
function overflow(
  pages: Pages,
  first: number,
  length: number,
): { parts: Buffer[]; from: number[] } | undefined {
  const parts: Buffer[] = [];
  const from: number[] = [];
  let left = length;
  for (let number = first; left > 0; ) {
    const page = from.length < pages.count ? pages.at(number) : undefined;
    if (!page) return undefined;
    const part = page.subarray(4, 4 + Math.min(left, PAGE - 4));
    parts.push(part);
    from.push(number);
    left -= part.length;
    number = page.readUInt32BE(0);
  }
  return { parts, from };
}

/** The values of a record; undefined where its header does not fit it. */
function valuesOf(record: Buffer): Value[] | undefined {
  const header = varint(record, 0);
  if (!header || header.value > record.length || header.value < 1) return undefined;
  const types: number[] = [];
  for (let at = header.end; at < header.value; ) {
    const type = varint(record, at);
    if (!type) return undefined;
    types.push(type.value);
    at = type.end;
  }
  const values: Value[] = [];
  let at = header.value;
  for (const type of types) {
    const length = lengthOf(type);
    if (at + length > record.length) return undefined;
    values.push(decoded(type, record.subarray(at, at + length)));
    at += length;
  }
  return at === record.length ? values : undefined;
}

/** Bytes of a value by its type: null, whole numbers of 1 to 8 bytes, a float, the numbers 0 and 1, blobs, texts. */
function lengthOf(type: number): number {
  if (type >= 12) return Math.floor((type - 12) / 2);
  return [0, 1, 2, 3, 4, 6, 8, 8, 0, 0, 0, 0][type] ?? 0;
}

function decoded(type: number, bytes: Buffer): Value {
  if (type === 0) return null;
  if (type >= 1 && type <= 5) return bytes.readIntBE(0, bytes.length);
  if (type === 6) return Number(bytes.readBigInt64BE());
  if (type === 7) return bytes.readDoubleBE();
  if (type === 8 || type === 9) return type - 8;
  return type >= 13 && type % 2 === 1 ? bytes.toString('utf8') : undefined;
}

/** A number of 1 to 9 bytes, seven bits a byte, the highest first. */
function varint(bytes: Buffer, at: number): { value: number; end: number } | undefined {
  let value = 0;
  for (let i = 0; i < 9; i++) {
    const byte = bytes[at + i];
    if (byte === undefined) return undefined;
    if (i === 8) return { value: value * 256 + byte, end: at + 9 };
    value = value * 128 + (byte & 0x7f);
    if (byte < 0x80) return { value, end: at + i + 1 };
  }
  return undefined;
}
