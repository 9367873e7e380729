/**
 * Random-effects mean against a published example: the 13 trials of BCG vaccine (Colditz et al. 1994, JAMA
 * 271:698-702; counts as listed by van Houwelingen et al. 2002, Statistics in Medicine 21:589-624, table I), log
 * relative risks, as Stata's `metan` prints them; the printed figures were read in the tests of the R package
 * metafor (`test_misc_metan_vs_rma.uni_with_dat.bcg.r`).
 */
import { describe, expect, it } from 'vitest';
import { randomEffects } from '../../src/foods/sources/random-effects.ts';

/** Cases and all who were vaccinated, cases and all who were not. */
const TRIALS = [
  [4, 123, 11, 139],
  [6, 306, 29, 303],
  [3, 231, 11, 220],
  [62, 13598, 248, 12867],
  [33, 5069, 47, 5808],
  [180, 1541, 372, 1451],
  [8, 2545, 10, 629],
  [505, 88391, 499, 88391],
  [29, 7499, 45, 7277],
  [17, 1716, 65, 1665],
  [186, 50634, 141, 27338],
  [5, 2498, 3, 2341],
  [27, 16913, 29, 17854],
] as const;

const logRisks = TRIALS.map(([a, n, c, m]) => Math.log(a / n / (c / m)));
const variances = TRIALS.map(([a, n, c, m]) => 1 / a - 1 / n + 1 / c - 1 / m);
const Z = 1.959963984540054;

describe('13 trials of BCG vaccine', () => {
  const found = randomEffects(logRisks, variances);

  it('have the printed Q', () => {
    expect(found.q).toBeCloseTo(152.233, 3);
  });

  it('have the printed mean and 95 % interval by DerSimonian and Laird', () => {
    expect(found.mean).toBeCloseTo(-0.7141, 4);
    expect(found.mean - Z * found.se).toBeCloseTo(-1.0644, 4);
    expect(found.mean + Z * found.se).toBeCloseTo(-0.3638, 4);
  });

  it('have the between-trial variance of metafor, 0.3088 (from memory)', () => {
    expect(found.tau2).toBeCloseTo(0.3088, 4);
  });
});
