/**
 * Words as a pack, a list or a keeper prints them, in five languages: cut into tokens that know their place,
 * compared without case or accents, and read with what is denied ("without onion", "zwiebelfrei").
 */

import { type Deniable, markDenied } from './denial.ts';

export type Language = 'en' | 'de' | 'fr' | 'nl' | 'es';

export interface Token {
  /** Lower case, without accents: what is compared. */
  readonly word: string;
  /** Lower case with its accents, for the few words only accents tell apart ("thé", "the"). */
  readonly accented: string;
  /** Place in the text, end exclusive. */
  readonly start: number;
  readonly end: number;
  /** True where a comma, bracket or the like stands before it: a phrase never runs across that. */
  readonly apart: boolean;
  /** True for the first word of a sentence or line. */
  readonly opens: boolean;
  /** True where the text says that this is not in it. */
  readonly denied: boolean;
}

const WORD = /[\p{L}\p{M}\p{N}]+/gu;
const PLAIN = /^[\x20-\x7e]*$/;
const APART = /[^\s\-‐‑–'’./&+]/u;

/** Lower case, without accents, with ligatures and the German sharp s written out. */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase();
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replaceAll('ß', 'ss')
    .replaceAll('œ', 'oe')
    .replaceAll('æ', 'ae');
}

/** Cuts a text into tokens. Never throws; takes time in proportion to the length of the text. */
export function tokensOf(text: string): Token[] {
  const tokens: (Token & Deniable)[] = [];
  let last = 0;
  for (const match of text.matchAll(WORD)) {
    const start = match.index;
    const gap = text.slice(last, start);
    last = start + match[0].length;
    // "avocado's", "pea's": the s is no word of its own.
    if (/^s$/i.test(match[0]) && /^['’]$/u.test(gap)) continue;
    const before = tokens.at(-1);
    if (before && /^[-‐‑–]\s/.test(gap)) before.suspended = true;
    const opens = !before || (gap !== ' ' && (gap.includes('\n') || endsSentence(gap, before.word)));
    tokens.push({
      word: fold(match[0]),
      accented: match[0].toLowerCase().normalize('NFC'),
      start,
      end: last,
      apart: opens || (gap !== ' ' && APART.test(gap)),
      opens,
      listed: /^\s?:\s*$/.test(gap),
      suspended: false,
      denied: false,
    });
  }
  markDenied(tokens);
  return tokens;
}

/** A full stop, unless it ends a short word ("St. John", "No. 5"). */
function endsSentence(gap: string, before: string): boolean {
  return before.length > 3 && /\.\s/.test(gap);
}
