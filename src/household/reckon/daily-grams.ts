/** What an animal is commonly fed a day, to begin with where nobody has weighed it. */

export interface DailySuggestion {
  /** g of dry food a day, mix and pellet together. */
  readonly low: number;
  readonly high: number;
  /** What to write down to begin with, g. */
  readonly grams: number;
  readonly source: 'handouts' | 'memory';
}

const GOLDEN: DailySuggestion = { low: 10, high: 12, grams: 12, source: 'handouts' };

/** Veterinary handouts commonly give the golden hamster's figure; the others are from memory, common practice. */
const BY_SPECIES: Readonly<Record<string, DailySuggestion>> = {
  'golden hamster': GOLDEN,
  hamster: GOLDEN,
  'dwarf hamster': { low: 5, high: 8, grams: 6, source: 'memory' },
  mouse: { low: 3, high: 5, grams: 4, source: 'memory' },
  gerbil: { low: 5, high: 8, grams: 7, source: 'memory' },
};

/** For an adult; undefined for other species and ages. @param species as the program lists them */
export function dailySuggestion(species: string, lifeStage: string): DailySuggestion | undefined {
  return lifeStage === 'adult' ? BY_SPECIES[species] : undefined;
}
