/** Birth, weaning and growing up, by kind. */
import type { SpeciesKind } from '../animal/species.ts';

/** Days from mating to birth, the longest that is told. */
export const LONGEST_GESTATION: Readonly<Partial<Record<SpeciesKind, { days: number; source: string }>>> = {
  golden: { days: 18, source: 'NRC 1995, ch. 5: 15 to 18 days; doi 10.17226/4758' },
  'winter-white': { days: 19, source: 'Figala, Hoffmann, Goldau 1973, Oecologia 12:89-118: 18 or 19 days' },
  mouse: { days: 21, source: 'humane-endpoints.info, physiological parameters: 18 to 21 days' },
  rat: { days: 23, source: 'animal centre of National Cheng Kung University: 21 to 23 days' },
  gerbil: { days: 26, source: 'animal centre of National Cheng Kung University: 24 to 26 days' },
};

/** The longest of all kinds here, for those without a figure of their own. */
export const LONGEST_GESTATION_OF_ALL = 26;

/** What young weigh when they are weaned. */
export const WEANED: Readonly<
  Partial<Record<SpeciesKind, { fromDay: number; toDay: number; low: number; high: number; source: string }>>
> = {
  golden: { fromDay: 21, toDay: 28, low: 18, high: 50, source: 'NRC 1995, ch. 5; doi 10.17226/4758' },
};

/**
 * Days until an animal has its grown weight, roughly: from memory. A weight that rises before is growth. Djungarian
 * hamsters in long days grew up to an age of about 160 days, in short days to 190 to 260: Hoffmann 1978, J. Reprod. Fertil.
 * 54:29-35 (abstract).
 */
export const GROWN_AT: Readonly<Partial<Record<SpeciesKind, number>>> = {
  'winter-white': 260,
  rat: 240,
  gerbil: 240,
};
export const GROWN_AT_OTHERS = 180;
