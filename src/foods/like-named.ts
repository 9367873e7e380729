/** The food of the tables that a keeper's own food, going by its name, should be much the same as. */
import { LANGUAGES } from '../words/manner.ts';
import { everydayNames } from './everyday-names.ts';
import type { FoodGroup } from './food.ts';
import { furtherNames } from './food-words.ts';
import type { ReferenceFood } from './reference.ts';

/** Words that a label leaves out, since what is sold dry goes without saying. */
const UNSAID = new Set(['raw', 'dry', 'whole', 'shelled']);

/**
 * Of the foods found, the one whose plain name (or another of its names, in five languages) is wholly said by the name given, with the
 * most words; the first where several are. It is of the same group where both are known. Undefined where none is.
 */
export function likeNamed(
  name: string,
  group: FoodGroup | undefined,
  found: readonly ReferenceFood[],
): ReferenceFood | undefined {
  const said = new Set(wordsOf(name));
  let best: ReferenceFood | undefined;
  let most = 0;
  for (const food of found) {
    if (!food.plain || (group && food.group && group !== food.group)) continue;
    for (const called of [food.name, ...food.also, ...namesOf(food)]) {
      const words = wordsOf(called).filter((word) => !UNSAID.has(word));
      if (words.length <= most || !words.every((word) => said.has(word))) continue;
      best = food;
      most = words.length;
    }
  }
  return best;
}

/** Its other names in all languages; those known by its plain English name too, whatever it is called here. */
function namesOf({ ref, name }: ReferenceFood): string[] {
  const [plain = name] = everydayNames(ref, 'en');
  return [...furtherNames(plain), ...LANGUAGES.flatMap((language) => everydayNames(ref, language))];
}

/** Lower case; a plural counts as its singular. */
function wordsOf(text: string): string[] {
  return (text.toLowerCase().match(/\p{L}{3,}/gu) ?? []).map((word) => word.replace(/(?<=..)s$/, ''));
}
