/** No unknown is ever read as zero: blank each amount of each demo food in turn, and the doubt must show. */
import { expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { NutrientLine } from '../../src/formulation/problem/result.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { NUTRIENTS, type Tag } from '../../src/nutrition/nutrients.ts';

const reference = loadReference();
const highs = await loadHighs();
const mix = demoHousehold().mixes[0]!;

/** The demo with every amount written out, so that one can be taken away. */
const written: Problem = {
  ...mix.problem,
  foods: mix.problem.foods.map(({ ref, ...food }) => ({
    ...food,
    composition: reference.get(ref!)!.composition,
  })),
};

const whole = new Formulation(parseProblem(written, reference).problem, { reference, highs }).evaluate(
  mix.shares,
).nutrients;

function lineOf(problem: Problem, tag: Tag): NutrientLine | undefined {
  const formulation = new Formulation(parseProblem(problem, reference).problem, { reference, highs });
  const { nutrients } = formulation.evaluate(mix.shares);
  formulation.dispose();
  return nutrients[tag];
}

function without<T extends { id: string; composition?: Partial<Record<Tag, number>> }>(
  foods: readonly T[],
  id: string,
  tag: Tag,
): T[] {
  return foods.map((f) => {
    if (f.id !== id) return f;
    const { [tag]: _gone, ...composition } = f.composition ?? {};
    return { ...f, composition };
  });
}

/** Percent of the ration that is this food. */
function partOf(id: string): number {
  const beside = written.beside.find((b) => b.id === id);
  return beside
    ? beside.share_of_ration
    : (mix.shares[id]! * (100 - written.beside[0]!.share_of_ration)) / 100;
}

const fed = [...written.foods, ...written.beside];

test('the demo has enough amounts to blank', () => {
  expect(fed.reduce((n, f) => n + Object.keys(f.composition!).length, 0)).toBeGreaterThan(600);
});

test.each(fed.map((f) => [f.id, f] as const))(
  'each amount of %s, blanked, widens the interval and uncovers the food',
  (id, food) => {
    for (const { tag } of NUTRIENTS) {
      const amount = food.composition![tag];
      if (amount === undefined) continue;
      const before = whole[tag]!;
      const blanked = {
        ...written,
        foods: without(written.foods, id, tag),
        beside: without(written.beside, id, tag),
      };
      const after = lineOf(blanked, tag);
      const where = `${tag} of ${id}`;
      // Nothing else fed holds a figure of it: the table then says nothing at all, rather than 0.
      if (!after) {
        expect(before.coverage, where).toBeCloseTo(partOf(id), 9);
        continue;
      }
      // Vitamin D stands there in both its units: without one it follows from the other.
      const twin = ({ VITD: 'VITD_IU', VITD_IU: 'VITD' } as Partial<Record<Tag, Tag>>)[tag];
      if (twin && food.composition![twin] !== undefined) {
        expect(after.coverage, where).toBeCloseTo(before.coverage, 9);
        continue;
      }
      const estimated = tag === 'FIBC' && food.composition!.FIBTG !== undefined;
      if (estimated) expect(after.coverage, where).toBeCloseTo(before.coverage, 9);
      else expect(after.coverage, where).toBeLessThan(before.coverage - 1);
      expect(after.low, where).toBeLessThanOrEqual(before.low + 1e-12);
      expect(after.high, where).toBeGreaterThanOrEqual(before.high - 1e-12);
      expect(after.high - after.low, where).toBeGreaterThan(before.high - before.low);
    }
  },
);
