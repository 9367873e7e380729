/**
 * The best food to add out of the whole reference table: by pricing, beside trying each food in a solver that stays
 * warm. The same problems in one process; both must name the same least share.
 */

import { leastShares } from '../src/formulation/advice/price-foods.ts';
import { NO_CAPS } from '../src/formulation/amounts/apply-cautions.ts';
import { foodAmounts } from '../src/formulation/amounts/food-amounts.ts';
import { Elastic } from '../src/formulation/explain/elastic.ts';
import { parseProblem } from '../src/formulation/problem/parse.ts';
import { linearBounds, Ration } from '../src/formulation/solve/bounds.ts';
import { loadHighs } from '../src/formulation/solve/highs.ts';
import { demoProblem } from '../src/household/demo.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { median, timed } from './lib/timing.ts';

const PROBLEMS = 7;
const reference = loadReference();
const highs = await loadHighs();
const demo = demoProblem();
const all = Array.from({ length: reference.size }, (_, row) => reference.at(row)).map((f) => ({
  ref: f.ref,
  stocked: foodAmounts({ id: f.ref, ref: f.ref, group: f.group }, reference),
}));
const times = { priced: [] as number[], tried: [] as number[] };
let widest = 0;
let foodsTried = 0;
for (let k = 0; k < PROBLEMS; k++) {
  // A keeper who insists on ever more sunflower seed: fat can no longer be kept.
  const insisting = {
    ...demo,
    foods: demo.foods.map((f) => (f.ref === 'sr28:12036' ? { ...f, min: 22 + 2 * k, max: 60 } : f)),
  };
  const { problem } = parseProblem(insisting, reference);
  const foods = problem.foods.map((f) => foodAmounts(f, reference));
  const beside = problem.beside.map((b) => ({
    food: foodAmounts(b, reference),
    part: b.share_of_ration / 100,
  }));
  const sides = linearBounds(problem, new Ration(foods, beside), [...foods.keys()], 0, NO_CAPS);
  const elastic = new Elastic(highs, {
    lower: new Float64Array(foods.length),
    upper: new Float64Array(foods.length).fill(100),
    bounds: sides,
    given: [],
  });
  const candidates = () => all.map((c) => ({ food: c.ref, content: elastic.contentOf(c.stocked) }));
  candidates();
  const found = timed(() => leastShares(elastic, candidates(), 1), times.priced);
  const tried = timed(() => {
    let least = Number.POSITIVE_INFINITY;
    for (const { content } of candidates())
      least = Math.min(least, elastic.leastShare(content).share ?? least);
    return least;
  }, times.tried);
  foodsTried = all.length;
  if (found.length > 0 || Number.isFinite(tried))
    widest = Math.max(widest, Math.abs(found[0]!.share - tried));
  elastic.dispose();
}
const [priced, tried] = [median(times.priced), median(times.tried)];
console.log(`best food to add, of ${foodsTried} foods, ${PROBLEMS} problems, medians`);
console.log(`by pricing                     ${priced.toFixed(1)} ms`);
console.log(`each food tried, solver warm   ${tried.toFixed(0)} ms`);
console.log(`tried / priced                 ${(tried / priced).toFixed(0)}`);
console.log(`largest difference in a share  ${widest.toExponential(1)} %`);
