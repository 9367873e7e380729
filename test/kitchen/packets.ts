/** Packets that cool in a freezer at -18 °C, and draws of what is in them. */
import fc from 'fast-check';
import { type Cooling, GOODS, type GoodKind } from '../../src/kitchen/freezing/cooling.ts';

export const packet = (grams: number, good: GoodKind = 'grain'): Cooling => ({
  good,
  bag: { shape: 'packet', grams },
  air: -18,
});

export const goods = fc.constantFrom(...(Object.keys(GOODS) as GoodKind[]));

export const grams = fc.integer({ min: 50, max: 30_000 });
