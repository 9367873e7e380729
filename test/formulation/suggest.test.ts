/** The best food to add, found by pricing, is the one that trying every food of the tables finds. */

import { expect, test } from 'vitest';
import { leastShares } from '../../src/formulation/advice/price-foods.ts';
import { NO_CAPS } from '../../src/formulation/amounts/apply-cautions.ts';
import { foodAmounts } from '../../src/formulation/amounts/food-amounts.ts';
import { Elastic } from '../../src/formulation/explain/elastic.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { linearBounds, Ration } from '../../src/formulation/solve/bounds.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { draws } from '../draws.ts';
import { drawProblem, fullyKnown } from './problems.ts';

const reference = loadReference();
const pool = fullyKnown(reference);
const stocked = pool.map((f) => ({
  ref: f.ref,
  stocked: foodAmounts({ id: f.ref, ref: f.ref, group: f.group }, reference),
}));

const PROBLEMS = draws(3, 1);

test(`on ${PROBLEMS} drawn problems that no mix can solve, the five best foods are those of 3,000 single trials`, async () => {
  const highs = await loadHighs();
  let met = 0;
  let helped = 0;
  for (let seed = 5; met < PROBLEMS; seed++) {
    const { problem } = parseProblem(drawProblem(pool, seed, 'nearest'), reference);
    const foods = problem.foods.map((f) => foodAmounts(f, reference));
    const beside = problem.beside.map((b) => ({
      food: foodAmounts(b, reference),
      part: b.share_of_ration / 100,
    }));
    const rows = foods.map((_, i) => i);
    const sides = linearBounds(problem, new Ration(foods, beside), rows, 0, NO_CAPS);
    const elastic = new Elastic(highs, {
      lower: new Float64Array(foods.length),
      upper: new Float64Array(foods.length).fill(100),
      bounds: sides,
      given: [],
    });
    if (elastic.possible(new Set(sides.keys()))) {
      elastic.dispose();
      continue;
    }
    met++;
    const taken = new Set(problem.foods.map((f) => f.ref));
    const candidates = stocked
      .filter((c) => !taken.has(c.ref))
      .map((c) => ({ food: c.ref, content: elastic.contentOf(c.stocked) }));
    expect(candidates.length).toBeGreaterThan(3000);
    const found = leastShares(elastic, candidates, 5);
    const tried = candidates
      .flatMap(({ food, content }) => {
        const { share } = elastic.leastShare(content);
        return share === undefined ? [] : [{ food, share }];
      })
      .sort((a, b) => a.share - b.share);
    expect(found.length, `seed ${seed}`).toBe(Math.min(5, tried.length));
    found.forEach(({ share }, i) => {
      expect(share, `seed ${seed}`).toBeCloseTo(tried[i]!.share, 6);
    });
    if (tried.length > 0) helped++;
    elastic.dispose();
  }
  expect(helped).toBeGreaterThan(0);
});
