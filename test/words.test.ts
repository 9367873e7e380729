/**
 * One catalogue of all texts: what a keeper reads stands in `src/words/`, in three languages, and nowhere else.
 * TEXTS_IN=src/web/drying looks at one folder only.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { english } from '../src/words/en/index.ts';
import { wordsIn } from '../src/words/languages.ts';
import { LANGUAGES, PLAIN_MANNER } from '../src/words/manner.ts';
import { asksWhileLoaded, textsOutside } from './texts-outside.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** Files that speak to no keeper, or in a language of their own, each with the reason. */
const ELSEWHERE: readonly (readonly [path: string, why: string])[] = [
  ['src/household/demo.ts', 'the demonstration’s own data'],
  ['src/household/migrations.ts', 'SQL'],
  ['src/household/to-records.ts', 'SQL'],
  ['src/household/say-printed-lists.ts', 'SQL'],
  ['src/household/say-protein-factors.ts', 'SQL'],
  ['src/household/store/tables.ts', 'SQL'],
  ['src/household/backup/contents.ts', 'SQL'],
  ['src/household/backup/go-back.ts', 'SQL'],
  ['src/household/file/', 'SQL, and what the terminal says of a file that is not opened'],
  ['src/household/shape/kitchen-schemas.ts', 'descriptions in the machine interface'],
  ['src/household/shape/schemas.ts', 'descriptions in the machine interface'],
  ['src/household/hosted.ts', 'SQL, and what the terminal says of a database that is not opened'],
  ['src/web/store/device-name.ts', 'names of browsers and systems'],
  ['src/household/exchange/csv-tables.ts', 'headings of files that other programs read'],
  ['src/household/exchange/csv-care.ts', 'headings of files that other programs read'],
  ['src/household/exchange/table/words.ts', 'words that are recognised in tables'],
  ['src/words/', 'the catalogue itself'],
  ['src/care/hands/allergen-words.ts', 'words that are recognised in names and lists, and never said'],
  ['src/cli/', 'the command line speaks English'],
  ['src/server/', 'the terminal and the machine interface speak English'],
  ['src/foods/build/', 'a build step'],
  ['src/foods/forms/report.ts', 'a report for who keeps the program'],
  ['src/foods/forms/fit.ts', 'a build step'],
  [
    'src/foods/forms/compare-pairs.ts',
    'pairs of the tables, and why some are left out: for who keeps the program',
  ],
  ['src/foods/label/snippets/', 'labels that the reader is tested with, in five languages'],
  ['src/foods/label/pastes/', 'words of pastes that the reader is tested with, in five languages'],
  ...[
    'ahead',
    'basis-words',
    'context',
    'label-kind',
    'nutrient-words',
    'role-words',
    'suspect',
    'untagged-words',
    'vitamin-words',
  ].map(
    (file) => [`src/foods/label/${file}.ts`, 'words that are recognised on labels, and never said'] as const,
  ),
  ['src/foods/cautions/', 'words that are recognised in names and lists, and never said'],
  ['src/foods/ingredients/e-numbers.ts', 'words that are recognised in lists of ingredients'],
  ['src/foods/ingredients/split.ts', 'words that are recognised in lists of ingredients'],
  ['src/foods/ingredients/additive.ts', 'faults of the list of additives, told to who keeps it'],
  ['src/foods/readable-title.ts', 'words of the titles of a table'],
  ['src/foods/variation-class.ts', 'classes of nutrients by which a table of variation is looked up'],
  ['src/foods/variation.ts', 'sources of spreads, kept with the figures in the words of who wrote them'],
  ['src/foods/reference.ts', 'sources of a table, and faults of its file'],
  ['src/foods/missing-ref.ts', 'names of a table that is no longer shipped, told on the command line'],
  ['src/targets/nrc.ts', 'sources of figures, said by `sourceWords` of src/foods/source-words.ts'],
  ['src/targets/upper-limits.ts', 'sources of figures, said by `sourceWords`'],
  ['src/targets/profiles.ts', 'sources of figures, said by `sourceWords`'],
  ['src/web/app/failure-report.ts', 'a report to pass on to who keeps the program'],
  ['src/care/figures/', 'figures with their sources, said by `sourceWords`'],
  ['src/formulation/problem/', 'faults of problem.json name fields of that file'],
  ['src/household/store/cuts.ts', 'SQL'],
  ['src/household/store/section.ts', 'SQL'],
];

/** Values that are kept or compared and never shown as they are; where they are, the catalogue has a word for each. */
const VALUES: ReadonlySet<string> = new Set([
  ...['is not', 'brought back', 'few to buy', 'energy share', 'Windows-1252'],
  ...['as fed', 'dry matter', 'per 1000 kcal'],
  ...['amino acid', 'added sugar'],
  ...['crushed oil seed', 'oil seed', 'crushed grain', 'nut in shell'],
  ...['given up', 'as planned', 'left out', 'to come'],
  ...['golden hamster', 'dwarf hamster', "Campbell's hamster", 'winter white hamster'],
  ...['Roborovski hamster', 'Chinese hamster', 'given away', 'next visit', 'short days'],
  ...['in part', 'maybe recalled', 'trial ended'],
  ...['growth and adult', 'pregnant or nursing'],
  // Sources, said by `sourceWords` of src/foods/source-words.ts.
  ...['common practice, no source', 'own choice'],
  // Carbohydrate as labels mean it, and how several sources were combined.
  ...['available carbohydrate', 'with fibre', 'without fibre', 'random effects'],
  // Roles of words on labels, and words that are recognised there.
  ...['serving size', 'serving count', 'energy share', 'por cada', 'amount per'],
  // Steps of a long answer.
  ...['own mixes', 'one mix'],
  // SQL beside texts.
  ...['changes as c', 'changes as next', 'changes as later', 'records as now'],
  ...['next.seq as nextSeq', 'next.before as replaced', 'now.body as now'],
  ...["kind NOT IN ('feedings', 'weighings')", 'PRAGMA data_version'],
  // Names of words of the trade.
  ...Object.keys(english(PLAIN_MANNER).terms),
]);

