/** The kinds of animals that figures are kept for. */

export const SPECIES_KINDS = [
  'golden',
  'campbells',
  'winter-white',
  'roborovski',
  'chinese',
  'dwarf',
  'hamster',
  'gerbil',
  'mouse',
  'rat',
  'other',
] as const;

/** "dwarf" and "hamster": which of them is not known; "other": none that figures are kept for. */
export type SpeciesKind = (typeof SPECIES_KINDS)[number];

/** Names of species as they are kept, and what they are. Any other may be written in words. */
const BY_NAME: Readonly<Record<string, SpeciesKind>> = {
  'golden hamster': 'golden',
  "Campbell's hamster": 'campbells',
  'winter white hamster': 'winter-white',
  'Roborovski hamster': 'roborovski',
  'Chinese hamster': 'chinese',
  'dwarf hamster': 'dwarf',
  hamster: 'hamster',
  gerbil: 'gerbil',
  mouse: 'mouse',
  rat: 'rat',
};

/** @param species as the animal's record has it */
export function speciesKind(species: string): SpeciesKind {
  return BY_NAME[species.trim()] ?? 'other';
}
