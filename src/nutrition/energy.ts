/** Energy by the Atwater factors and protein by factor. All per 100 g, grams in, kcal out. */

/**
 * Nitrogen-free extract, g/100 g as fed: 100 - moisture - crude protein - crude fat - crude fibre - ash.
 */
export function nitrogenFreeExtract(p: {
  moisture: number;
  protein: number;
  fat: number;
  crudeFibre: number;
  ash: number;
}): number {
  return 100 - p.moisture - p.protein - p.fat - p.crudeFibre - p.ash;
}

/** Modified Atwater for pet food, kcal ME/100 g: 3.5 protein, 8.5 fat, 3.5 NFE (National Research Council 1985). */
export function modifiedAtwater(p: { protein: number; fat: number; nfe: number }): number {
  return 3.5 * p.protein + 8.5 * p.fat + 3.5 * p.nfe;
}

/** General Atwater, kcal/100 g: 4 protein, 9 fat, 4 carbohydrate (Merrill and Watt 1973, USDA Handbook 74). */
export function atwaterGeneral(p: { protein: number; fat: number; carbohydrate: number }): number {
  return 4 * p.protein + 9 * p.fat + 4 * p.carbohydrate;
}

/**
 * Between these lie the nitrogen factors of foods. Tables print 5.18 to 6.38 (Jones 1931, USDA Circular 183), USDA SR26
 * up to 6.93; true protein of mushrooms and insects is counted with less, down to about 3.5 (from memory).
 */
export const LEAST_PROTEIN_FACTOR = 3;
export const MOST_PROTEIN_FACTOR = 7;

/**
 * Protein counted with another nitrogen factor: oats at 5.83 become crude protein at 6.25.
 * @param from factor that the amount was counted with @param to factor that is wanted, both above 0
 * @throws RangeError where a factor is none
 */
export function rescaleProtein(protein: number, from: number, to = 6.25): number {
  for (const factor of [from, to])
    if (!(factor > 0 && Number.isFinite(factor)))
      throw new RangeError(
        `a nitrogen factor must be above 0, not ${factor}; foods have 5.18 to 6.38 (Jones 1931)`,
      );
  return (protein * to) / from;
}
