/**
 * Every food may be left, and a confidence is asked of 24 foods: what collides and what mends it is told, and what the
 * counting of foods leaves open is left open rather than sought for minutes. Before cones were kept inside, the first of
 * these took minutes of planes; the limit of time here only says so.
 */
import { afterEach, describe, expect, test } from 'vitest';
import { applyRemedy } from '../../src/formulation/advice/apply-remedy.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import { loadReference } from '../../src/household/reference-file.ts';

const reference = loadReference();
const highs = await loadHighs();
/** On a machine that does other things too. */
const PATIENCE = 60_000;

const { margin: _, ...demo } = demoHousehold().mixes[0]!.problem;
const further = reference
  .plainFoods()
  .filter((food) => !demo.foods.some((f) => f.ref === food.ref))
  .slice(0, 24 - demo.foods.length)
  .map(({ ref, group }) => ({ id: ref, ref, max: 15, ...(group && { group }) }));
const PROBLEM: Problem = { ...demo, foods: [...demo.foods, ...further], drop_one: true };

/** The ranges of nutrients made so much wider at both ends, as a part of what they are. */
const widened = (problem: Problem, by: number): Problem => ({
  ...problem,
  rules: problem.rules.map((rule) =>
    'nutrient' in rule && rule.min !== undefined && rule.max !== undefined
      ? { ...rule, min: rule.min * (1 - by), max: rule.max * (1 + by) }
      : rule,
  ),
});

let live: Formulation | undefined;
const made = (problem: Problem) => {
  live = new Formulation(problem, { reference, highs });
  return live;
};
afterEach(() => {
  live?.dispose();
  live = undefined;
});

describe.each([0.9, 0.95])('a confidence of %d, every food left in turn', (confidence) => {
  test(
    'where no mix can be, the collision and remedies that mend it are told',
    () => {
      const problem = { ...PROBLEM, foods: demo.foods, confidence };
      const answer = made(problem).solve();
      if (answer.status !== 'infeasible') throw new Error('a mix was found');
      expect(answer.conflict.length).toBeGreaterThan(1);
      for (const remedy of answer.remedies) {
        const mended = new Formulation(applyRemedy(problem, remedy), { reference, highs });
        expect(mended.feasible()).toBe(true);
        mended.dispose();
      }
    },
    PATIENCE,
  );

  test(
    'where a mix can be, it is found, keeps all that is asked, and may be moved',
    () => {
      const formulation = made(widened({ ...PROBLEM, confidence }, 0.15));
      const answer = formulation.solve();
      if (answer.status !== 'optimal') throw new Error(answer.verdict);
      expect(formulation.dropOne(answer.shares).safe).toBe(true);
      expect(formulation.evaluate(answer.shares).breaches).toEqual([]);
      const [id, span] = Object.entries(answer.spans).find(([, [low, high]]) => high - low > 1)!;
      const moved = formulation.move(answer.shares, { [id]: (span[0] + span[1]) / 2 }, id);
      if (moved.status !== 'optimal') throw new Error(moved.verdict);
      expect(moved.shares[id]).toBeCloseTo((span[0] + span[1]) / 2, 6);
    },
    PATIENCE,
  );

  test(
    'with foods counted too, a collision is told',
    () => {
      const counted = { count: { at_least: 2 }, min: 12 };
      const problem = { ...PROBLEM, foods: demo.foods, confidence, rules: [...PROBLEM.rules, counted] };
      const answer = made(problem).solve();
      expect(answer.status).toBe('infeasible');
    },
    PATIENCE,
  );
});
