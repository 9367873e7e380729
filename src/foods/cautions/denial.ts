/**
 * What a text says is not in it: "without onion", "onion-free", "zwiebelfrei", "sans sucre ni sel".
 * In doubt a word is not denied: a flag too many is read and dismissed, one too few is fed.
 */

/** What the reading of denials needs of a token. */
export interface Deniable {
  readonly word: string;
  /** True where a comma, bracket or the like stands before it. */
  readonly apart: boolean;
  /** True for the first word of a sentence or line. */
  readonly opens: boolean;
  denied: boolean;
}

interface Joints {
  /** Words that carry a denial across a comma ("without colours, flavours or preservatives"). */
  readonly or: readonly string[];
  /** Words that do so only after "free from" and its like, and where that is the whole sentence ("Free from onion, garlic and leek."). */
  readonly and: readonly string[];
}

const EN: Joints = { or: ['or', 'nor'], and: ['and'] };
const DE: Joints = { or: ['oder'], and: ['und'] };
const FR: Joints = { or: ['ou', 'ni'], and: ['et'] };
const NL: Joints = { or: ['of'], and: ['en'] };
const ES: Joints = { or: ['o', 'u', 'ni'], and: ['y', 'e'] };

const DENIES = new Map<string, Joints>([
  ...['without', 'no', 'not', 'non', 'never'].map((w) => [w, EN] as const),
  ...['ohne', 'kein', 'keine', 'keinen', 'nicht'].map((w) => [w, DE] as const),
  ...['sans', 'pas'].map((w) => [w, FR] as const),
  ...['zonder', 'geen', 'niet'].map((w) => [w, NL] as const),
  ['sin', ES],
]);
const DENY_PAIRS = new Map<string, Joints>([
  ['free from', EN],
  ['free of', EN],
  ['frei von', DE],
  ['vrij van', NL],
  ['exempt de', FR],
  ['exempte de', FR],
  ['libre de', ES],
  ['no contiene', ES],
]);
const ENDS_DENIAL = new Set(
  'with but contains containing mit aber enthalt avec mais contient met maar bevat con pero contiene'.split(
    ' ',
  ),
);
const DENIED_WORD = /.(?:frei(?:e[nrsm]?)?|vrije?)$/;
const NOT_A_DENIAL_AFTER_FREE = new Set(['range', 'run', 'flowing', 'from', 'of', 'living']);
/** Words a denial reaches within one stretch between commas, and stretches it may run over. */
const REACH = 6;
const STRETCHES = 4;

/** Marks the tokens that the text denies. Takes time in proportion to their number. */
export function markDenied(tokens: readonly Deniable[]): void {
  for (const [i, token] of tokens.entries()) {
    const { word } = token;
    if (DENIED_WORD.test(word)) token.denied = true;
    const next = tokens[i + 1];
    const after = next && !next.apart ? next.word : '';
    const before = token.apart ? undefined : tokens[i - 1];
    if (before && word === 'free' && !NOT_A_DENIAL_AFTER_FREE.has(after)) before.denied = true;
    // "Yellow No. 5" denies nothing.
    if (word === 'no' && /^\d/.test(after)) continue;
    const pair = DENY_PAIRS.get(`${word} ${after}`);
    const joints = pair ?? DENIES.get(word);
    if (joints) deny(tokens, i + (pair ? 2 : 1), joints, pair !== undefined && token.opens);
  }
}

function deny(tokens: readonly Deniable[], from: number, { or, and }: Joints, wholeSentence: boolean): void {
  if (tokens[from]?.apart) return;
  let first = from;
  for (let stretch = 0; stretch < STRETCHES; stretch++) {
    const end = endOfStretch(tokens, first);
    if (stretch > 0 && !runsOn(tokens, first, STRETCHES - stretch, or, wholeSentence ? and : [])) return;
    const reached = tokens.slice(first, end);
    for (const token of reached) token.denied = true;
    const next = tokens[end];
    if (!next?.apart || next.opens) return;
    if (reached.some(({ word }) => or.includes(word))) return;
    first = end;
  }
}

function endOfStretch(tokens: readonly Deniable[], first: number): number {
  const reach = tokens.slice(first, first + REACH);
  const stop = reach.findIndex(({ word, apart }, at) => (at > 0 && apart) || ENDS_DENIAL.has(word));
  return first + (stop < 0 ? reach.length : stop);
}

/** Whether an "or" still comes within some stretches, or an "and" in the last stretch of the sentence. */
function runsOn(
  tokens: readonly Deniable[],
  first: number,
  stretches: number,
  or: readonly string[],
  and: readonly string[],
): boolean {
  let left = stretches;
  for (const [at, { word, apart, opens }] of tokens.slice(first, first + STRETCHES * REACH).entries()) {
    if (opens || ENDS_DENIAL.has(word) || (at > 0 && apart && --left === 0)) return false;
    if (at === 0) continue;
    if (or.includes(word)) return true;
    if (and.includes(word)) {
      const end = tokens[endOfStretch(tokens, first + at)];
      if (!end || end.opens) return true;
    }
  }
  return false;
}
