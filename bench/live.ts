/**
 * How fast a moved slider answers: the live formulation beside the naive way, which writes LP text and starts a fresh
 * solver for every question. Both run the same moves on the demo mix, side by side in one process, and give the same
 * mixes. Prints medians and their ratio.
 */
import { Formulation } from '../src/formulation/formulation.ts';
import { type Highs, loadHighs } from '../src/formulation/highs.ts';
import { stock } from '../src/formulation/larder.ts';
import type { Problem } from '../src/formulation/problem.ts';
import { Ration, type Side, sidesOf } from '../src/formulation/sides.ts';
import { demoHousehold } from '../src/household/demo.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { median, timed } from './lib/timing.ts';

const MOVES = 60;
const reference = loadReference();
const highs = await loadHighs();
const { problem } = demoHousehold().mixes[0]!;
const live = new Formulation(problem, { reference, highs });
const first = live.solve();
if (first.status !== 'optimal') throw new Error('the demo mix must have a balance');

const naive = naiveWay(highs, problem);
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
  const plain = timed(() => naive(shares, id, held), times.naive);
  if (dragged.status !== 'optimal') throw new Error(dragged.verdict);
  for (const f of problem.foods)
    widest = Math.max(widest, Math.abs(dragged.shares[f.id]! - plain.shares[f.id]!));
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

/** Writes each question as LP text (short lines, as its reader wants) and solves it with a solver of its own. */
function naiveWay(solver: Highs, p: Problem) {
  const foods = p.foods.map((f) => stock(f, reference));
  const beside = p.beside.map((b) => ({ stocked: stock(b, reference), part: b.share_of_ration / 100 }));
  const rows = p.foods.map((_, i) => i);
  const sides = sidesOf(p, new Ration(foods, beside), rows, 0, new Map()).filter((s) =>
    s.pointer.startsWith('/rules/'),
  );
  const rules = rowsText(sides);
  const ask = (objective: string, bounds: string) =>
    solver.solve(`${objective}\nSubject To\n${sum(rows)} = 100\n${rules}\nBounds\n${bounds}\nEnd\n`, {
      output_flag: false,
    });
  return (from: Readonly<Record<string, number>>, id: string, held: number) => {
    const box = (fixed: boolean) =>
      p.foods
        .map((f, i) =>
          fixed && f.id === id ? `x${i} = ${held}` : `${f.min ?? 0} <= x${i} <= ${f.max ?? 100}`,
        )
        .join('\n');
    const spans = rows.map((i) => [
      ask(`Minimize\n x${i}`, box(false)).ObjectiveValue,
      ask(`Maximize\n x${i}`, box(false)).ObjectiveValue,
    ]);
    const linear = p.foods.map((f, i) => `${-2 * (f.id === id ? held : (from[f.id] ?? 0))} x${i}`);
    const squares = rows.map((i) => `2 x${i} ^2`).join('\n + ');
    const answer = ask(`Minimize\n ${signed(linear)}\n + [ ${squares} ] / 2`, box(true));
    const columns = answer.Columns as Record<string, { Primal: number }>;
    return { spans, shares: Object.fromEntries(p.foods.map((f, i) => [f.id, columns[`x${i}`]!.Primal])) };
  };
}

function rowsText(sides: readonly Side[]): string {
  return sides
    .map((s) => {
      const { g, h } = s.halfSpace(s.bound);
      return `${signed(Array.from(g, (v, i) => `${v} x${i}`))} >= ${h}`;
    })
    .join('\n');
}

function sum(rows: readonly number[]): string {
  return signed(rows.map((i) => `1 x${i}`));
}

/** Terms joined with their signs, one a line. */
function signed(terms: readonly string[]): string {
  return terms.map((t) => (t.startsWith('-') ? `- ${t.slice(1)}` : `+ ${t}`)).join('\n ');
}
