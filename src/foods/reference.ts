/**
 * The reference foods: every row of the open tables, in one compact file.
 * `reference.bin` is made by `npm run reference`; this module only reads it, in Node and in the browser.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import type { Composition, Food } from './food.ts';
import { readableTitle } from './readable-title.ts';
import { bytesOfBits, columnsOf, HEADER_AT, type Header, MAGIC, padded, TEXTS } from './reference-layout.ts';

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
  /** Reference number and name of the food at a row, for what goes through all rows and wants no more. */
  nameAt(row: number): Pick<ReferenceFood, 'ref' | 'name'>;
  /** Largest amount known of a nutrient in a group (table group, or our own group), per 100 g; undefined if none. */
  largest(tag: Tag, group: string): number | undefined;
  /** The same of crude protein, nitrogen x 6.25, g per 100 g. */
  largestCrudeProtein(group: string): number | undefined;
  /** Foods keepers really use, in the order of the hand-made list. */
  plainFoods(): readonly ReferenceFood[];
}

/** A text of every row, empty where there is none. */
interface Texts {
  at(row: number): string;
  /** The row of which it is the text, or undefined. */
  rowOf(text: string): number | undefined;
}

/** The amounts of a food, per 100 g as fed. */
interface Amounts {
  readonly composition: Composition;
  readonly sd: Composition;
}

/**
 * Reads a reference file. A food is read from `bytes` when it is asked for: do not change them afterwards.
 * @throws RangeError when the bytes are no reference file, are of another version, or are cut short
 */
