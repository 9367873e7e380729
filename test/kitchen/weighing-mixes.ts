/** The mixes that are weighed out in tests and in the bench: the invented one, and some drawn from the real tables. */
import type { Reference } from '../../src/foods/reference.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { Highs } from '../../src/formulation/solve/highs.ts';
import { demoProblem } from '../../src/household/demo.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { pourOrder } from '../../src/kitchen/weighing/pour-order.ts';
import { drawProblem, fullyKnown } from '../formulation/problems.ts';
import { contentOracle, type Oracle, plainOracle } from './grams-oracle.ts';
import { batchOf } from './simulated-weighing.ts';

export interface WeighedMix {
  readonly name: string;
  readonly batch: Batch;
  readonly oracle: Oracle;
  /** Planned grams of the foods that are in. */
  readonly planned: Readonly<Record<string, number>>;
}

/** The invented mix and `drawn` others that can be weighed in whole grams, each in the order that is advised. */
export function weighedMixes(reference: Reference, highs: Highs, drawn: number): WeighedMix[] {
  const demo = demoProblem();
  const mixes = [ready('demo', demo, contentOracle(demo, reference, highs), reference, highs)!];
  const pool = fullyKnown(reference);
  for (let seed = 501; mixes.length <= drawn; seed++) {
    const { problem } = parseProblem(drawProblem(pool, seed, 'nearest'), reference);
    const mix = ready(`drawn ${seed}`, problem, plainOracle(problem, reference), reference, highs);
    if (mix) mixes.push(mix);
  }
  return mixes;
}

function ready(
  name: string,
  problem: Problem,
  oracle: Oracle,
  reference: Reference,
  highs: Highs,
): WeighedMix | undefined {
  const formulation = new Formulation(problem, { reference, highs });
  try {
    const best = formulation.best();
    const grams = best && formulation.grams(best.shares).grams;
    if (!best || !grams) return undefined;
    const planned = Object.fromEntries(Object.entries(grams).filter(([, g]) => g > 0));
    const order = pourOrder(problem, best.shares, { reference, highs })
      .map((p) => p.food)
      .filter((id) => planned[id] !== undefined);
    return { name, batch: batchOf(problem, planned, order), oracle, planned };
  } finally {
    formulation.dispose();
  }
}
