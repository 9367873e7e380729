/** Energy by factors against worked numbers that others have published. */
import { describe, expect, test } from 'vitest';
import { atwaterGeneral, modifiedAtwater, nitrogenFreeExtract } from '../../src/nutrition/energy.ts';

describe('modified Atwater', () => {
  // Association of American Feed Control Officials, Methods for Substantiating Nutritional Adequacy of Dog and Cat
  // Foods, proposed revisions for the 2014 Official Publication, p. 22, example B1, a canned cat food: protein 9,
  // fat 7, fibre 1, moisture 75, ash 2 %; energy 1120 kcal ME/kg as fed and 4480 kcal ME/kg of dry matter.
  test('a canned food of 9 % protein and 7 % fat: 1120 kcal/kg, 4480 kcal/kg of dry matter', () => {
    const nfe = nitrogenFreeExtract({ moisture: 75, protein: 9, fat: 7, crudeFibre: 1, ash: 2 });
    const perKg = 10 * modifiedAtwater({ protein: 9, fat: 7, nfe });
    expect(perKg).toBeCloseTo(1120, 9);
    expect(perKg / (1 - 0.75)).toBeCloseTo(4480, 9);
  });

  // "Modified Atwater Formula", teaching handout (scribd.com/doc/135855794, author not named there), dry dog food:
  // protein 27, fat 14, fibre 2, moisture 10 %, ash taken as 6 %; carbohydrate 41 %; 94.5 + 119 + 143.5 = 357 kcal/100 g.
  test('a dry food of 27 % protein and 14 % fat: 41 % NFE, 357 kcal/100 g', () => {
    const nfe = nitrogenFreeExtract({ moisture: 10, protein: 27, fat: 14, crudeFibre: 2, ash: 6 });
    expect(nfe).toBeCloseTo(41, 9);
    expect(modifiedAtwater({ protein: 27, fat: 0, nfe: 0 })).toBeCloseTo(94.5, 9);
    expect(modifiedAtwater({ protein: 0, fat: 14, nfe: 0 })).toBeCloseTo(119, 9);
    expect(modifiedAtwater({ protein: 0, fat: 0, nfe })).toBeCloseTo(143.5, 9);
    expect(modifiedAtwater({ protein: 27, fat: 14, nfe })).toBeCloseTo(357, 9);
  });
});

describe('general Atwater', () => {
  // US Department of Health and Human Services, girlshealth.gov, sample Nutrition Facts label, macaroni and cheese,
  // one cup: fat 12 g, carbohydrate 31 g, protein 5 g; 250 kcal, 110 of them from fat. Labels above 50 kcal are
  // rounded to the nearest 10 (21 CFR 101.9(c)(1), from memory).
  test('the sample label: 250 kcal to the nearest 10, 110 of them from fat', () => {
    const kcal = atwaterGeneral({ protein: 5, fat: 12, carbohydrate: 31 });
    expect(Math.round(kcal / 10) * 10).toBe(250);
    expect(Math.round(atwaterGeneral({ protein: 0, fat: 12, carbohydrate: 0 }) / 10) * 10).toBe(110);
  });
});
