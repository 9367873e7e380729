/** The best food to add out of the whole reference table: by pricing, beside trying each food in a solver that stays warm. */
import { leastShares } from '../../src/formulation/advice/price-foods.ts';
import { NO_CAPS } from '../../src/formulation/amounts/apply-cautions.ts';
import { foodAmounts } from '../../src/formulation/amounts/food-amounts.ts';
import { Elastic } from '../../src/formulation/explain/elastic.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { linearBounds, Ration } from '../../src/formulation/solve/bounds.ts';
import { demoProblem } from '../../src/household/demo.ts';
import { figureOf, ratioOf } from '../lib/figures.ts';
import { paired } from '../lib/paired.ts';
import type { Table } from '../lib/report.ts';
import { Agreement, inTurn, type Stage } from '../lib/stage.ts';

const SAME = 1e-6;

export async function addedFood({ reference, highs }: Stage, rounds: number): Promise<Table> {
  const demo = demoProblem();
  const all = Array.from({ length: reference.size }, (_, row) => reference.at(row)).map((f) => ({
    ref: f.ref,
    stocked: foodAmounts({ id: f.ref, ref: f.ref, group: f.group }, reference),
  }));
  const asked = Array.from({ length: rounds }, (_, k) => {
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
    return new Elastic(highs, {
      lower: new Float64Array(foods.length),
      upper: new Float64Array(foods.length).fill(100),
      bounds: sides,
      given: [],
    });
  });
  const candidates = (elastic: Elastic) =>
    all.map((c) => ({ food: c.ref, content: elastic.contentOf(c.stocked) }));
  const agreement = new Agreement();
  const { times } = await paired(
    {
      priced: {
        work: (round) => {
          const elastic = inTurn(asked, round);
          return leastShares(elastic, candidates(elastic), 1)[0]?.share;
        },
      },
      tried: {
        work: (round) => {
          const elastic = inTurn(asked, round);
          let least: number | undefined;
          for (const { content } of candidates(elastic)) {
            const { share } = elastic.leastShare(content);
            if (share !== undefined) least = Math.min(least ?? share, share);
          }
          return least;
        },
      },
    },
    { least: rounds, most: rounds, ms: 0 },
    (side, answer, round) => agreement.meet(side, answer as number | undefined, round),
  );
  for (const elastic of asked) elastic.dispose();
  return {
    title: `The best food to add, of ${all.length} foods of the table`,
    of: 'way',
    columns: ['time', 'rounds'],
    rows: [
      ['by pricing', figureOf(times.priced, 'ms'), rounds],
      ['each food tried, solver warm', figureOf(times.tried, 'ms'), rounds],
      ['tried / priced', ratioOf(times.tried, times.priced), rounds],
    ],
    notes: [`${agreement.settled('best food to add', SAME)}.`],
  };
}
