/** Which foods a keeper may be allergic to: told by a food's names and its lists of ingredients. */
import { realWords } from '../../foods/cautions/names.ts';
import { madeWhenAsked, type Phrase, phraseFinder } from '../../foods/cautions/phrases.ts';
import { type Token, tokensOf } from '../../foods/cautions/words.ts';
import { everydayNames } from '../../foods/everyday-names.ts';
import { ALLERGENS, type Allergen } from '../model.ts';
import { ALLERGEN_WORDS, NO_SLIPS, OTHER_THINGS } from './allergen-words.ts';

/** A food as far as this needs it. */
export interface Handled {
  readonly name: string;
  /** Number in the tables; absent for a food of the keeper's own. */
  readonly ref?: string;
  readonly tableName?: string;
  readonly also?: readonly string[];
  /** Lists of ingredients and labels, as printed. */
  readonly lists?: readonly string[];
}

export interface AllergensFound {
  /** It is one of these, or is made with them. */
  readonly holds: readonly Allergen[];
  /** It may hold traces, as its label says. */
  readonly traces: readonly Allergen[];
  /** Whether what is not named in it is not in it: a plain food of the tables, or one with its list of ingredients. */
  readonly known: boolean;
}

interface Entry {
  readonly allergen: Allergen;
  readonly not: boolean;
}

const find = madeWhenAsked(() =>
  phraseFinder<Entry>(phrases(), {
    acrossCommas: true,
    realWords: () => new Set([...realWords(), ...NO_SLIPS]),
  }),
);

function phrases(): Phrase<Entry>[] {
  return ALLERGENS.flatMap((allergen): Phrase<Entry>[] => [
    ...(['en', 'de', 'nl'] as const).flatMap((language) =>
      split(ALLERGEN_WORDS[allergen][language]).map((text) => ({
        text,
        language,
        value: { allergen, not: false },
      })),
    ),
    ...split(OTHER_THINGS[allergen]).map(
      (text): Phrase<Entry> => ({ text, language: 'en', value: { allergen, not: true }, strict: true }),
    ),
  ]);
}

function split(words: string): string[] {
  return words.split(', ').filter((word) => word !== '');
}

/** Where a label begins to say what may have got in beside what is in. */
const TRACES =
  /\b(may contain|traces?|made in a (factory|place)|kann (auch )?(spuren|.{0,60}enthalten)|spuren|kan (sporen|.{0,60}bevatten)|sporen)\b/i;

/** Foods of the tables that are made of several things, not all of which their name tells. */
const MADE =
  /bread|biscuit|cookie|cracker|cake|muffin|pastry|\bpies?\b|cereal|granola|muesli|snack|\bsoup|sauce|dressing|cand(y|ies)\b|chocolate|\bdish|\bmeals?,|pizza|sandwich|sausage|burger|\bpatt(y|ies)\b|formula|\bmix\b|\bbars?\b|pasta|noodle/i;

/** Never throws; what a name denies ("nut-free") does not count. */
export function allergensOf({ name, ref, tableName, also = [], lists = [] }: Handled): AllergensFound {
  const everyday = ref === undefined ? [] : everydayNames(ref, 'en');
  const names = [name, ...also, ...(tableName === undefined ? [] : [tableName]), ...everyday];
  const holds = new Set<Allergen>();
  const traces = new Set<Allergen>();
  for (const each of names) for (const a of foundIn(each)) holds.add(a);
  for (const sentence of lists.flatMap((list) => list.split(/[.;\n]/))) {
    const at = TRACES.exec(sentence)?.index ?? sentence.length;
    for (const a of foundIn(sentence.slice(0, at))) holds.add(a);
    for (const a of foundIn(sentence.slice(at))) traces.add(a);
  }
  const titles = [name, tableName ?? '', everyday[0] ?? ''];
  const plain = ref !== undefined && !titles.some((each) => MADE.test(each));
  return {
    holds: ALLERGENS.filter((a) => holds.has(a)),
    traces: ALLERGENS.filter((a) => traces.has(a) && !holds.has(a)),
    known: plain || lists.some((list) => list.trim() !== ''),
  };
}

/** Allergens that a text names; words that are part of the name of another thing do not count. */
function foundIn(text: string): Set<Allergen> {
  const tokens = tokensOf(text);
  const hits = find(tokens);
  const nots = hits.filter(({ value }) => value.not);
  return new Set(
    hits
      .filter(({ value, at }) => !value.not && !at.some((i) => isDenied(tokens, i)))
      .filter(
        ({ value, at }) =>
          !nots.some((not) => not.value.allergen === value.allergen && at.every((i) => not.at.includes(i))),
      )
      .map(({ value }) => value.allergen),
  );
}

function isDenied(tokens: readonly Token[], i: number): boolean {
  return tokens[i]?.denied ?? false;
}

/** What to wash hands for after a food was touched: germs that may be on it. */
export function washAfter(food: Handled): 'insects' | 'egg' | undefined {
  const { holds } = allergensOf(food);
  return holds.includes('insects') ? 'insects' : holds.includes('egg') ? 'egg' : undefined;
}
