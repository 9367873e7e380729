/** What the label says of feeding, where the share of the pellet is chosen. */
import { beforeAll, describe, expect, it } from 'vitest';
import { batch, house, mix, under } from '../../../../test/kitchen/calendar-house.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { chosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import type { Batch } from '../../../kitchen/model.ts';
import { loadReference } from '../../reference-file.ts';
import { eatingOf } from '../shopping/eating.ts';
import { papersOf } from './batch-papers.ts';
import { presentOf } from './present-batch.ts';

/** Half pellet wanted; protein allows 30 % of it at the most: 0.7 x 10 + 0.3 x 30 is 16. */
const problem: Problem = {
  ...mix.problem,
  foods: [{ id: 'grain', name: 'Grain', composition: { PROCNT: 10, WATER: 8 } }],
  rules: [{ nutrient: 'PROCNT', max: 16, on: 'ration' }],
  beside: [
    {
      id: 'pellet',
      name: 'Pellet',
      share_of_ration: 50,
      share_min: 10,
      share_max: 60,
      composition: { PROCNT: 30, WATER: 8 },
    },
  ],
};
const made: Batch = batch('a', '2026-03-01', {
  problem,
  shares: { grain: 100 },
  pours: [{ food: 'grain', lots: [], target: 300, grams: 300, at: '2026-03-01T09:00:00' }],
});

let parts: FormulationOptions;
beforeAll(async () => {
  parts = { reference: loadReference(), highs: await loadHighs() };
});

describe('a chosen share of pellet', () => {
  const { animals } = house();
  const kept = { lots: [], runs: [], batches: [] };

  it('is what the label says to feed, and how long the batch lasts', () => {
    const { label } = papersOf(made, { kept, animals, parts, dayAt: under('2026-03-01').dayAt });
    // Of 12 g a day, 0.7 parts mix and 0.3 parts pellet.
    expect(label.feeding).toEqual(['Bramble: 8.4 g of the mix and 3.6 g Pellet a day.']);
    expect(label.lasts).toMatch(/^Lasts 35 days/);
  });

  it('is fed to none that is gone', () => {
    const gone = animals.map((a) => ({ ...a, gone: { how: 'died', on: '2026-03-02' } as const }));
    const { record, label } = papersOf(made, {
      kept,
      animals: gone,
      parts,
      dayAt: under('2026-03-01').dayAt,
    });
    expect(label.feeding).toEqual([]);
    expect(record.animalIds).toEqual(made.animalIds);
    expect(eatingOf(mix, gone).animals).toEqual([]);
  });

  it('is what is eaten a day where the batch runs out, and where the next is reckoned', () => {
    const chosen = chosenShares(problem, parts);
    expect(chosen.pellet).toBeCloseTo(30, 6);
    const known = under('2026-03-10', { chosenFor: (p) => chosenShares(p, parts) });
    const present = presentOf(house({ batches: [made] }), mix, known);
    expect(present?.runsOut).toMatchObject({ day: '2026-04-05', gramsADay: expect.closeTo(8.4, 6) });
    expect(eatingOf({ ...mix, problem }, animals, chosen).gramsADay).toBeCloseTo(8.4, 6);
  });

  it('of fresh food of the tables is weighed with its water', () => {
    // Raw cucumber, 95 % water: a gram counted air dry is (100 - 10) / (100 - 95.23) g as weighed.
    const fresh = { id: 'cucumber', name: 'Cucumber', ref: 'sr28:11205', share_of_ration: 10 };
    const beside = [{ ...fresh, counts_as: 'air dry' as const }];
    const { label } = papersOf(
      { ...made, problem: { ...problem, beside } },
      { kept, animals, parts, dayAt: under('2026-03-01').dayAt },
    );
    expect(label.feeding[0]).toMatch(/10\.8 g of the mix and 22\.\d g Cucumber a day/);
  });
});
