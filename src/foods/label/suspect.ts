/**
 * Words that may change what the figures around them mean. Where such a word stands in something that was not
 * understood, the figures it may hold for are asked about: a spelling missing from the word table then costs a question
 * and never a wrong figure.
 */
import type { Item } from './match.ts';
import { keyOf } from './tokens.ts';
import type { Role } from './words.ts';

const ROLES: readonly Role[] = ['dry matter', 'prepared', 'energy share', 'daily'];

/** Beginnings of words of cooking and making up, of energy and daily need, of least and most, without accents. */
const STEMS =
  /^(?:un)?(?:cook|boil|prepar|reconst|rehydr|dilut|soak|steep|zubereit|gekoch|gegart|gequoll|eingeweich|angeruhr|verzehrfert|trinkfert|cuit|cuis|bouill|tremp|bereid|gekook|klaargem|aangem|aangel|geweek|cocin|cocid|hervid|remoj|hidrat|cott[oiae]$|energ|calor|kalor|kilocal|kilojoul|tagesb|tagesz|daily|quotid|journal|diari|dagel|minim|maxim|mindest|hochst|trockens|trockenm|trockeng|drogest|anhydr|wasserfr|watervr)/;
/** Words that mean dry matter only beside words such as "basis" or "on". */
const DRY = /^(?:dry|trocken|trockener|trockenem|sec|seche|seco|seca|secco|secca|droog|droge)$/;

function isSuspectWord(text: string): boolean {
  return STEMS.test(keyOf(text));
}

/** Whether an item that was not understood where it stands may change what figures mean. */
export function mayChangeMeaning(item: Item): boolean {
  if (item.kind === 'role') return ROLES.some((role) => item.roles.has(role));
  return item.kind === 'word' && (isSuspectWord(item.text) || DRY.test(keyOf(item.text)));
}

/** Whether unknown words in a heading of their own may. @param beside whether words such as "basis" or "%" stand there */
export function headingMayChange(words: readonly string[], beside: boolean): boolean {
  return words.some((word) => isSuspectWord(word) || (beside && DRY.test(keyOf(word))));
}
