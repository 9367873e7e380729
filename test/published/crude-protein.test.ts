/**
 * Crude protein of foods from their nitrogen. USDA SR26 prints protein as nitrogen x the food's own factor (Jones 1931,
 * USDA Circular 183) and the factor beside it; crude protein, as feed labels mean it, is nitrogen x 6.25.
 */
import { expect, test } from 'vitest';
import { crudeProtein, onCrudeProtein } from '../../src/foods/crude-protein.ts';

// NDB number, protein and factor: USDA SR26, foods "n_factor" and nutrient 203. Nitrogen and crude protein by hand.
const PRINTED = [
  ['Sunflower seed kernels, dried, 12036', 20.78, 5.3, 3.921, 24.5],
  ['Oats, 20038', 16.89, 5.83, 2.897, 18.11],
  ['Millet, raw, 20031', 11.02, 5.83, 1.89, 11.81],
  ['Rice, brown, long-grain, raw, 20036', 7.94, 5.95, 1.334, 8.34],
  ['Almonds, 12061', 21.15, 5.18, 4.083, 25.52],
] as const;

test.each(PRINTED)('%s: %f g by %f', (_name, protein, proteinFactor, nitrogen, crude) => {
  const figures = { composition: { PROCNT: protein }, sd: {}, proteinFactor };
  expect(protein / proteinFactor).toBeCloseTo(nitrogen, 3);
  expect(crudeProtein(figures)!.value).toBeCloseTo(crude, 2);
  expect(onCrudeProtein(figures).composition.PROCNT! / 6.25).toBeCloseTo(nitrogen, 3);
});
