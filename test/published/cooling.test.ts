/**
 * Core cooling of a stack of bagged flour, held against Flinn, Arthur, Throne, Friesen, Hartzer 2015, "Cold
 * temperature disinfestation of bagged flour", J. Stored Prod. Res. 63:42-46 (abstract, read at
 * digitalcommons.unl.edu/usdaarsfacpub/2057).
 *
 * Published: 50 bags of 22.7 kg, 5 in each of 10 layers; the pallet 109 by 132 by 123 cm and about 1152 kg; a
 * commercial freezer at -17.8 °C; nine runs, each with the days after which the most central place reached a
 * temperature. Assumed, since the abstract does not say: the flour went in at 18 to 25 °C (20 in the middle); the
 * freezer had a fan; the wooden pallet counts as flour; no air moved between the bags. The thermal figures are
 * those of `src/kitchen/data/cold-goods.json`, none of them fitted to these runs.
 */
import { describe, expect, it } from 'vitest';
import { coreCoolingDays } from '../../src/kitchen/freezing/cooling.ts';

const RUNS = [
  [-11.0, 11.0],
  [-9.4, 9.1],
  [-6.9, 8.9],
  [-5.0, 7.2],
  [-3.5, 6.7],
  [-1.6, 5.8],
  [-0.1, 5.5],
  [3.3, 5.2],
  [5.6, 4.2],
] as const;
const AIR = -17.8;

const days = (celsius: number) =>
  coreCoolingDays(
    {
      good: 'flour',
      bag: { shape: 'brick', metres: [1.09, 1.32, 1.23], grams: 1_152_000 },
      air: AIR,
      start: [18, 20, 25],
      surface: 'fan',
    },
    celsius,
  );

/** Straight line of days against the logarithm of the difference to the air: slope and largest miss. */
function line(points: readonly (readonly [celsius: number, days: number])[]): {
  slope: number;
  miss: number;
} {
  const xy = points.map(([celsius, y]) => [Math.log(celsius - AIR), y] as const);
  const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / of.length;
  const [mx, my] = [mean(xy.map(([x]) => x)), mean(xy.map(([, y]) => y))];
  const slope = mean(xy.map(([x, y]) => (x - mx) * (y - my))) / mean(xy.map(([x]) => (x - mx) ** 2));
  return { slope, miss: Math.max(...xy.map(([x, y]) => Math.abs(y - my - slope * (x - mx)))) };
}

describe('a pallet of flour at -17.8 °C (Flinn et al. 2015)', () => {
  it.each(RUNS)('the centre at %d °C after %d days lies in the range of the model', (celsius, measured) => {
    const { low, high } = days(celsius);
    expect(low).toBeLessThan(measured);
    expect(high).toBeGreaterThan(measured);
  });

  it('the middle of the model errs by about a day, on the slow side', () => {
    const errors = RUNS.map(([celsius, measured]) => days(celsius).mid - measured);
    const rms = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
    expect(rms).toBeLessThan(1);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(1.4);
    expect(Math.min(...errors)).toBeGreaterThan(0);
  });

  it('nine runs of the model take 5.3 to 11.2 days where the nine measured took 4.2 to 11.0', () => {
    expect(days(5.6).mid).toBeCloseTo(5.3, 1);
    expect(days(-11).mid).toBeCloseTo(11.2, 1);
  });

  it('cools late on at the measured pace, whatever temperature it began at', () => {
    const measured = line(RUNS);
    const model = line(RUNS.map(([celsius]) => [celsius, days(celsius).mid] as const));
    // The measured runs stray up to 0.7 days from their own line: that is the scatter between pallets.
    expect(measured.miss).toBeGreaterThan(0.6);
    expect(measured.miss).toBeLessThan(0.7);
    expect(Math.abs(model.slope / measured.slope - 1)).toBeLessThan(0.1);
  });
});