export function decodeReference(bytes: Uint8Array): Reference {
  const { header, section } = opened(bytes);
  const size = header.rows;
  const texts = Object.fromEntries(TEXTS.map((text) => [text, textsIn(section(), section())])) as Record<
    (typeof TEXTS)[number],
    Texts
  >;
  const groupOf = section();
  const amountsOf = amountsIn(header, section(), section());

  const plainOf = new Map(header.plain.map((plain) => [plain[0], plain]));
  const notSuggestible = new Set(header.notSuggestible);
  const tagAt = new Map(header.values.map(([tag], i) => [tag, i]));
  const foods = new Map<number, ReferenceFood>();
  const rows = new Map<string, number | undefined>();

  const build = (row: number): ReferenceFood => {
    const ref = texts.ref.at(row);
    const tableName = texts.tableName.at(row);
    const scientific = texts.scientific.at(row);
    const refuseDescription = texts.refuseDescription.at(row);
    const plain = plainOf.get(row);
    const { refuse, proteinFactor, all } = amountsOf(row);
    // Figures are read when first asked for: a search wants 6,000 names and no figures at all.
    let amounts: Amounts | undefined;
    return {
      ref,
      name: plain?.[1] ?? readableTitle(tableName),
      ...(plain && { group: plain[2] }),
      get composition() {
        amounts ??= all();
        return amounts.composition;
      },
      get sd() {
        amounts ??= all();
        return amounts.sd;
      },
      source: texts.source.at(row) || sourceFromRef(ref, !notSuggestible.has(row)),
      tableName,
      also: plain?.[3] ?? [],
      plain: plain !== undefined,
      suggestible: plain !== undefined || !notSuggestible.has(row),
      tableGroup: header.groups[groupOf[row]!]!,
      ...(proteinFactor !== undefined && { proteinFactor }),
      ...(scientific && { scientific }),
      ...(refuse !== undefined && { refuse }),
      ...(refuseDescription && { refuseDescription }),
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

  return {
    size,
    get: (ref) => {
      if (!rows.has(ref)) rows.set(ref, texts.ref.rowOf(ref));
      const row = rows.get(ref);
      return row === undefined ? undefined : at(row);
    },
    at,
    nameAt: (row) => ({
      ref: texts.ref.at(row),
      name: plainOf.get(row)?.[1] ?? readableTitle(texts.tableName.at(row)),
    }),
    largest: (tag, group) => header.largest[group]?.[tagAt.get(tag) ?? -1] ?? undefined,
    largestCrudeProtein: (group) => header.largestCrudeProtein[group],
    plainFoods: () => header.plain.map(([row]) => at(row)),
  };
}

/** The header of a file, and its sections one after the other. */
function opened(bytes: Uint8Array): { header: Header; section: () => Uint8Array } {
  const anew = 'make it anew with: npm run reference';
  const version = MAGIC.length - 1;
  if (bytes.length < HEADER_AT || MAGIC.some((byte, i) => i < version && bytes[i] !== byte))
    throw new RangeError(`not a reference file; ${anew}`);
  if (bytes[version] !== MAGIC[version])
    throw new RangeError(
      `the reference file has layout ${bytes[version]}, this program reads layout ${MAGIC[version]}; ${anew}`,
    );
  let at = HEADER_AT + new DataView(bytes.buffer, bytes.byteOffset).getUint32(8, true);
  const cutShort = () => new RangeError('the reference file is cut short');
  if (bytes.length < at) throw cutShort();
  const header = JSON.parse(new TextDecoder().decode(bytes.subarray(HEADER_AT, at))) as Header;
  const sections = header.sections.map((length) => {
    const start = at;
    at += padded(length);
    return bytes.subarray(start, start + length);
  });
  if (bytes.length < at) throw cutShort();
  let next = 0;
  return { header, section: () => sections[next++] ?? new Uint8Array() };
}

/** A text for each row, taken out of all of them in one when it is asked for. */
function textsIn(lengths: Uint8Array, utf8: Uint8Array): Texts {
  let opened: { readonly all: string; readonly starts: Uint32Array } | undefined;
  const open = () => {
    opened ??= { all: new TextDecoder().decode(utf8), starts: startsOf(lengths) };
    return opened;
  };
  return {
    at: (row) => {
      const { all, starts } = open();
      return all.slice(starts[row], starts[row + 1]);
    },
    rowOf: (text) => {
      const { all, starts } = open();
      for (let found = all.indexOf(text); found >= 0; found = all.indexOf(text, found + 1)) {
        const row = lastAtMost(starts, found);
        if (starts[row] === found && starts[row + 1] === found + text.length) return row;
      }
      return undefined;
    },
  };
}

/** Where the last number stands in a rising list that is no more than a given one. */
function lastAtMost(rising: Uint32Array, most: number): number {
  let low = 0;
  let high = rising.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (rising[middle]! <= most) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Where each of some things begins that lie one behind the other, and where the last ends. @param lengths u16 each */
function startsOf(lengths: Uint8Array): Uint32Array<ArrayBuffer> {
  const starts = new Uint32Array(lengths.length / 2 + 1);
  for (let i = 0; 2 * i < lengths.length; i++)
    starts[i + 1] = starts[i]! + lengths[2 * i]! + 256 * lengths[2 * i + 1]!;
  return starts;
}

/** The amounts of a row: those that every food is told with, and all others when they are wanted. */
function amountsIn(header: Header, lengths: Uint8Array, records: Uint8Array) {
  const units = columnsOf(header).map((decimals) => 10 ** decimals);
  const width = bytesOfBits(units.length);
  const { values, sds } = header;
  const few = units.length - values.length - sds.length;
  let starts: Uint32Array | undefined;

  /** The known amounts of the columns before `end`, in their order. */
  const read = (row: number, end: number, take: (column: number, amount: number) => void) => {
    starts ??= startsOf(lengths);
    const bits = starts[row]!;
    let at = bits + width;
    for (let column = 0; column < end; column++) {
      if ((records[bits + (column >> 3)]! & (1 << (column & 7))) === 0) continue;
      let int = 0;
      for (let unit = 1; ; unit *= 128) {
        const byte = records[at++]!;
        int += (byte & 127) * unit;
        if (byte < 128) break;
      }
      take(column, int / units[column]!);
    }
  };
  const tags = [...values, ...sds].map(([tag]) => tag);
  return (row: number) => {
    const first: number[] = [];
    read(row, few, (column, amount) => {
      first[column] = amount;
    });
    return {
      refuse: header.refuse === null ? undefined : first[0],
      proteinFactor: header.proteinFactor === null ? undefined : first[few - 1],
      all: (): Amounts => {
        const [composition, sd]: [Composition, Composition] = [{}, {}];
        read(row, units.length, (column, amount) => {
          if (column < few) return;
          (column - few < values.length ? composition : sd)[tags[column - few]!] = amount;
        });
        return { composition, sd };
      },
    };
  };
}

/** @param inSr26 whether the row is in release 26 too, which gives what release 28 has no column for */
function sourceFromRef(ref: string, inSr26: boolean): string {
  const [table, number] = ref.split(':');
  if (table === 'ifct') return `IFCT 2017, ${number}`;
  return `USDA SR28${inSr26 ? ' and SR26' : ''}, NDB ${number}`;
}
