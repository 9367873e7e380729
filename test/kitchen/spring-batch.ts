/** A batch as it was weighed out, with its mix and the lots it came from, for tests of what is made of it. */
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { CupboardContents } from '../../src/kitchen/cupboard/cupboard.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { batchOf, lotOf, pourOf } from './cupboards.ts';

export const reference = loadReference();

export const problem: Problem = parseProblem(
  {
    foods: [
      {
        id: 'oats',
        name: 'Oats',
        group: 'seed',
        composition: { WATER: 10, PROCNT: 14, FAT: 7 },
        sd: { PROCNT: 1 },
        price_per_kg: 3,
      },
      { id: 'peas', name: 'Peas', group: 'legume', composition: { WATER: 9, PROCNT: 24, FAT: 1 } },
      {
        id: 'carrot',
        name: 'Carrot, dried',
        group: 'vegetable',
        composition: { WATER: 4, PROCNT: 8, FAT: 1.5 },
      },
      { id: 'nettle', name: 'Nettle', group: 'herb', composition: { WATER: 8 } },
    ],
    rules: [{ nutrient: 'PROCNT', min: 12, max: 16, on: 'mix' }],
    beside: [{ id: 'pellet', name: 'Pellet', share_of_ration: 50, composition: { PROCNT: 18 } }],
    batch_grams: 200,
    scale_step_grams: 1,
  },
  reference,
).problem;

export const kept: CupboardContents = {
  lots: [
    lotOf({ id: 'o1', name: 'Oats', grams: 300, price: 0.6, boughtOn: '2026-03-20' }),
    lotOf({ id: 'c1', food: 'carrot', form: 'dried', grams: 100, moisture: 12, boughtOn: '2026-03-20' }),
  ],
  runs: [],
  batches: [],
};

export const batch: Batch = batchOf({
  id: 'b1',
  name: 'Spring mix',
  problem,
  shares: { oats: 60, peas: 20, carrot: 20 },
  order: ['carrot', 'oats'],
  grams: 200,
  pours: [
    pourOf({ food: 'oats', lots: [{ lot: 'o1', grams: 80 }], grams: 80 }),
    pourOf({ food: 'carrot', lots: [{ lot: 'c1', grams: 40 }] }),
    pourOf({ food: 'oats', lots: [{ lot: 'o1', grams: 40 }], grams: 42 }),
    pourOf({ food: 'peas', grams: 38 }),
  ],
  animalIds: ['ada'],
  madeBy: 'Robin',
  startedAt: '2026-04-01T10:00:00Z',
  finishedAt: '2026-04-02T09:00:00Z',
});
