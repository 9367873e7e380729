/** What comes with a balanced or moved mix is what an evaluation of its shares says. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoHousehold } from '../../household/demo.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import type { Problem } from '../problem/problem.ts';
import type { Following } from '../problem/result.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';
import { evaluationOf } from './evaluation-of.ts';

const reference = loadReference();
const { problem } = demoHousehold().mixes[0]!;
let highs: Highs;
let live: Formulation | undefined;

beforeAll(async () => {
  highs = await loadHighs();
});
afterAll(() => live?.dispose());

/** A pellet whose part of the ration is left open, which an evaluation tells too. */
const OPEN: Problem = {
  ...problem,
  beside: problem.beside.map((b) => ({ ...b, share_min: 30, share_max: 60 })),
};
const WISHES: Problem = { ...problem, aims: [{ aim: 'few', give: 2 }] };

test.each([
  ['as it is', problem],
  ['with the share of the pellet left open', OPEN],
  ['with wishes', WISHES],
])('the demo mix %s', (_, asked) => {
  live?.dispose();
  live = new Formulation(asked, { reference, highs });
  const solved = optimal(live.solve());
  expect(solved.beside === undefined).toBe(asked !== OPEN);
  same(live, solved);
  const moving = asked.foods.find((f) => !f.refused && solved.spans[f.id]![1] > solved.spans[f.id]![0])!.id;
  same(live, optimal(live.move(solved.shares, { [moving]: solved.spans[moving]![1] }, moving)));
});

/** `total` is 100 but for the arithmetic; all else is the very same. */
function same(of: Formulation, answer: Following) {
  const { total, ...rest } = of.evaluate(answer.shares);
  const { total: hundred, ...came } = evaluationOf(answer);
  expect(came).toEqual(rest);
  expect(hundred).toBe(100);
  expect(total).toBeCloseTo(100, 7);
}

function optimal(result: ReturnType<Formulation['move']>): Following {
  if (result.status !== 'optimal') throw new Error(result.verdict);
  return result;
}
