import { expect, it } from 'vitest';
import { newRun } from './new-run.ts';

const dryer = { device: 'oven', trays: 2, trayArea: 12, celsius: 90 } as const;
const about = {
  id: 'r',
  lot: 'l',
  startedAt: '2026-03-14T08:00:00.000Z',
  taken: 1000,
  ready: 900,
  kind: 'vegetable',
  celsius: 90,
  hours: 6,
} as const;

it('takes its part of the trimmings with each load', () => {
  const run = newRun(dryer, { ...about, onTrays: 450, loads: 2, done: 1 });
  expect(run).toMatchObject({ gramsBefore: 450, gramsTaken: 500, load: { n: 2, of: 3 }, trays: 2 });
});

it('is no load of several where it takes all', () => {
  expect(newRun(dryer, { ...about, onTrays: 900, loads: 1, done: 0 })).not.toHaveProperty('load');
});
