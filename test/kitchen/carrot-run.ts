/** A drying run of carrots, for tests: the lot, the run, the household that has them, and the fresh food. */
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { DryingRun, Lot } from '../../src/kitchen/model.ts';

const reference = loadReference();
export const table = new Map(['sr28:11124', 'sr28:11683'].map((ref) => [ref, reference.get(ref)!]));
export const carrot = table.get('sr28:11124')!;

/** A kilogram of fresh carrots. */
export const lot: Lot = {
  id: 'fresh',
  food: 'carrot-dried',
  name: 'Carrots',
  grams: 1000,
  form: 'fresh',
  boughtOn: '2026-03-14',
  frozen: false,
  cold: [],
};
/** 600 g of them taken, 500 g on the trays. */
export const run: DryingRun = {
  id: 'r1',
  lot: 'fresh',
  device: 'oven',
  celsius: 90,
  startedAt: '2026-03-14T08:00:00.000Z',
  trays: 2,
  gramsTaken: 600,
  gramsBefore: 500,
  hours: 6,
  checks: [],
};
/** The demo household with those carrots. */
export const house = (more: Partial<Household> = {}): Household => ({
  ...demoHousehold(),
  lots: [lot],
  kitchen: [{ id: 'kitchen', driedAtHome: [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 }] }],
  ...more,
});