const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .map((f) => `src/${f.replaceAll('\\', '/')}`)
  .filter((f) => /\.tsx?$/.test(f) && !/\.test\.tsx?$|\.d\.ts$/.test(f))
  .filter((f) => !ELSEWHERE.some(([path]) => f.startsWith(path)))
  .filter((f) => f.startsWith(process.env.TEXTS_IN ?? ''));

it('no text for people stands outside the catalogue', async () => {
  const outside = files.flatMap((file) =>
    textsOutside(join(ROOT, file), file.startsWith('src/web/'))
      .filter((t) => !VALUES.has(t.text))
      .map((t) => `${file}:${t.line} ${t.text}`),
  );
  if (process.env.TEXTS_TO) (await import('node:fs')).writeFileSync(process.env.TEXTS_TO, outside.join('\n'));
  expect(outside).toEqual([]);
});

/** Every text by its path: a sentence, or how many things it takes. */
function pathsOf(room: object, path = ''): [string, string][] {
  return Object.entries(room).flatMap(([name, text]): [string, string][] => {
    const at = path ? `${path}.${name}` : name;
    if (typeof text === 'string') return [[at, 'text']];
    if (typeof text === 'function') return [[at, 'function']];
    return typeof text === 'object' && text !== null ? pathsOf(text, at) : [];
  });
}

describe.each(LANGUAGES)('%s', (language) => {
  it('has every text, none empty, and none that English does not have', async () => {
    const { figures: _, ...own } = await wordsIn({ ...PLAIN_MANNER, language });
    const { figures: __, ...english } = await wordsIn(PLAIN_MANNER);
    expect(pathsOf(own)).toEqual(pathsOf(english));
    const texts = (room: object): string[] =>
      Object.values(room).flatMap((t) =>
        typeof t === 'string' ? [t] : typeof t === 'object' && t ? texts(t) : [],
      );
    expect(texts(own).filter((t) => t.trim() === '')).toEqual([]);
  });
});

/** What a text that takes more than numbers, words and lists of words is called with. */
const ARGUMENTS: Readonly<Record<string, readonly unknown[]>> = {
  'weighing.lost.largerWith': [3, [{ name: 'X', grams: 3 }]],
};
const SAMPLES = [3, 1, 'X', ['X', 'Y'], ['X'], '2026-03-14', true];

/** What a text says to sample arguments, all of one kind; those of a kind that it refuses say nothing. */
function said(at: string, text: unknown): string[] {
  if (typeof text !== 'function') return [String(text)];
  const calls = ARGUMENTS[at]
    ? [ARGUMENTS[at]]
    : SAMPLES.map((sample) => Array.from({ length: 8 }, () => sample));
  return calls.flatMap((args) => {
    let made: unknown;
    try {
      made = text(...args);
    } catch {
      return [];
    }
    // A word where a number is due is no number: that is the sample's fault, not the text's.
    return typeof made === 'string' && (typeof args[0] === 'number' || !made.includes('NaN')) ? [made] : [];
  });
}

function textsOf(room: object, path = ''): [string, unknown][] {
  return Object.entries(room).flatMap(([name, text]): [string, unknown][] => {
    const at = path ? `${path}.${name}` : name;
    return typeof text === 'object' && text !== null ? textsOf(text, at) : [[at, text]];
  });
}

describe.each(['de', 'nl'] as const)('what is said in %s', (language) => {
  it('has no value that was not written as words', async () => {
    const { figures: _, ...own } = await wordsIn({ ...PLAIN_MANNER, language });
    const all = textsOf(own).flatMap(([at, text]) => said(at, text).map((sentence) => [at, sentence]));
    expect(all.length).toBeGreaterThan(2000);
    expect(all.filter(([, sentence]) => /undefined|NaN|\[object/.test(sentence ?? ''))).toEqual([]);
  });

  it('is not left in English', async () => {
    const { figures: _, ...own } = await wordsIn({ ...PLAIN_MANNER, language });
    const { figures: __, ...english } = await wordsIn(PLAIN_MANNER);
    const there = new Map(textsOf(english));
    const left = textsOf(own).filter(
      ([at, text]) =>
        typeof text === 'string' &&
        text === there.get(at) &&
        text.split(/\s+/).filter((word) => /\p{L}{2}/u.test(word)).length > 2,
    );
    expect(left).toEqual([]);
  });
});

it('no file asks for a text before the language is known', () => {
  expect(files.filter((file) => asksWhileLoaded(join(ROOT, file)))).toEqual([]);
});
