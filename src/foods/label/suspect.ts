/**
 * Words that may change what the figures around them mean. Where such a word stands in something that was not
 * understood, the figures it may hold for are asked about: a spelling missing from the word table then costs a question
 * and never a wrong figure.
 */
import type { Item } from './match.ts';
import { ROLES as ROLE_ROWS } from './role-words.ts';
import { keyOf } from './tokens.ts';
import type { Role } from './words.ts';

const ROLES: readonly Role[] = ['dry matter', 'prepared', 'energy share', 'daily'];

/** Beginnings of words of cooking and making up, of energy and daily need, of least and most, without accents. */
const STEMS =
  /^(?:un)?(?:cook|boil|prepar|reconst|rehydr|dilut|soak|steep|zubereit|gekoch|gegart|gequoll|eingeweich|angeruhr|verzehrfert|trinkfert|cuit|cuis|bouill|tremp|bereid|gekook|klaargem|aangem|aangel|geweek|cocin|cocid|hervid|remoj|hidrat|cott[oiae]$|energ|calor|kalor|kilocal|kilojoul|tagesb|tagesz|daily|quotid|journal|diari|dagel|minim|maxim|mindest|hochst|trockens|trockenm|trockeng|drogest|drogst|anhydr|wasserfr|watervr)/;
/** Words that mean dry matter only beside words such as "basis" or "on". */
const DRY = /^(?:dry|trocken|trockener|trockenem|sec|seche|seco|seca|secco|secca|droog|droge)$/;

const BASIS_AND_BOUND: readonly Role[] = ['low', 'high', 'dry matter', 'prepared'];
const BASIS_AND_BOUND_WORDS = ROLE_ROWS.filter(([role]) => BASIS_AND_BOUND.includes(role)).flatMap(
  ([, ...columns]) => columns.flatMap((column) => keyOf(column).split(/[^\p{L}]+/u)),
);
/** No longer word or phrase is looked at for slips. */
const LONGEST = 24;
/** Least letters of a word that is known with one letter lost, doubled or wrong. */
const SHORTEST = 6;
/** Words of phrases that say little alone. */
/** Energy, and the shortest words of least and most with a letter lost. */
const ENERGY = ['energie', 'energy', 'energia', 'calorie', 'calories', 'kalorien', 'calorias', 'calorieen'];
const SHORT_SLIPS = new Set(['mn', 'mx', 'mni', 'mxi', 'mii', 'mai', 'mnd', 'mid', 'mini', 'maxi']);
const COMMON = new Set([
  'water',
  'wasser',
  'matter',
  'weight',
  'garantis',
  'guaranteed',
  'garantizado',
  'contenido',
]);
/** Every word of least, most, cooked and dry, and each with one letter left out. */
const WITH_SLIPS: ReadonlySet<string> = new Set(
  [...BASIS_AND_BOUND_WORDS, ...ENERGY]
    .filter((word) => word.length >= SHORTEST && !COMMON.has(word))
    .flatMap(withOneLost),
);

function withOneLost(word: string): string[] {
  return [word, ...Array.from(word, (_, k) => word.slice(0, k) + word.slice(k + 1))];
}

function isSuspectWord(text: string): boolean {
  const key = keyOf(text);
  if (STEMS.test(key) || SHORT_SLIPS.has(key)) return true;
  return (
    key.length >= SHORTEST - 1 && key.length < LONGEST && withOneLost(key).some((w) => WITH_SLIPS.has(w))
  );
}

/** Whether an item that was not understood where it stands may change what figures mean. */
export function mayChangeMeaning(item: Item): boolean {
  if (item.kind === 'role') return ROLES.some((role) => item.roles.has(role));
  return item.kind === 'word' && (isSuspectWord(item.text) || DRY.test(keyOf(item.text)));
}

/** Phrases of dry and cooked run together, each with one letter left out: "droge stof", "doge stof". */
const PHRASES_WITH_SLIPS: ReadonlySet<string> = new Set(
  ROLE_ROWS.filter(([role]) => role === 'dry matter' || role === 'prepared')
    .flatMap(([, ...columns]) => columns.flatMap((column) => column.split('|')))
    .map((phrase) => keyOf(phrase).replace(/[^\p{L}]+/gu, ''))
    .filter((phrase) => phrase.length >= SHORTEST && phrase.length < LONGEST)
    .flatMap(withOneLost),
);

/** Whether unknown words in a heading of their own may. @param beside whether words such as "basis" or "%" stand there */
export function headingMayChange(words: readonly string[], beside: boolean): boolean {
  const together = keyOf(words.join('')).replace(/[^\p{L}]+/gu, '');
  const slip = together.length < LONGEST && withOneLost(together).some((w) => PHRASES_WITH_SLIPS.has(w));
  return slip || words.some((word) => isSuspectWord(word) || (beside && DRY.test(keyOf(word))));
}
