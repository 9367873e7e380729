import type { DryingRun } from '../../src/kitchen/model.ts';

/** A kilogram of fresh food on the trays of an oven, not looked at yet. */
export const run: DryingRun = {
  id: 'r1',
  lot: 'fresh',
  device: 'oven',
  celsius: 60,
  startedAt: '2026-03-14T08:00:00.000Z',
  trays: 2,
  gramsBefore: 1000,
  checks: [],
};
