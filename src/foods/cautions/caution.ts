/**
 * What a keeper should know before a food goes into a mix: what must never be fed, what is held to a small share,
 * and what is fit only once prepared. The list is kept by hand in cautions.json; every row names its source.
 *
 * Evidence on hamsters themselves is thin. Most rows carry over from dogs, cats, rats, farm animals or people,
 * and say so.
 */
import { words as texts, type Words } from '../../words/words.ts';
import rows from './cautions.json' with { type: 'json' };
import moreNames from './more-names.json' with { type: 'json' };
import type { Language } from './words.ts';

/** `never`: not to be fed at all. `limit`: held to a share. `prepare`: fit to feed once prepared. */
type Severity = 'never' | 'limit' | 'prepare';

/** A row of the list as it is kept. */
interface Row {
  readonly id: string;
  readonly severity: Severity;
  /** A citation, "common practice, no source", or a citation that ends "(from memory)". */
  readonly source: string;
  /** Only for `limit`: percent of the mix by weight, as weighed. All of these are common practice, no source. */
  readonly maxShare?: number;
  /** Species words; the row counts only where the species given has one of them in it. */
  readonly appliesTo?: readonly string[];
  /** True where heat takes the danger away. */
  readonly rawOnly?: boolean;
  /** Words that show the danger is gone already ("cooked", "pitted"), or that another part is meant ("leaf"). */
  readonly exceptWhen?: readonly string[];
  /** Words of which the name must hold one ("raw"), unless the food is said to be raw. */
  readonly onlyWhen?: readonly string[];
  /** Longer phrases that hold one of the words and mean something else ("tea tree"). */
  readonly notWords?: readonly string[];
  /** Rows of the reference tables it covers. */
  readonly refs: readonly string[];
  /** Words by language, written as `phrases.ts` says. */
  readonly words: Readonly<Record<Language, readonly string[]>>;
}

export interface Caution extends Row {
  readonly title: string;
  /** One or two plain sentences for a keeper. */
  readonly reason: string;
  /** What to do instead, or how to prepare it. */
  readonly way: string;
}

export const NO_SOURCE = 'common practice, no source';
export const LANGUAGES: readonly Language[] = ['en', 'de', 'fr', 'nl', 'es'];
const SEVERITIES: readonly unknown[] = ['never', 'limit', 'prepare'];
const FIELDS = 'id severity source maxShare appliesTo rawOnly exceptWhen onlyWhen notWords refs words'.split(
  ' ',
);

/**
 * Reads a caution list.
 * @throws RangeError naming the row, the field and the value that is wrong
 */
export function decodeCautions(data: unknown): readonly Row[] {
  if (!Array.isArray(data)) throw new RangeError('the caution list must be a list of rows');
  const seen = new Set<string>();
  return data.map((row: unknown, at) => {
    const caution = decodeRow(row, at);
    if (seen.has(caution.id))
      throw new RangeError(`caution "${caution.id}" stands twice; give one another id`);
    seen.add(caution.id);
    return caution;
  });
}

function decodeRow(data: unknown, at: number): Row {
  if (typeof data !== 'object' || data === null)
    throw new RangeError(`caution row ${at + 1} must be an object`);
  const row = data as Record<string, unknown>;
  const name = typeof row.id === 'string' ? `"${row.id}"` : `row ${at + 1}`;
  const wrong = (field: string, wanted: string): never => {
    throw new RangeError(`caution ${name}: "${field}" must be ${wanted}, not ${JSON.stringify(row[field])}`);
  };
  for (const field of Object.keys(row))
    if (!FIELDS.includes(field)) wrong(field, 'left out: there is no such field');
  for (const field of ['id', 'source'])
    if (typeof row[field] !== 'string' || row[field] === '') wrong(field, 'a text');
  if (!SEVERITIES.includes(row.severity)) wrong('severity', 'never, limit or prepare');
  if (row.severity === 'limit') {
    const share = row.maxShare;
    if (typeof share !== 'number' || !(share >= 0 && share <= 100))
      wrong('maxShare', 'a percentage from 0 to 100');
  } else if (row.maxShare !== undefined) wrong('maxShare', 'left out unless the severity is limit');
  if (row.rawOnly !== undefined && typeof row.rawOnly !== 'boolean') wrong('rawOnly', 'true or false');
  for (const field of ['appliesTo', 'exceptWhen', 'onlyWhen', 'notWords'])
    if (row[field] !== undefined && !isTexts(row[field])) wrong(field, 'a list of texts');
  if (!isTexts(row.refs)) wrong('refs', 'a list of reference numbers');
  const words = row.words as Record<string, unknown> | null;
  if (typeof words !== 'object' || words === null || !LANGUAGES.every((l) => isTexts(words[l])))
    wrong('words', `lists of texts for ${LANGUAGES.join(', ')}`);
  return data as Row;
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((item) => typeof item === 'string' && item !== '');
}

/** Further names by caution, kept in a file of their own: many cautions share them. */
interface MoreNames {
  readonly for: readonly string[];
  readonly words?: Partial<Record<Language, readonly string[]>>;
  readonly notWords?: readonly string[];
}

function withMoreNames(cautions: readonly Row[], more: readonly MoreNames[]): readonly Row[] {
  for (const id of more.flatMap((names) => names.for))
    if (!cautions.some((caution) => caution.id === id))
      throw new RangeError(`more-names.json: there is no caution "${id}"`);
  return cautions.map((caution) => {
    const mine = more.filter((names) => names.for.includes(caution.id));
    const words = Object.fromEntries(
      LANGUAGES.map((l) => [l, [...caution.words[l], ...mine.flatMap((names) => names.words?.[l] ?? [])]]),
    ) as unknown as Row['words'];
    const notWords = [...(caution.notWords ?? []), ...mine.flatMap((names) => names.notWords ?? [])];
    return { ...caution, words, ...(notWords.length > 0 && { notWords }) };
  });
}

/** The list, in the order of the file, with all its names. */
export const CAUTIONS: readonly Caution[] = withMoreNames(decodeCautions(rows), moreNames).map(said);

/** The row with what the catalogue says of it, in the language spoken when it is asked. */
function said(row: Row): Caution {
  const id = row.id as keyof Words['cautions']['of'];
  return {
    ...row,
    get title() {
      return texts().cautions.of[id].title;
    },
    get reason() {
      return texts().cautions.of[id].reason;
    },
    get way() {
      return texts().cautions.of[id].way;
    },
  };
}

const byId = new Map(CAUTIONS.map((caution) => [caution.id, caution]));

/** The caution of that id, or undefined. */
export function caution(id: string): Caution | undefined {
  return byId.get(id);
}
