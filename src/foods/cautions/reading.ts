/** The tokens of a name with all the words that they may stand for, alone and with their neighbours. */
import { onlyDescribes } from './states.ts';
import { KEY, type Vocabulary } from './vocabulary.ts';
import type { Token } from './words.ts';

/** A token with all the words it may stand for. */
export interface Read {
  readonly token: Token;
  readonly words: readonly string[];
  /** Compounds that it makes with its neighbour, for what is looked for, not for what takes a find away. */
  readonly joined: readonly string[];
  /** Counts the stretches between commas and brackets. */
  readonly stretch: number;
}

/** Words that only join the words of a phrase: the text may leave them out. */
export const LINKS = new Set('de d du des of the von van del di der la los las'.split(' '));

export function readAll(tokens: readonly Token[], vocabulary: Vocabulary, acrossCommas: boolean): Read[] {
  let stretch = 0;
  const reads = tokens.map((token, i) => {
    if (i > 0 && token.apart) stretch++;
    return { token, words: vocabulary.readingsOf(token), joined: [] as readonly string[], stretch };
  });
  for (const [i, read] of reads.entries()) read.joined = joinedWords(reads, i, acrossCommas, vocabulary);
  return reads;
}

/**
 * German and Dutch compounds that a text writes apart: "Kidney-Bohnen", "Aprikosen Kerne", "Kerne von Aprikosen",
 * "Bohnen (Kidney)". Most of them are no words; the vocabulary tells.
 */
function joinedWords(
  reads: readonly Read[],
  i: number,
  acrossCommas: boolean,
  vocabulary: Vocabulary,
): readonly string[] {
  let j = i + 1;
  while (reads[j] && LINKS.has(reads[j]?.token.word ?? '') && !reads[j]?.token.apart) j++;
  const [one, other] = [reads[i], reads[j]];
  if (!one || !other) return [];
  const [first, second] = [one.token.word, other.token.word];
  if (!other.token.apart)
    return j === i + 1 ? compounds(first, second, vocabulary) : compounds(second, first, vocabulary);
  const alone = acrossCommas && j === i + 1 && wholeStretch(reads, i, [i]) && wholeStretch(reads, j, [j]);
  return alone ? compounds(second, first, vocabulary) : [];
}

/** Two words as one, with the letters that may join them, where the vocabulary has it. */
function compounds(front: string, back: string, vocabulary: Vocabulary): readonly string[] {
  if (front.length < KEY || back.length < KEY) return [];
  const bare = front.replace(/en?$/, '');
  return [front, `${front}n`, `${front}s`, bare, `${bare}en`].flatMap((start) =>
    vocabulary.joins(start + back, start.length) ? [start + back] : [],
  );
}

/** Whether a stretch says nothing but some tokens and what describes them. */
export function wholeStretch(reads: readonly Read[], at: number, but: readonly number[]): boolean {
  const stretch = reads[at]?.stretch;
  const said = (j: number) => but.includes(j) || (reads[j]?.words.some(onlyDescribes) ?? false);
  for (let j = at; reads[j]?.stretch === stretch; j--) if (!said(j)) return false;
  for (let j = at; reads[j]?.stretch === stretch; j++) if (!said(j)) return false;
  return true;
}
