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
  /** True where a colon stands right before it. */
  readonly listed: boolean;
  /** True where a hyphen and a blank stand behind it: "onion- and garlic-free". */
  suspended: boolean;
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
  ...['without', 'no', 'not', 'non', 'never', 'neither', 'nor'].map((w) => [w, EN] as const),
  ...['ohne', 'kein', 'keine', 'keinen', 'keiner', 'keines', 'keinem', 'nicht', 'weder', 'noch'].map(
    (w) => [w, DE] as const,
  ),
  ...['sans', 'pas', 'aucun', 'aucune', 'ni'].map((w) => [w, FR] as const),
  ...['zonder', 'geen', 'niet'].map((w) => [w, NL] as const),
  ...['sin', 'ningun', 'ninguna', 'tampoco'].map((w) => [w, ES] as const),
]);
/** Words that deny only the next ("not roasted peanuts"), unless that says what is not in it ("does not contain"). */
const DENIES_ONE = new Set(['not', 'non', 'never', 'nicht', 'niet', 'pas']);
const WHAT_IS_IN_IT = new Set(
  'contain contains containing include includes any a an d de du des enthalten beinhaltet bevatten bevat'.split(
    ' ',
  ),
);
const DENY_PAIRS = new Map<string, Joints>([
  ['free from', EN],
  ['free of', EN],
  ['frei von', DE],
  ['vrij van', NL],
  ['exempt de', FR],
  ['exempts de', FR],
  ['exempte de', FR],
  ['exemptes de', FR],
  ['depourvu de', FR],
  ['libres de', ES],
  ['exento de', ES],
  ['exenta de', ES],
  ...['exempt', 'exempts', 'exempte', 'exemptes', 'depourvu'].map((w) => [`${w} d`, FR] as const),
  ['libre de', ES],
  ['no contiene', ES],
]);
const ENDS_DENIAL = new Set(
  'with but contains containing mit aber enthalt avec mais contient met maar bevat con pero contiene'.split(
    ' ',
  ),
);
const DENIED_WORD = /.(?:frei(?:e[nrsm]?)?|vrije?)$/;
/** Answers behind a colon: "onion: none". */
const NONE = new Set('none no nil keine keiner nein aucun aucune non geen nee ninguno ninguna'.split(' '));
/** "Neither sweetened nor salted peanuts": what was not done to a food says nothing of the food. */
const NEITHER = new Set(['neither', 'nor', 'weder', 'noch']);
const DONE = /^(\p{L}{3,}ed|(un)?ge\p{L}{3,}(t|en)(e[rsnm]?)?)$/u;
const AND_OR = new Set('and or nor und oder et ou en of y o u'.split(' '));
const NOT_A_DENIAL_AFTER_FREE = new Set(['range', 'run', 'flowing', 'from', 'of', 'living']);
/** Words a denial reaches within one stretch between commas, and stretches it may run over. */
const REACH = 6;
const STRETCHES = 4;
/** Stretches that a list behind "free from:" may have. */
const LISTED = 12;

/** Marks the tokens that the text denies. Takes time in proportion to their number. */
export function markDenied(tokens: readonly Deniable[]): void {
  for (const [i, token] of tokens.entries()) {
    const { word } = token;
    if (DENIED_WORD.test(word)) {
      token.denied = true;
      denySuspended(tokens, i);
    }
    const next = tokens[i + 1];
    const after = next && !next.apart ? next.word : '';
    const before = token.apart ? undefined : tokens[i - 1];
    if (before && word === 'free' && !NOT_A_DENIAL_AFTER_FREE.has(after)) {
      before.denied = true;
      denySuspended(tokens, i - 1);
    }
    if (before && (word === 'frei' || word === 'vrij') && !/^v[oa]n$/.test(after)) before.denied = true;
    if (token.listed && NONE.has(word) && (!next || next.apart)) denyBefore(tokens, i);
    // "Yellow No. 5" denies nothing.
    if (word === 'no' && /^\d/.test(next?.word ?? '')) continue;
    const pair = DENY_PAIRS.get(`${word} ${after}`);
    const joints = pair ?? DENIES.get(word);
    if (!joints) continue;
    const one =
      (DENIES_ONE.has(word) && !WHAT_IS_IN_IT.has(after)) || (NEITHER.has(word) && DONE.test(after));
    const from = i + (pair || (DENIES_ONE.has(word) && ENDS_DENIAL.has(after)) ? 2 : 1);
    if (tokens[from]?.listed) denyList(tokens, from);
    else if (!one) deny(tokens, from, joints, pair !== undefined && token.opens);
    else if (next && after !== '') next.denied = true;
  }
}

/** "Onion- and garlic-free": the words before that lean on the last with a hyphen. */
function denySuspended(tokens: readonly Deniable[], last: number): void {
  for (let i = last - 1, token = tokens[i]; token; token = tokens[--i]) {
    if (token.suspended) token.denied = true;
    else if (!AND_OR.has(token.word)) return;
  }
}

/** "Onion: none": the words before the colon, back to a comma. */
function denyBefore(tokens: readonly Deniable[], answer: number): void {
  for (let i = answer - 1, token = tokens[i]; token; token = tokens[--i]) {
    token.denied = true;
    if (token.apart) return;
  }
}

/** "Free from: onion, garlic": all that is listed to the end of the sentence. */
function denyList(tokens: readonly Deniable[], from: number): void {
  let stretches = 0;
  for (let i = from, token = tokens[i]; token; token = tokens[++i]) {
    if (i > from && (token.opens || token.listed || (token.apart && ++stretches === LISTED))) return;
    if (ENDS_DENIAL.has(token.word)) return;
    token.denied = true;
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
