/**
 * The chance behind 437 of 980 births with a uniform prior, held against Gelman, Carlin, Stern, Dunson, Vehtari, Rubin,
 * "Bayesian Data Analysis", 3rd ed., section 2.4: mean 0.4460, central 95 % from 0.4151 to 0.4772 (Laplace's placenta
 * praevia births).
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { betaBelow, betaQuantile } from '../../src/care/trials/beta.ts';

it('is where it was published', () => {
  expect(438 / (438 + 544)).toBeCloseTo(0.446, 4);
  expect(betaQuantile(0.025, 438, 544)).toBeCloseTo(0.4151, 3.9);
  expect(betaQuantile(0.975, 438, 544)).toBeCloseTo(0.4772, 3.9);
});

it('is the uniform and the power distribution where it must be, and undoes itself', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      fc.double({ min: 0.8, max: 300, noNaN: true }),
      fc.double({ min: 0.8, max: 300, noNaN: true }),
      (x, a, b) => {
        expect(betaBelow(x, 1, 1)).toBeCloseTo(x, 12);
        expect(betaBelow(x, a, 1)).toBeCloseTo(x ** a, 10);
        expect(betaBelow(x, a, b)).toBeCloseTo(1 - betaBelow(1 - x, b, a), 10);
        expect(betaBelow(betaQuantile(x, a, b), a, b)).toBeCloseTo(x, 8);
      },
    ),
  );
});
