/**
 * What an ingredient list may name that a keeper looks out for: sugars, dyes, preservatives, fillers and group names
 * that hide what is in. The list is kept by hand in additives.json; every row names its source.
 */

import { words as texts, type Words } from '../../words/words.ts';
import { LANGUAGES } from '../cautions/caution.ts';
import type { Language } from '../cautions/words.ts';
import rows from './additives.json' with { type: 'json' };

export type AdditiveKind = 'added sugar' | 'dye' | 'preservative' | 'filler' | 'unspecified';
/** `avoid`: the house range leaves it out. `mind`: good to know. */
export type FlagSeverity = 'avoid' | 'mind';

/** A row of the list as it is kept. */
interface Row {
  readonly id: string;
  readonly kind: AdditiveKind;
  readonly severity: FlagSeverity;
  readonly source: string;
  /** True for group names that count only where no member is named after them ("colourants", not "colourants: E 162"). */
  readonly onlyBare?: boolean;
  /** E numbers, without a space: "E320". */
  readonly numbers?: readonly string[];
  /** Longer phrases that mean something else ("sugar snap peas"). */
  readonly notWords?: readonly string[];
  /** Words by language, written as `cautions/phrases.ts` says. */
  readonly words: Readonly<Record<Language, readonly string[]>>;
}

export interface Additive extends Row {
  readonly name: string;
  /** Plain sentences: what it is, what is known of harm, and whether the house range leaves it out. */
  readonly why: string;
}

const KINDS: readonly unknown[] = ['added sugar', 'dye', 'preservative', 'filler', 'unspecified'];

/**
 * Reads an additive list.
 * @throws RangeError naming the row, the field and the value that is wrong
 */
export function decodeAdditives(data: unknown): readonly Row[] {
  if (!Array.isArray(data)) throw new RangeError('the additive list must be a list of rows');
  const seen = new Set<string>();
  return data.map((row: Record<string, unknown> | null, at) => {
    if (typeof row !== 'object' || row === null)
      throw new RangeError(`additive row ${at + 1} must be an object`);
    const wrong = (field: string, wanted: string): never => {
      const name = typeof row.id === 'string' ? `"${row.id}"` : `row ${at + 1}`;
      throw new RangeError(
        `additive ${name}: "${field}" must be ${wanted}, not ${JSON.stringify(row[field])}`,
      );
    };
    for (const field of ['id', 'source'])
      if (typeof row[field] !== 'string' || row[field] === '') wrong(field, 'a text');
    if (!KINDS.includes(row.kind)) wrong('kind', KINDS.join(', '));
    if (row.severity !== 'avoid' && row.severity !== 'mind') wrong('severity', 'avoid or mind');
    const numbers = row.numbers ?? [];
    if (!isTexts(numbers) || numbers.some((n) => !/^E\d{3,4}[a-i]?$/.test(n)))
      wrong('numbers', 'a list of E numbers such as "E320"');
    if (row.notWords !== undefined && !isTexts(row.notWords)) wrong('notWords', 'a list of texts');
    const words = row.words as Record<string, unknown> | undefined;
    if (!words || !LANGUAGES.every((l) => isTexts(words[l])))
      wrong('words', `lists of texts for ${LANGUAGES.join(', ')}`);
    for (const key of [row.id as string, ...(numbers as string[])]) {
      if (seen.has(key)) throw new RangeError(`additive "${key}" stands twice`);
      seen.add(key);
    }
    return row as unknown as Row;
  });
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((item) => typeof item === 'string' && item !== '');
}

/** The list, in the order of the file. */
export const ADDITIVES: readonly Additive[] = decodeAdditives(rows).map(said);

/** The row with what the catalogue says of it, in the language spoken when it is asked. */
function said(row: Row): Additive {
  const id = row.id as keyof Words['cautions']['additives'];
  return {
    ...row,
    get name() {
      return texts().cautions.additives[id].name;
    },
    get why() {
      return texts().cautions.additives[id].why;
    },
  };
}
