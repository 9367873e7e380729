/**
 * The reference foods: every row of the open tables, in one compact file.
 * `reference.bin` is made by `npm run reference`; this module only reads it, in Node and in the browser.
 */
import { isTag, type Tag } from '../nutrition/nutrients.ts';
import type { Composition, Food, FoodGroup } from './food.ts';
import { readableTitle } from './readable-title.ts';

export interface ReferenceFood extends Food {
  /** Name as the table prints it. */
  readonly tableName: string;
  /** Other plain words for it. */
  readonly also: readonly string[];
  /** Whether it is one of the foods keepers really use (plain name and group by hand). */
  readonly plain: boolean;
  /**
   * Whether advice (a remedy, a swap, a suggestion) may bring it in: a food that keepers use, or a plain food of USDA
   * SR26 or of the published figures. False for rows that only SR28 has, whose titles alone were judged, and for
   * tables added locally. It says nothing of whether the food is dry, or safe: that is for the caller to see to.
   */
  readonly suggestible: boolean;
  /** Latin name, where a table gives one. */
  readonly scientific?: string;
  /** Group of the table itself: two digits of USDA's food group, IFCT group name, or our own group. */
  readonly tableGroup: string;
  /**
   * Trim loss: percent of the weight as purchased that is not eaten (peel, core, shell). 0 where the table says
   * 0, absent where it says nothing. Source: USDA SR28, field "Refuse".
   */
  readonly refuse?: number;
  /** What is not eaten, in the table's words ("Peel", "Seeds and stem"). Source: USDA SR26. */
  readonly refuseDescription?: string;
}

/** All reference foods with look-up by reference number. */
export interface Reference {
  readonly size: number;
  /** The food with that reference number ("sr28:20038"), or undefined. */
  get(ref: string): ReferenceFood | undefined;
  /** The food at a row, 0 to size - 1, in file order. Throws RangeError outside. */
  at(row: number): ReferenceFood;
  /** Largest amount known of a nutrient in a group (table group, or our own group), per 100 g; undefined if none. */
  largest(tag: Tag, group: string): number | undefined;
  /** Foods keepers really use, in the order of the hand-made list. */
  plainFoods(): readonly ReferenceFood[];
}

/** "POUCHRF" and the version of the layout; see `build/encode.ts` for the layout. */
export const MAGIC = Uint8Array.of(0x50, 0x4f, 0x55, 0x43, 0x48, 0x52, 0x46, 3);

/** The integer that stands for "unknown" in a dense block. */
export const UNKNOWN_INT = -(2 ** 31);

/** Decimals, and how many amounts a sparse block holds; -1 for a dense block. */
export type Packing = readonly [decimals: number, sparse: number];

export type Block = readonly [tag: Tag, ...packing: Packing];

export interface Header {
  readonly refs: readonly string[];
  readonly tableNames: readonly string[];
  readonly groups: readonly string[];
  /** Index into `groups`, per row. */
  readonly groupOf: readonly number[];
  readonly plain: readonly (readonly [
    row: number,
    name: string,
    group: FoodGroup,
    also: readonly string[],
  ])[];
  /** Sources that do not follow from the reference number. */
  readonly sources: Texts;
  readonly scientific: Texts;
  readonly refuseDescriptions: Texts;
  /** Rows that advice may not bring in. */
  readonly notSuggestible: readonly number[];
  readonly values: readonly Block[];
  readonly sds: readonly Block[];
  /** The block of refuse percentages, after all others; null where no row has one. */
  readonly refuse: Packing | null;
  /** The block of nitrogen factors, after that of refuse; null where no row has one. */
  readonly proteinFactor: Packing | null;
}

/** A text for some of the rows. */
type Texts = readonly (readonly [row: number, text: string])[];

/** The amount at a row, or undefined. */
type ReadAmount = (row: number) => number | undefined;

interface Column {
  readonly tag: Tag;
  readonly at: ReadAmount;
}

/**
 * Reads a reference file. Columns stay views on `bytes` (do not change them afterwards); foods are built when asked for.
 * @throws RangeError when the bytes are no reference file, are of another version, or are cut short
 */
