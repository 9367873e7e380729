/**
 * What is published of how much small rodents eat, and of what raises it. Every figure stands beside where it comes
 * from; what was read in another's words or is remembered says so.
 */
import type { SpeciesKind } from '../animal/species.ts';

/** From the least to the most. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

export interface Cited {
  /** Where it comes from, one line each. */
  readonly sources: readonly string[];
}

/** kcal to kJ (thermochemical calorie). */
export const KJ_PER_KCAL = 4.184;

const GOLDEN_REVIEW =
  'review of the feeding of golden hamsters with trials of its authors, abstract read (5.7 g dry matter per 100 g body weight a day, 1 to 2 mL of water per g eaten)';
const FORESTOMACH =
  '“Nutritional implications of the hamster forestomach”, abstract read (metabolizable energy of a cereal diet in golden hamsters 3.61 kcal per g)';
const RAT_BALANCE =
  '“Effect of protein quality on energy requirements for maintenance in growing rats”, Archives of Animal Nutrition 37 (1987): 881-894, abstract read (599 kJ, from 564 to 621)';
const TAUGHT =
  'figures taught for rats and mice, read in notes of a course, the publication behind them not found (110 kcal of metabolizable energy per kg body weight to the power of 0.75 a day; 145 in growth and pregnancy, 440 while nursing)';
const FANCY =
  'Robbins 2007, newsletter on the needs of rats after “Laboratory Animal Medicine” (young of 3 to 7 weeks need about twice the energy of a grown one; pregnant ones 10 to 30 % more, Menaker and Navia 1973)';

/** Average intake of dry matter of golden hamsters, g per 100 g body weight a day. */
export const GOLDEN_DRY_PER_100 = { grams: 5.7, sources: [GOLDEN_REVIEW] } as const;

/** Metabolizable energy of a cereal diet as golden hamsters used it, kcal per g; whether per g of dry matter is not said. */
export const GOLDEN_CEREAL_ENERGY = { kcalPerGram: 3.61, sources: [FORESTOMACH] } as const;

/** Intake of gerbils by energy, kcal per 100 g body weight a day, where their chow counts 4.2 kcal per g. */
export const GERBIL_INTAKE = {
  kcalPer100: 40,
  chowKcalPerGram: 4.2,
  sources: [
    '“Effects of dietary caloric density on feeding behavior in Mongolian gerbils”, abstract read (40 kcal per 100 g body weight a day on diets of 2.25 to 6.09 kcal per g; chow of 4.2 kcal per g)',
  ],
} as const;

/** Energy for maintenance of rats, kJ per kg body weight to the power of 0.75 a day. */
export const RAT_MAINTENANCE = { low: 564, high: 621, average: 599, sources: [RAT_BALANCE] } as const;

/** The same as taught for rats and mice, kcal per kg to the power of 0.75 a day. */
export const TAUGHT_ENERGY = {
  grown: 110,
  growing: 145,
  pregnant: 145,
  nursing: 440,
  sources: [TAUGHT],
} as const;

/**
 * Metabolizable energy a grown animal needs in a day, kJ per kg body weight to the power of 0.75: from what is taught
 * for rats and mice (110 kcal; the same is remembered of golden hamsters) to what golden hamsters eat (5.7 g of dry
 * matter per 100 g at 3.61 kcal per g comes to 507 to 623 at 120 to 180 g, by whether the energy is of dry matter or of
 * food at 10 % moisture); rats were found to need 564 to 621.
 */
export const ENERGY_PER_KG: Span & Cited = {
  low: 460,
  high: 625,
  sources: [TAUGHT, GOLDEN_REVIEW, FORESTOMACH, RAT_BALANCE],
};

/** Kinds in which that was measured, or for which it is taught; for any other it is carried over from these. */
export const ENERGY_OF_ITS_OWN: readonly SpeciesKind[] = ['golden', 'rat', 'mouse'];

/** Body weight at which what golden hamsters need is carried over to other kinds, g: the middle of theirs. */
export const CARRIED_FROM_GRAMS = 150;

/** Powers of body weight by which energy is found to rise from kind to kind. */
export const POWERS: Span & Cited = {
  low: 0.67,
  high: 0.75,
  sources: [
    '“Allometric scaling of mammalian metabolism”, J. Exp. Biol. 208 (2005): 1611 and “Size and power in mammals”, J. Exp. Biol. 160 (1991): 25, abstracts read',
  ],
};

/** By how many times a stage raises what a grown animal of that weight needs. */
export const STAGE_FACTORS: Readonly<Record<'growing' | 'pregnant' | 'nursing' | 'breeding', Span & Cited>> =
  {
    growing: { low: 1.3, high: 2, sources: [TAUGHT, FANCY] },
    pregnant: { low: 1.1, high: 1.3, sources: [FANCY, TAUGHT] },
    nursing: { low: 1.3, high: 4, sources: [TAUGHT] },
    breeding: { low: 1.1, high: 4, sources: [FANCY, TAUGHT] },
  };

/** With a running wheel: from hardly more food to nearly twice as much. */
export const WHEEL: Span & Cited = {
  low: 1,
  high: 2,
  sources: [
    'Physiol. Behav. 33 (1984): 243-252, abstract read (golden hamsters on chow ate little more than those without a wheel)',
    'Physiol. Behav. 82 (2004): 541-544, abstract read (golden hamsters, 52 weeks: food nearly doubled)',
  ],
};

/** g a day of striped hamsters with young, by the temperature of the room, °C. */
export const NURSING_BY_ROOM = {
  grams: { 5: 16.2, 23: 14.6, 30: 14.5 },
  sources: [
    '“Energy budget during lactation in striped hamsters”, J. Exp. Biol. 214 (2011): 988, abstract read (16.2 g a day at 5 °C, 14.6 at 23 °C, 14.5 at 30 °C; 11.4 % more in the cold)',
  ],
} as const;

/** kJ that winter white hamsters took up in a day at -2 °C, and how often their basal rate that is at the most. */
export const WINTER_WHITE_COLD = {
  low: 54.4,
  high: 91.1,
  basalTimes: 3.5,
  celsius: -2,
  sources: [
    'Weiner 1987, Oecologia 72: 297-302, abstract read (54.4 kJ a day before they were used to the cold, and they lost weight; 91.1 kJ after)',
  ],
} as const;

/** By how many times more young, cold and lost fur together raised the food of nursing winter whites, at the most. */
export const NURSING_AT_MOST = {
  times: 6.38,
  sources: [
    'Physiol. Behav. 100 (2010): 128-134, abstract read (winter white hamsters with 2 or 4 young ate more with more young and in the cold, up to 538 % more)',
  ],
} as const;
