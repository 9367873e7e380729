import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goods, grams, packet } from '../../../test/kitchen/packets.ts';
import { type Cooling, coreCelsius, coreCoolingDays, GOODS } from './cooling.ts';

describe('goods', () => {
  it.each(Object.entries(GOODS))('%s: figures rise from low to high and have a source', (_, good) => {
    for (const three of [good.conductivity, good.heatCapacity, good.density])
      expect(three[0] <= three[1] && three[1] <= three[2]).toBe(true);
    expect(good.source).toMatch(/memory|\(/);
  });
});

describe('time to a cold core', () => {
  it('is hours for a pound and days for a sack', () => {
    const pound = coreCoolingDays(packet(500), -15);
    expect(pound.mid).toBeGreaterThan(3 / 24);
    expect(pound.mid).toBeLessThan(12 / 24);
    expect(coreCoolingDays(packet(25_000), -15).high).toBeGreaterThan(1);
  });

  it('low <= mid <= high, longer for a heavier packet and a colder aim, shorter in colder air and with a fan', () => {
    fc.assert(
      fc.property(goods, grams, fc.integer({ min: -16, max: 10 }), (good, g, aim) => {
        const time = coreCoolingDays(packet(g, good), aim);
        expect(time.low).toBeLessThanOrEqual(time.mid);
        expect(time.mid).toBeLessThanOrEqual(time.high);
        for (const end of ['low', 'mid', 'high'] as const) {
          expect(coreCoolingDays(packet(g * 1.5, good), aim)[end]).toBeGreaterThan(time[end]);
          expect(coreCoolingDays(packet(g, good), aim - 1)[end]).toBeGreaterThan(time[end]);
          expect(coreCoolingDays({ ...packet(g, good), air: -25 }, aim)[end]).toBeLessThan(time[end]);
          expect(coreCoolingDays({ ...packet(g, good), surface: 'fan' }, aim)[end]).toBeLessThan(time[end]);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('agrees with the temperature after that time', () => {
    fc.assert(
      fc.property(goods, grams, fc.integer({ min: -16, max: 10 }), (good, g, aim) => {
        const cooling = packet(g, good);
        expect(coreCelsius(cooling, coreCoolingDays(cooling, aim).mid).mid).toBeCloseTo(aim, 3);
      }),
      { numRuns: 25 },
    );
  });

  it('takes a stack as a bigger brick of the same density', () => {
    const one: Cooling = { ...packet(1), bag: { shape: 'brick', metres: [0.4, 0.25, 0.1], grams: 7500 } };
    const stack: Cooling = { ...one, bag: { ...one.bag, stack: [2, 1, 3] } };
    const big: Cooling = { ...one, bag: { shape: 'brick', metres: [0.8, 0.25, 0.3], grams: 45_000 } };
    expect(coreCoolingDays(stack, -15).mid).toBeCloseTo(coreCoolingDays(big, -15).mid, 9);
    expect(coreCoolingDays(stack, -15).mid).toBeGreaterThan(coreCoolingDays(one, -15).mid);
  });

  it('a can cools like a brick of about its size, a slab slower than the brick cut from it', () => {
    const can: Cooling = { ...packet(1), bag: { shape: 'cylinder', diameter: 0.2, height: 0.2 } };
    const inner = 0.2 * Math.SQRT1_2;
    const days = (metres: [number, number, number]) =>
      coreCoolingDays({ ...can, bag: { shape: 'brick', metres } }, -15).mid;
    expect(coreCoolingDays(can, -15).mid).toBeLessThan(days([0.2, 0.2, 0.2]));
    expect(coreCoolingDays(can, -15).mid).toBeGreaterThan(days([inner, inner, 0.2]));
    const slab = coreCoolingDays({ ...can, bag: { shape: 'slab', thickness: 0.2 } }, -15).mid;
    expect(slab).toBeGreaterThan(days([0.4, 0.4, 0.2]));
  });

  it.each([
    [packet(1000), -18, 'above that of the air'],
    [{ ...packet(1000), start: -10 }, -5, 'when it goes in'],
    [packet(0), -15, 'above 0'],
    [{ ...packet(1), bag: { shape: 'brick', metres: [0.1, Number.NaN, 0.1] } }, -15, 'above 0'],
    [
      { ...packet(1), bag: { shape: 'cylinder', diameter: 0.1, height: 0.1, stack: [2, 1, 1] } },
      -15,
      'upright',
    ],
  ] as [Cooling, number, string][])('%o to %d °C says what is wrong', (cooling, aim, words) => {
    expect(() => coreCoolingDays(cooling, aim)).toThrow(RangeError);
    expect(() => coreCoolingDays(cooling, aim)).toThrow(words);
  });
});
