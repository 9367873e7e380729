/** The names by which keepers know the reference foods they use, in the languages that screens speak. */
import type { Language } from '../words/manner.ts';
import names from './everyday-names.json' with { type: 'json' };

const foods = new Map<string, Readonly<Record<Language, readonly string[]>>>(Object.entries(names.foods));

/**
 * Everyday names of a reference food in one language, the one to show first; none for a food that keepers rarely use.
 * Names of one language belong to one food each, whatever their case: a bare name ("carrot") is the dried food's where
 * the tables have it dried, since it is asked for in a dry mix. Source: from memory.
 * @param ref reference number, "sr28:11683"
 */
export function everydayNames(ref: string, language: Language): readonly string[] {
  return foods.get(ref)?.[language] ?? [];
}

/** Reference numbers of all foods that have everyday names. */
export function everydayRefs(): readonly string[] {
  return [...foods.keys()];
}
