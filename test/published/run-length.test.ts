/**
 * Average run lengths, held against Lucas and Crosier 1982, "Fast initial response for CUSUM quality-control schemes",
 * Technometrics 24:199-205 (k 0.5, h 4), and Lucas and Saccucci 1990, Technometrics 32:1-12 (EWMA).
 */
import { expect, it } from 'vitest';
import { cusumRunLength, ewmaRunLength } from '../../src/care/weight/run-length.ts';

const within = (value: number, published: number) =>
  expect(Math.abs(value / published - 1), `${value} against ${published}`).toBeLessThan(0.01);

it.each([
  [0, 168],
  [0.25, 74.2],
  [0.5, 26.6],
  [1, 8.38],
  [2, 3.34],
])('cumulative sum, shift %d', (shift, published) =>
  within(cusumRunLength({ k: 0.5, h: 4, shift }), published),
);

it.each([
  [0, 149],
  [0.25, 62.7],
  [0.5, 20.1],
  [1, 5.29],
  [2, 2.01],
])('cumulative sum with half a head start, shift %d', (shift, published) =>
  within(cusumRunLength({ k: 0.5, h: 4, headStart: 2, shift }), published),
);

it.each([
  [0.5, 3.071, 0, 500],
  [0.5, 3.071, 0.5, 88.8],
  [0.5, 3.071, 1, 17.5],
  [0.5, 3.071, 2, 3.63],
  [0.03, 2.437, 0, 500],
  [0.03, 2.437, 0.5, 29.3],
  [0.03, 2.437, 1, 12.6],
  [0.03, 2.437, 2, 5.99],
])('moving average, lambda %d, width %d, shift %d', (lambda, width, shift, published) =>
  within(ewmaRunLength({ lambda, width, shift }), published),
);
