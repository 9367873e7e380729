/**
 * Finds E numbers in the ways packs print them: "E320", "E 320", "E-320", "E-Nr. 320", "E320, 321", "E 150d", by their
 * international number "INS 320", and bare behind the name of their class, "antioxidant (320)".
 * Vitamin E with an amount ("vitamin E 320 mg") is not one.
 */
import { fold, type Token } from '../cautions/words.ts';

interface ENumber {
  /** Without blanks, upper case E: "E320". */
  readonly number: string;
  readonly start: number;
  readonly end: number;
}

const JOINED = /^(?:e|ins)(\d{3,4}[a-i]?)$/;
const SIGN = new Set(['e', 'ins']);
const NUMBER = new Set('nr no n num nummer numero number'.split(' '));
/** Beginnings of the names of classes, folded. */
const CLASS = /^(antioxi|preserv|colou?r|konserv|farbstoff|conserv|kleurstof|humect|emulgat|emulsi)/;
const DIGITS = /^\d{3,4}[a-i]?$/;
const UNITS = new Set('mg g kg iu ie ui ug mcg mikrogramm ppm i µg'.split(' ').map(fold));

/** The E numbers of a text that the text does not deny, in order. */
export function eNumbersIn(text: string, tokens: readonly Token[]): ENumber[] {
  const found: ENumber[] = [];
  for (let i = 0, token = tokens[i]; token; token = tokens[++i]) {
    const joined = JOINED.exec(token.word);
    let last = i;
    let lastToken = token;
    let digits = joined?.[1];
    if (!digits && SIGN.has(token.word)) {
      // "E-Nr. 320": the word for "number" may stand between.
      const at = NUMBER.has(tokens[i + 1]?.word ?? '') ? i + 2 : i + 1;
      const next = tokens[at];
      const between = next ? text.slice(token.end, next.start) : '';
      if (
        next &&
        DIGITS.test(next.word) &&
        /^[ \u00a0.:°º\-‐‑–]{0,3}(\p{L}{1,6}[ .:°º]{0,3})?$/u.test(between)
      ) {
        digits = next.word;
        last = at;
        lastToken = next;
      }
    }
    const before = tokens[i - 1];
    if (!digits && before && DIGITS.test(token.word) && CLASS.test(before.word)) {
      // "Antioxidant (320)", not "antioxidant 320 mg".
      const bare = /^\s?[([:]\s?$/.test(text.slice(before.end, token.start));
      if (bare && !UNITS.has(tokens[i + 1]?.word ?? '')) digits = token.word;
    }
    if (!digits || isVitaminE(tokens, i, last)) continue;
    push(found, digits, token, lastToken);
    // "E320, 321": later numbers of a row leave the E out.
    for (let next = tokens[last + 1]; next; next = tokens[last + 1]) {
      if (!/^\d{3}[a-i]?$/.test(next.word) || !/^\s?[,/&+]\s?$/.test(text.slice(lastToken.end, next.start)))
        break;
      if (UNITS.has(tokens[last + 2]?.word ?? '')) break;
      last++;
      lastToken = next;
      push(found, next.word, next, next);
    }
    i = last;
  }
  return found;
}

function push(found: ENumber[], digits: string, first: Token, last: Token): void {
  if (!first.denied && !last.denied) found.push({ number: `E${digits}`, start: first.start, end: last.end });
}

function isVitaminE(tokens: readonly Token[], first: number, last: number): boolean {
  const before = tokens[first - 1];
  if (before && /^vit(amin[ae]?n?)?$/.test(before.word)) return true;
  const after = tokens[last + 1];
  return last > first && after !== undefined && !after.apart && UNITS.has(after.word);
}
