/** What keepers call the foods they use beside their plain names, in five languages, and what the tables do not have. */
import data from './data/food-words.json' with { type: 'json' };

type Words = Readonly<Partial<Record<'en' | 'de' | 'fr' | 'nl' | 'es', readonly string[]>>>;

/** What is looked for and is not in the tables. */
export interface NotThere {
  /** Its name in a sentence. */
  readonly what: string;
  readonly words: readonly string[];
  /** Plain names of the foods that come nearest, the nearest first; none where nothing does. */
  readonly nearest: readonly string[];
  /** What else to know: its name among the texts of the search. */
  readonly aside?: 'yeast' | 'cornflakes';
}

const words = new Map<string, Words>(Object.entries(data.foods));

/** Further names of the food with that plain name, in all five languages; none for other foods. */
export function furtherNames(plainName: string): readonly string[] {
  return Object.values(words.get(plainName) ?? {}).flat();
}

export const NOT_THERE: readonly NotThere[] = data.notThere as readonly NotThere[];
