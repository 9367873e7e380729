/** The letters of words, to tell soon which words cannot be nearly the same. */

/** Which letters a word has, as bits: words whose letters differ much need not be compared. */
export function lettersOf(word: string): number {
  let letters = 0;
  for (let i = 0; i < word.length; i++) letters |= 1 << (word.charCodeAt(i) - 97);
  return letters;
}

export function countBits(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}
