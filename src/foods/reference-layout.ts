/**
 * How the reference file lies in bytes, for what writes it (`build/encode.ts`) and what reads it (`reference.ts`).
 * All numbers are little-endian.
 *
 *     0   magic "POUCHRF" and one version byte
 *     8   length of the header, u32
 *     12  header, UTF-8 JSON, padded with spaces to a multiple of 4
 *     ..  the sections, whose lengths are `header.sections`, each padded with zeros to a multiple of 4:
 *         - for each of {@link TEXTS} its length in every row, u16 UTF-16 units (0 for none), then the texts, UTF-8
 *         - the index into `header.groups` of every row, u8
 *         - the length of the amounts of every row, u16 bytes, then the amounts
 *
 * The amounts of a row are one bit for each column, the lowest first, set where the amount is known, in whole bytes;
 * then the known ones as integers of 7 bits a byte, the lowest first, the top bit set where more follow. The columns are
 * refuse and nitrogen factor, where they have decimals, then those of `header.values` and of `header.sds`. An amount is
 * its integer / 10^decimals: a division of two exact numbers, so every printed decimal comes back as the same double.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import type { FoodGroup } from './food.ts';

/** "POUCHRF" and the version of the layout. */
export const MAGIC = Uint8Array.of(0x50, 0x4f, 0x55, 0x43, 0x48, 0x52, 0x46, 4);

/** Magic, version and the header's length. */
export const HEADER_AT = 12;

/** Texts of a row, in the order of their sections. */
export const TEXTS = ['ref', 'tableName', 'source', 'scientific', 'refuseDescription'] as const;

/** Decimals of a column of amounts. */
type Column = readonly [tag: Tag, decimals: number];

export interface Header {
  readonly rows: number;
  /** Length of each section in bytes, without its padding. */
  readonly sections: readonly number[];
  readonly groups: readonly string[];
  readonly plain: readonly (readonly [
    row: number,
    name: string,
    group: FoodGroup,
    also: readonly string[],
  ])[];
  /** Rows that advice may not bring in. */
  readonly notSuggestible: readonly number[];
  readonly values: readonly Column[];
  readonly sds: readonly Column[];
  /** Decimals of the percentages of refuse; null where no row has one. */
  readonly refuse: number | null;
  /** Decimals of the nitrogen factors; null where no row has one. */
  readonly proteinFactor: number | null;
  /** By group, of the tables or our own: the largest amount of each of `values`; null where nothing is known. */
  readonly largest: Readonly<Record<string, readonly (number | null)[]>>;
  /** The same of crude protein, nitrogen x 6.25. */
  readonly largestCrudeProtein: Readonly<Record<string, number>>;
}

/** The next place that is a multiple of 4. */
export function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}

/** Decimals of all columns of a row, in their order. */
export function columnsOf({
  refuse,
  proteinFactor,
  values,
  sds,
}: Pick<Header, 'refuse' | 'proteinFactor' | 'values' | 'sds'>): number[] {
  const few = [refuse, proteinFactor].flatMap((decimals) => decimals ?? []);
  return [...few, ...[...values, ...sds].map(([, decimals]) => decimals)];
}

/** Bytes that hold so many bits. */
export function bytesOfBits(bits: number): number {
  return Math.ceil(bits / 8);
}
