/** How much small rodents eat: every figure used, against what was published, and that they bear one another out. */
import { describe, expect, test } from 'vitest';
import { commonRules } from '../../src/care/feeding/common-rules.ts';
import { dailyAmount, grownEnergy } from '../../src/care/feeding/daily-amount.ts';
import { rationEnergy } from '../../src/care/feeding/ration-energy.ts';
import { ADULT_WEIGHTS } from '../../src/care/figures/adult-weights.ts';
import {
  ENERGY_PER_KG,
  GERBIL_INTAKE,
  GOLDEN_CEREAL_ENERGY,
  GOLDEN_DRY_PER_100,
  KJ_PER_KCAL,
  NURSING_AT_MOST,
  NURSING_BY_ROOM,
  RAT_MAINTENANCE,
  STAGE_FACTORS,
  TAUGHT_ENERGY,
  WHEEL,
  WINTER_WHITE_COLD,
} from '../../src/care/figures/feeding.ts';

const known = (value: number) => ({ low: value, high: value, coverage: 100 });
/** A dry food as labels print it: 10 % water, 4 % fat, 5 % fibre, 6 % ash. */
const DRY = rationEnergy({ WATER: known(10), FAT: known(4), FIBC: known(5), ASH: known(6) })!;

const grown = (weight: number) =>
  dailyAmount({
    kind: 'golden',
    lifeStage: 'adult',
    conditions: [],
    weight,
    energy: DRY,
  });

describe('energy for maintenance', () => {
  test('what golden hamsters eat of a cereal diet comes to 507 to 623 kJ per kg to the power of 0.75', () => {
    const per = (weight: number, dryPart: number) =>
      ((GOLDEN_DRY_PER_100.grams * weight) / 100 / dryPart) *
      GOLDEN_CEREAL_ENERGY.kcalPerGram *
      KJ_PER_KCAL *
      (weight / 1000) ** -0.75;
    const { low, high } = ADULT_WEIGHTS.golden!;
    expect([low, high]).toEqual([120, 180]);
    expect(per(low, 1)).toBeCloseTo(507, 0);
    expect(per(high, 0.9)).toBeCloseTo(623, 0);
  });

  test('110 kcal is 460 kJ; rats were measured at 599 kJ, 564 to 621; the span used holds all of them', () => {
    expect(TAUGHT_ENERGY.grown * KJ_PER_KCAL).toBeCloseTo(460, 0);
    expect(RAT_MAINTENANCE).toMatchObject({ low: 564, average: 599, high: 621 });
    const { low, high } = ENERGY_PER_KG;
    for (const per of [
      TAUGHT_ENERGY.grown * KJ_PER_KCAL,
      RAT_MAINTENANCE.low,
      RAT_MAINTENANCE.high,
      507,
      623,
    ]) {
      expect(per).toBeGreaterThanOrEqual(low);
      expect(per).toBeLessThanOrEqual(high);
    }
    const rat = grownEnergy('rat', 1000);
    expect(rat.estimate).toBe(false);
    expect(rat.low).toBeCloseTo(low, 9);
    expect(rat.high).toBeCloseTo(high, 9);
  });

  test('stages: 145 and 440 of 110 kcal', () => {
    expect(TAUGHT_ENERGY.growing / TAUGHT_ENERGY.grown).toBeCloseTo(STAGE_FACTORS.growing.low, 1);
    expect(TAUGHT_ENERGY.pregnant / TAUGHT_ENERGY.grown).toBeCloseTo(STAGE_FACTORS.pregnant.high, 1);
    expect(TAUGHT_ENERGY.nursing / TAUGHT_ENERGY.grown).toBe(STAGE_FACTORS.nursing.high);
  });

  test('a winter white in the cold took up 54 to 91 kJ, which is more than it needs in a warm room', () => {
    const { low, high } = grownEnergy('winter-white', 35);
    expect(WINTER_WHITE_COLD).toMatchObject({ low: 54.4, high: 91.1, celsius: -2 });
    expect(high).toBeLessThan(WINTER_WHITE_COLD.high);
    // No animal lives on less than its basal rate.
    expect(low).toBeGreaterThan(WINTER_WHITE_COLD.high / WINTER_WHITE_COLD.basalTimes);
  });
});

describe('intake', () => {
  test('5.7 g of dry matter per 100 g: 9.5 g of dry food a day at 150 g, within the common rules', () => {
    const { intake, equation } = grown(150);
    expect(intake!.dry).toBeCloseTo(8.55, 9);
    expect(intake!.fed!.low).toBeCloseTo(9.5, 9);
    const [handouts, practice] = commonRules('golden');
    expect(handouts).toMatchObject({ low: 10, high: 12 });
    expect(practice).toMatchObject({ low: 8, high: 12 });
    expect(intake!.fed!.low).toBeGreaterThan(practice!.low);
    // The equation goes round both.
    expect(equation!.fed.low).toBeLessThan(intake!.fed!.low);
    expect(equation!.fed.high).toBeGreaterThan(intake!.fed!.high);
    expect(equation!.fed.low).toBeCloseTo(8.94, 2);
    expect(equation!.fed.high).toBeCloseTo(12.14, 2);
  });

  test('gerbils ate 40 kcal per 100 g of body weight: 9.5 g of a chow of 4.2 kcal per g', () => {
    expect(GERBIL_INTAKE.kcalPer100 / GERBIL_INTAKE.chowKcalPerGram).toBeCloseTo(9.52, 2);
  });
});

describe('what raises it', () => {
  test('a running wheel: from little to nearly double', () => {
    expect(WHEEL).toMatchObject({ low: 1, high: 2 });
  });

  test('nursing striped hamsters ate 14.5 g at 30 °C, 14.6 at 23 °C and 16.2 at 5 °C: 11.4 % more in the cold', () => {
    const { grams } = NURSING_BY_ROOM;
    expect(grams).toEqual({ 5: 16.2, 23: 14.6, 30: 14.5 });
    expect(100 * (grams[5] / ((grams[23] + grams[30]) / 2) - 1)).toBeCloseTo(11.4, 0);
  });

  test('nursing winter whites: up to 538 % more', () => {
    expect(NURSING_AT_MOST.times).toBeCloseTo(1 + 5.38, 9);
  });
});
