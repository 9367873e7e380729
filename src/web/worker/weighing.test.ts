/** The verdict beside the scale and that of the record are one, whatever the packs were measured to hold. */
import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { lotOf, pourOf } from '../../../test/kitchen/cupboards.ts';
import { batch, problem, reference } from '../../../test/kitchen/spring-batch.ts';
import { verdictOf } from '../../formulation/explain/verdict.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { loadHighs } from '../../formulation/solve/highs.ts';
import { papersOf } from '../../household/reckon/batch/batch-papers.ts';
import { dayAt } from '../shared/today.ts';
import { standingOf } from './weighing.ts';

let parts: FormulationOptions;
beforeAll(async () => {
  parts = { reference, highs: await loadHighs() };
});

const grams = { oats: 120, carrot: 40, peas: 40 };
const day = '2026-04-01';

/** A batch all poured, its carrots from a pack of this moisture, and protein at most what that mix holds plus `room`. */
function stands(moisture: number, room: number) {
  const dried = (8 * (100 - moisture)) / (100 - 4);
  const max = (14 * grams.oats + dried * grams.carrot + 24 * grams.peas) / 200 + room;
  const kept = {
    lots: [lotOf({ id: 'c1', food: 'carrot', form: 'dried', grams: 100, moisture, boughtOn: '2026-03-20' })],
    runs: [],
    batches: [],
  };
  const { finishedAt: _, madeBy: __, ...plan } = batch;
  const full = {
    ...plan,
    shares: { oats: 60, carrot: 20, peas: 20 },
    problem: { ...problem, rules: [{ nutrient: 'PROCNT' as const, min: 5, max, on: 'mix' as const }] },
    pours: [
      pourOf({ food: 'oats', grams: grams.oats, lots: [] }),
      pourOf({ food: 'carrot', grams: grams.carrot, lots: [{ lot: 'c1', grams: grams.carrot }] }),
      pourOf({ food: 'peas', grams: grams.peas, lots: [] }),
    ],
  };
  const standing = standingOf(full, { kept, day, parts });
  const { record, label } = papersOf(
    { ...full, finishedAt: '2026-04-01T12:00:00Z' },
    { kept, animals: [], parts, dayAt },
  );
  return { standing, record, label };
}

it('all poured, the pour, the end, the record and the label say the same of a bowl at its limit', () => {
  const nearly = fc.constantFrom(0, 1e-9, -1e-9, 5e-7, -5e-7, 2e-6, -2e-6, 5e-6, -5e-6, 0.01, -0.01);
  fc.assert(
    fc.property(fc.double({ min: 1, max: 14, noNaN: true }), nearly, (moisture, room) => {
      const { standing, record, label } = stands(moisture, room);
      const { state, head } = verdictOf(standing.evaluation);
      // Where more of what was poured is asked for, what lies in the bowl is out of range.
      if (standing.state.done) expect([record.verdict.state, record.verdict.head]).toEqual([state, head]);
      else expect(record.verdict.state).toBe('out');
      expect(label.verdict).toEqual(record.verdict);
      expect(record.inRange).toBe(record.verdict.state !== 'out');
      if (standing.state.done && !standing.state.lost && !standing.state.asked) expect(state).not.toBe('out');
    }),
    { numRuns: draws(200, 40) },
  );
});
