/** Names that hold the words of a caution and mean something else, and words that are no slip of one. */
import foodWords from '../data/food-words.json' with { type: 'json' };
import otherThings from './other-things.json' with { type: 'json' };
import listed from './real-words.json' with { type: 'json' };
import { fold, type Language } from './words.ts';

/** Plants and goods called after what they are not ("chocolate mint"), by language, written as `phrases.ts` says. */
export const OTHER_THINGS: Readonly<Record<Language, readonly string[]>> = otherThings;

let real: ReadonlySet<string> | undefined;

/** Words, folded, that are spelt right although they look like a slip of a word of a caution. */
export function realWords(): ReadonlySet<string> {
  real ??= gather();
  return real;
}

function gather(): ReadonlySet<string> {
  const { about: _, ...byLetter } = listed;
  const namesOfFoods = [
    ...Object.entries(foodWords.foods).flatMap(([name, words]) => [name, ...Object.values(words).flat()]),
    ...foodWords.notThere.flatMap(({ words }) => words),
  ];
  return new Set([
    ...Object.values(byLetter).flatMap((words) => words.split(' ')),
    ...namesOfFoods.flatMap((name) => fold(name).match(/\p{L}+/gu) ?? []),
  ]);
}
