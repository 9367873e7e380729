/** How far a bound must give way, and a solver that breaks off. */
import { beforeAll, expect, test, vi } from 'vitest';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import type { Problem } from '../problem/problem.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';

const reference = loadReference();
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

function collisionOf(about: Partial<Problem>, solver = highs) {
  const result = new Formulation(problemOf(about), { reference, highs: solver }).solve();
  if (result.status !== 'infeasible') throw new Error('expected a collision');
  return result;
}

/** Grain has 0.25 of calcium to phosphorus, herb 0.6; the herb is half the mix at most: 350 to 700 is the best. */
const RATIO = {
  foods: [
    { id: 'grain', composition: { CA: 100, P: 400, WATER: 10 } },
    { id: 'herb', composition: { CA: 600, P: 1000, WATER: 10 }, max: 50 },
  ],
  rules: [{ ratio: ['CA', 'P'] as const, min: 1 }],
};

test('a ratio is loosened to the best that any mix has, not to that of the mix that misses the old bound least', () => {
  const { remedies } = collisionOf(RATIO);
  expect(remedies).toContainEqual(
    expect.objectContaining({ kind: 'loosen', pointer: '/rules/0/min', to: 0.4999 }),
  );
});

test('a content of dry matter is loosened to the best that any mix has', () => {
  // The damp food has 40 mg in 40 g dry, 100 mg in 100 g; the dry one 54 mg in 90 g, 60. At 10 the damp one misses less.
  const { remedies } = collisionOf({
    foods: [
      { id: 'damp', composition: { CA: 40, WATER: 60 } },
      { id: 'dry', composition: { CA: 54, WATER: 10 } },
    ],
    rules: [{ nutrient: 'CA', max: 10, basis: 'DM' }],
  });
  expect(remedies).toContainEqual(expect.objectContaining({ pointer: '/rules/0/max', to: 60.01 }));
});

test('where every food may be left a rule is loosened for what is left too', () => {
  const food = (id: string, PROCNT: number) => ({ id, composition: { PROCNT, WATER: 10 } });
  const { conflict, remedies } = collisionOf({
    foods: [food('rich', 24), food('middle', 16), food('poor', 12)].map((f) => ({ ...f, min: 20 })),
    rules: [{ nutrient: 'PROCNT', min: 16 }],
    drop_one: true,
  });
  expect(conflict.map((c) => c.pointer)).toContain('/drop_one');
  expect(conflict.map((c) => c.pointer)).toContain('/rules/0/min');
  // Without the rich food 60 of middle and 20 of poor leave (60 x 16 + 20 x 12) / 80 = 15.
  expect(remedies).toContainEqual(expect.objectContaining({ pointer: '/rules/0/min', to: 14.99 }));
});

test('a solver that breaks off is asked again without what led it astray, and no failure of it is the answer', () => {
  const told = collisionOf(RATIO);
  for (const failures of [3, 5]) {
    let left = failures;
    const failing: Highs = {
      ...highs,
      createModel: (...args: Parameters<Highs['createModel']>) => {
        const model = highs.createModel(...args);
        const run = model.run.bind(model);
        vi.spyOn(model, 'run').mockImplementation((...given) => {
          if (left-- > 0) throw new Error('run failed with HiGHS status -1');
          return run(...given);
        });
        return model;
      },
    };
    const first = new Formulation(problemOf(RATIO), { reference, highs: failing });
    left = 0;
    expect(first.feasible()).toBe(false);
    left = failures;
    const result = first.solve();
    expect(result).toMatchObject({ conflict: told.conflict });
  }
});