export function decodeReference(bytes: Uint8Array): Reference {
  const anew = 'make it anew with: npm run reference';
  const wrong = `not a reference file; ${anew}`;
  const version = MAGIC.length - 1;
  if (bytes.length < 12 || MAGIC.some((byte, i) => i < version && bytes[i] !== byte))
    throw new RangeError(wrong);
  if (bytes[version] !== MAGIC[version])
    throw new RangeError(
      `the reference file has layout ${bytes[version]}, this program reads layout ${MAGIC[version]}; ${anew}`,
    );
  // Typed arrays read in the machine's byte order and from aligned places: copy only where that is not so.
  const buffer = (bytes.byteOffset % 4 === 0 ? bytes : bytes.slice()) as Uint8Array<ArrayBuffer>;
  const headerSize = new DataView(buffer.buffer, buffer.byteOffset).getUint32(8, true);
  let offset = 12 + headerSize;
  if (bytes.length < offset) throw new RangeError('the reference file is cut short');
  const header = JSON.parse(new TextDecoder().decode(buffer.subarray(12, offset))) as Header;
  const size = header.refs.length;

  const readBlock = ([decimals, sparse]: Packing): ReadAmount => {
    const count = sparse < 0 ? size : sparse;
    const length = count * 4 + (sparse < 0 ? 0 : Math.ceil(count / 2) * 4);
    if (offset + length > buffer.length) throw new RangeError('the reference file is cut short');
    const start = buffer.byteOffset + offset;
    offset += length;
    const ints = new Int32Array(buffer.buffer, start, count);
    const unit = 10 ** decimals;
    if (sparse < 0)
      return (row) => {
        const int = ints[row];
        return int === undefined || int === UNKNOWN_INT ? undefined : int / unit;
      };
    const rows = new Uint16Array(buffer.buffer, start + count * 4, count);
    return (row) => {
      const int = ints[positionOf(rows, row)];
      return int === undefined ? undefined : int / unit;
    };
  };
  const readColumn = ([tag, ...packing]: Block): Column => {
    if (!isTag(tag)) throw new RangeError(wrong);
    return { tag, at: readBlock(packing) };
  };
  const values = header.values.map(readColumn);
  const sds = header.sds.map(readColumn);
  const refuseAt = header.refuse ? readBlock(header.refuse) : () => undefined;
  const factorAt = header.proteinFactor ? readBlock(header.proteinFactor) : () => undefined;

  const rowOf = new Map(header.refs.map((ref, row) => [ref, row]));
  const plainOf = new Map(header.plain.map((plain) => [plain[0], plain]));
  const sourceOf = new Map(header.sources);
  const scientificOf = new Map(header.scientific);
  const refuseDescriptionOf = new Map(header.refuseDescriptions);
  const notSuggestible = new Set(header.notSuggestible);
  const foods = new Map<number, ReferenceFood>();
  const largestOf = new Map<string, number | undefined>();

  const build = (row: number): ReferenceFood => {
    const [ref, tableName, groupNumber] = [header.refs[row], header.tableNames[row], header.groupOf[row]];
    const tableGroup = groupNumber === undefined ? undefined : header.groups[groupNumber];
    if (ref === undefined || tableName === undefined || tableGroup === undefined) throw new RangeError(wrong);
    const plain = plainOf.get(row);
    const refuse = refuseAt(row);
    const proteinFactor = factorAt(row);
    const scientific = scientificOf.get(row);
    const refuseDescription = refuseDescriptionOf.get(row);
    // Figures are read when first asked for: a search index wants 9,000 names and no figures at all.
    let composition: Composition | undefined;
    let sd: Composition | undefined;
    return {
      ref,
      name: plain?.[1] ?? readableTitle(tableName),
      ...(plain && { group: plain[2] }),
      get composition() {
        composition ??= amounts(values, row);
        return composition;
      },
      get sd() {
        sd ??= amounts(sds, row);
        return sd;
      },
      source: sourceOf.get(row) ?? sourceFromRef(ref, !notSuggestible.has(row)),
      tableName,
      also: plain?.[3] ?? [],
      plain: plain !== undefined,
      suggestible: plain !== undefined || !notSuggestible.has(row),
      tableGroup,
      ...(proteinFactor !== undefined && { proteinFactor }),
      ...(scientific !== undefined && { scientific }),
      ...(refuse !== undefined && { refuse }),
      ...(refuseDescription !== undefined && { refuseDescription }),
    };
  };

  const at = (row: number): ReferenceFood => {
    if (!Number.isInteger(row) || row < 0 || row >= size)
      throw new RangeError(`no row ${row} among ${size} foods`);
    const had = foods.get(row);
    if (had) return had;
    const food = build(row);
    foods.set(row, food);
    return food;
  };

  const findLargest = (tag: Tag, group: string): number | undefined => {
    const column = values.find((c) => c.tag === tag);
    if (!column) return undefined;
    const tableGroup = header.groups.indexOf(group);
    let largest: number | undefined;
    for (let row = 0; row < size; row++) {
      if (header.groupOf[row] !== tableGroup && plainOf.get(row)?.[2] !== group) continue;
      const value = column.at(row);
      if (value !== undefined && (largest === undefined || value > largest)) largest = value;
    }
    return largest;
  };

  return {
    size,
    get: (ref) => {
      const row = rowOf.get(ref);
      return row === undefined ? undefined : at(row);
    },
    at,
    largest: (tag, group) => {
      const key = `${tag} ${group}`;
      if (!largestOf.has(key)) largestOf.set(key, findLargest(tag, group));
      return largestOf.get(key);
    },
    plainFoods: () => header.plain.map(([row]) => at(row)),
  };
}

function amounts(columns: readonly Column[], row: number): Composition {
  const found: Composition = {};
  for (const column of columns) {
    const value = column.at(row);
    if (value !== undefined) found[column.tag] = value;
  }
  return found;
}

/** Where a number stands in a rising list, or -1. */
function positionOf(rising: Uint16Array, wanted: number): number {
  let low = 0;
  let high = rising.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = rising[middle]!;
    if (found === wanted) return middle;
    if (found < wanted) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}

/** @param inSr26 whether the row is in release 26 too, which gives what release 28 has no column for */
function sourceFromRef(ref: string, inSr26: boolean): string {
  const [table, number] = ref.split(':');
  if (table === 'ifct') return `IFCT 2017, ${number}`;
  return `USDA SR28${inSr26 ? ' and SR26' : ''}, NDB ${number}`;
}

export type { FoodGroup };
