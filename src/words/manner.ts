/** How a keeper reads: language, and the units that screens and papers use. What is kept stays in g, °C and ISO 8601. */

export const LANGUAGES = ['en', 'de', 'nl'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Each language by its own name. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  nl: 'Nederlands',
};

/** ISO 4217. */
export const CURRENCIES = ['EUR', 'GBP', 'USD', 'CHF'] as const;

export interface Manner {
  readonly language: Language;
  readonly mass: 'g' | 'oz';
  readonly heat: 'C' | 'F';
  readonly currency: (typeof CURRENCIES)[number];
}

/** Grams in an ounce, exactly (international avoirdupois pound of 1959). */
export const GRAMS_PER_OUNCE = 28.349523125;

export const PLAIN_MANNER: Manner = { language: 'en', mass: 'g', heat: 'C', currency: 'EUR' };

/** The first of the languages wished for that Pouchful speaks ("de-CH" is German); English where it speaks none. */
export function languageOf(wished: readonly string[]): Language {
  const spoken = wished.map((tag) => tag.slice(0, 2).toLowerCase());
  return (spoken.find((tag) => (LANGUAGES as readonly string[]).includes(tag)) ?? 'en') as Language;
}

/** A manner as it was kept; what is missing or unknown in it is as in `otherwise`. */
export function readManner(kept: unknown, otherwise: Manner): Manner {
  const given = (typeof kept === 'object' && kept !== null ? kept : {}) as Record<string, unknown>;
  const one = <T extends string>(value: unknown, of: readonly T[], or: T): T =>
    of.includes(value as T) ? (value as T) : or;
  return {
    language: one(given.language, LANGUAGES, otherwise.language),
    mass: one(given.mass, ['g', 'oz'], otherwise.mass),
    heat: one(given.heat, ['C', 'F'], otherwise.heat),
    currency: one(given.currency, CURRENCIES, otherwise.currency),
  };
}
