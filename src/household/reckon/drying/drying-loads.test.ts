import { expect, it } from 'vitest';
import { house, lot, run } from '../../../../test/kitchen/carrot-run.ts';
import { nextLoadOf } from './drying-loads.ts';

it('goes on with the rest of the loads, at the same trimming', () => {
  const load = { ...run, gramsTaken: 300, gramsBefore: 240, load: { n: 1, of: 3 } };
  expect(nextLoadOf(house({ dryingRuns: [load] }), lot)).toEqual({
    taken: 600,
    ready: 480,
    done: 1,
    of: 3,
  });
  expect(nextLoadOf(house({ dryingRuns: [{ ...load, load: { n: 3, of: 3 } }] }), lot)).toBeUndefined();
  expect(nextLoadOf(house({ dryingRuns: [run] }), lot)).toBeUndefined();
});
