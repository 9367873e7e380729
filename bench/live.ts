/**
 * How fast a moved slider answers: the live formulation beside the naive way, which writes LP text and starts a fresh
 * solver for every question. Both run the same moves on the demo mix, side by side in one process, and give the same
 * mixes. Prints medians and their ratio.
 */
import { Formulation } from '../src/formulation/formulation.ts';
import { loadHighs } from '../src/formulation/solve/highs.ts';
import { demoHousehold } from '../src/household/demo.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { naiveWay } from './lib/naive.ts';
import { median, timed } from './lib/timing.ts';

const MOVES = 60;
const reference = loadReference();
const highs = await loadHighs();
const { problem } = demoHousehold().mixes[0]!;
const live = new Formulation(problem, { reference, highs });
const first = live.solve();
if (first.status !== 'optimal') throw new Error('the demo mix must have a balance');

const naive = naiveWay(highs, reference, problem);
const times = { dragged: [] as number[], fresh: [] as number[], naive: [] as number[] };
let shares = first.shares;
let widest = 0;
for (let k = 0; k < MOVES; k++) {
  const { id } = problem.foods[k % problem.foods.length]!;
  const [low, high] = first.spans[id]!;
  const held = low + (high - low) * ((k * 0.37) % 1);
  const cold = new Formulation(problem, { reference, highs });
  cold.move(shares, {}, undefined);
  const dragged = timed(() => live.move(shares, { [id]: held }, id), times.dragged);
  // A hold on another food changes every span: the case in which all of them are worked out anew.
  const other = problem.foods[(k + 7) % problem.foods.length]!.id;
  timed(() => cold.move(shares, { [other]: shares[other]!, [id]: shares[id]! }, id), times.fresh);
  cold.dispose();
  const plain = timed(() => {
    naive.spans();
    const target = problem.foods.map((f) => (f.id === id ? held : (shares[f.id] ?? 0)));
    return naive.nearest(target, { column: k % problem.foods.length, share: held });
  }, times.naive);
  if (dragged.status !== 'optimal') throw new Error(dragged.verdict);
  problem.foods.forEach((f, i) => {
    widest = Math.max(widest, Math.abs(dragged.shares[f.id]! - plain[i]!));
  });
  shares = dragged.shares;
}
const medians = Object.fromEntries(
  Object.entries(times).map(([name, list]) => [name, median(list)]),
) as Record<keyof typeof times, number>;
console.log(`demo mix, ${problem.foods.length} foods, ${MOVES} moves, medians in this process`);
console.log(`a slider dragged on            ${medians.dragged.toFixed(1)} ms`);
console.log(`a move that changes every span ${medians.fresh.toFixed(1)} ms`);
console.log(`naive: fresh solver, LP text   ${medians.naive.toFixed(1)} ms`);
console.log(`naive / dragged                ${(medians.naive / medians.dragged).toFixed(0)}`);
console.log(`naive / all spans anew         ${(medians.naive / medians.fresh).toFixed(1)}`);
console.log(`largest difference in a share  ${widest.toExponential(1)} %`);
