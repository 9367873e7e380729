/**
 * A line of a label as tokens: words, numbers and signs, with the space before each.
 * Every pattern is sticky and free of nested repeats, so the time taken grows with the length of the line.
 */

import { words } from '../../words/words.ts';
export interface Token {
  readonly kind: 'word' | 'number' | 'sign' | 'leader' | 'odd';
  /** As printed, full-width forms made plain. */
  readonly text: string;
  /** Without case and accents, for looking up. */
  readonly key: string;
  readonly at: number;
  /** Space before it: none, one space, or a gap (a tab or several spaces, as between columns). */
  readonly space: 'none' | 'one' | 'gap';
  /** Why an odd token cannot be read. */
  readonly why?: string | undefined;
}

const SPACE = /[\s\u200b\u2060\ufeff]+/uy;
const WORD = /\p{L}[\p{L}\p{M}\p{N}]*/uy;
const NUMBER = /\d+(?:[.,'’]\d+)*[½¼¾]?/uy;
const LEADER = /(?:\.{2,}|…+|_{2,}|·{2,}|-{2,})/uy;
/** EU register numbers of feed additives ("3b405", "3a672a"), which carry digits and are no amounts. */
const ADDITIVE_CODE = /\d\p{L}\d{3,4}\p{L}{0,4}(?![\p{L}\p{N}])/uy;
/** The protein factor of "N x 6.25". */
const PROTEIN_FACTOR = /[Nn]\s?[x×*]\s?\d[.,]\d{1,2}(?!\d)/uy;
const SLIP_BEFORE = /[OoIl]{1,3}[.,]?\d[\d.,OoIl]*/uy;
const SLIP_AFTER = /\d[\d.,]*[OoIl][\d.,OoIl]*(?!\p{L})/uy;
/** ".5": a figure that lost its nought, or its first digit. */
const HEADLESS = /[.,]\d[\d.,]*/uy;
const SIMPLE_SIGNS = '()[]{}%:;/|<>=+*~&!?"#@$^`';
const SUPERSCRIPT = /[¹²³⁴-⁹⁰]+/uy;

function mixed(text: string): string {
  return words().label.reading.why.mixed(text.slice(0, 20));
}

/** Lower case, no accents, sharp s as ss: how words are compared. */
export function keyOf(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase();
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('µ', 'μ')
    .replaceAll('’', "'");
}

const PLAIN = /^[\x20-\x7e]*$/;

/** Full-width forms, as copied from East Asian keyboards, as their plain twins; the length stays the same. */
export function narrow(line: string): string {
  return line.replace(/[\uff01-\uff5e]/g, (c) => String.fromCharCode(c.charCodeAt(0) - 0xfee0));
}

type Scan = readonly [kind: Token['kind'], text: string, why?: string];

/** Splits a line; every character that is no space belongs to exactly one token. */
export function tokenize(line: string): Token[] {
  const text = narrow(line);
  const tokens: Token[] = [];
  let at = 0;
  let space: Token['space'] = 'none';
  while (at < text.length) {
    const char = text.charAt(at);
    const blank = char > ' ' && char < '\x7f' ? undefined : take(SPACE, text, at);
    if (blank !== undefined) {
      space = blank.length > 1 || blank === '\t' ? 'gap' : 'one';
      at += blank.length;
      continue;
    }
    const [kind, printed, why] = scan(text, at, space === 'none' ? tokens.at(-1) : undefined);
    const key = kind === 'word' || printed.length > 1 ? keyOf(printed) : printed;
    tokens.push({ kind, text: printed, key, at, space, why });
    at += printed.length;
    space = 'none';
  }
  return tokens;
}

/** The token at a place; `glued` is the one right before it, if no space parts them. */
function scan(text: string, at: number, glued: Token | undefined): Scan {
  const first = text.charAt(at);
  const afterWord = glued?.kind === 'word';
  if (SIMPLE_SIGNS.includes(first)) return ['sign', first];
  if (first >= '0' && first <= '9') {
    const code = afterWord ? undefined : take(ADDITIVE_CODE, text, at);
    if (code) return ['leader', code];
    const slip = take(SLIP_AFTER, text, at);
    return slip ? ['odd', slip, mixed(slip)] : ['number', take(NUMBER, text, at) ?? first];
  }
  if ('Nn'.includes(first) && (!glued || glued.kind === 'sign')) {
    const factor = take(PROTEIN_FACTOR, text, at);
    if (factor) return ['leader', factor];
  }
  if ('OoIl'.includes(first) && !afterWord) {
    const slip = take(SLIP_BEFORE, text, at);
    if (slip) return ['odd', slip, mixed(slip)];
  }
  // "min.5" ends an abbreviation; " .5" and "Fat,5" may have lost a digit.
  if (
    '.,'.includes(first) &&
    (!glued || (glued.kind === 'sign' && glued.text !== '%') || (afterWord && first === ','))
  ) {
    const headless = take(HEADLESS, text, at);
    if (headless) return ['odd', headless, words().label.reading.why.headless(headless)];
  }
  const word = take(WORD, text, at);
  if (word) return ['word', word];
  const leader = take(LEADER, text, at);
  if (leader) return ['leader', leader];
  if ('½¼¾'.includes(first)) return ['number', first];
  const raised = take(SUPERSCRIPT, text, at);
  if (raised)
    return [glued && glued.kind !== 'number' ? 'leader' : 'odd', raised, words().label.reading.why.raised];
  const sign = String.fromCodePoint(text.codePointAt(at)!);
  if (/\p{N}/u.test(sign)) return ['odd', sign, words().label.reading.why.otherScript(sign)];
  return ['sign', sign];
}

function take(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
