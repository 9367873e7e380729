/**
 * What an answer costs beside the bare solver, and how that grows: ratios of two things done in turn in one process, the
 * quickest of several rounds each, so that a busy machine does not matter. The margins are wide: they catch what has
 * become several times slower, not what has become a little slower. Times are measured by `npm run bench`.
 */
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem, Rule } from '../../src/formulation/problem/problem.ts';
import { parseJson } from '../../src/formulation/problem/read-json.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { mixModelOf } from '../../src/formulation/solve/mix-model.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { crudeAmount } from '../formulation/crude-amount.ts';
import { problemOf } from '../formulation/problem-of.ts';
import { fullyKnown, randomFrom } from '../formulation/problems.ts';
import { nearestText, spanTexts } from './bare-text.ts';

const LEAST_ROUNDS = 5;
const MOST_ROUNDS = 60;
const reference = loadReference();
const highs = await loadHighs();
const parts = { reference, highs };
const pool = fullyKnown(reference);
const TAGS = ['PROCNT', 'FAT', 'FIBTG', 'CA', 'P', 'MG', 'K', 'FE', 'ZN', 'ASH', 'CHOCDF', 'NA'] as const;

/** So many foods of the tables with wants, and windows about what even shares hold: they can be kept. */
function drawn(seed: number, count: number): Problem {
  const random = randomFrom(seed);
  const chosen = new Set<(typeof pool)[number]>();
  while (chosen.size < count) chosen.add(pool[Math.floor(random() * pool.length)]!);
  const foods = [...chosen];
  const rules = TAGS.map((nutrient): Rule => {
    const even = foods.reduce((sum, f) => sum + crudeAmount(f, nutrient)!, 0) / count;
    return { nutrient, min: 0.9 * even, max: 1.1 * even };
  });
  return problemOf({
    foods: foods.map((f, i) => ({ id: `f${i}`, ref: f.ref, want: (200 / count) * random() })),
    rules,
    batch_grams: 1000,
    variation: 'published',
  });
}

function formulated<T>(text: string, ask: (formulation: Formulation) => T): T {
  const { problem, ignored } = parseProblem(parseJson(text), reference);
  const formulation = new Formulation(problem, parts, ignored);
  try {
    return ask(formulation);
  } finally {
    formulation.dispose();
  }
}

/**
 * A ratio of the quickest rounds of each, all done in turn: a busy machine disturbs many rounds, hardly all. So it goes on
 * until the ratio is as it should be, at most so many rounds.
 */
function ratioOf<Name extends string>(
  works: Readonly<Record<Name, () => unknown>>,
  ratio: (least: Record<Name, number>) => number,
  isGood: (ratio: number) => boolean,
): number {
  const names = Object.keys(works) as Name[];
  const least = Object.fromEntries(names.map((name) => [name, Number.POSITIVE_INFINITY])) as Record<
    Name,
    number
  >;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    for (const name of names) {
      const begun = performance.now();
      works[name]();
      least[name] = Math.min(least[name], performance.now() - begun);
    }
    if (round + 1 >= LEAST_ROUNDS && isGood(ratio(least))) break;
  }
  return ratio(least);
}

const bare = (text: string) => highs.solve(text, { output_flag: false });

describe('a nearest mix, from the problem as text to how it stands, beside the bare solver', () => {
  // Measured: about 1 for both.
  test.each([40, 200])('of %i foods', (count) => {
    const problem = drawn(count, count);
    const given = JSON.stringify(problem);
    const model = nearestText(mixModelOf(parseProblem(problem, reference).problem, parts).question);
    const constant = problem.foods.reduce((sum, f) => sum + f.want! ** 2, 0);
    const mix = formulated(given, (f) => f.mix());
    // The same question was put to both.
    expect(mix).toMatchObject({ objective: expect.closeTo(bare(model).ObjectiveValue + constant, 2) });
    const most = 3;
    const ratio = ratioOf(
      { ours: () => formulated(given, (f) => f.mix()), solver: () => bare(model) },
      ({ ours, solver }) => ours / solver,
      (r) => r < most,
    );
    expect(ratio).toBeLessThan(most);
  });
});

test('spans of 40 foods with a mix, beside a question each', () => {
  const problem = drawn(1, 40);
  const given = JSON.stringify(problem);
  const texts = spanTexts(mixModelOf(parseProblem(problem, reference).problem, parts).question);
  expect(texts).toHaveLength(80);
  // One question in five stands for all.
  const least = 6;
  const times = ratioOf(
    {
      ours: () => formulated(given, (f) => f.move({}, {})),
      some: () => texts.filter((_, k) => k % 5 === 0).map(bare),
    },
    ({ ours, some }) => (5 * some) / ours,
    (r) => r > least,
  );
  // Measured: 10 to 14 times.
  expect(times).toBeGreaterThan(least);
});

const MOST_GRAMS = 2;

test('whole grams of 40 foods beside the bare solver, the middle one of several mixes', () => {
  const ratios = Array.from({ length: 7 }, (_, seed) => {
    const problem = drawn(100 + seed, 40);
    const model = nearestText(mixModelOf(parseProblem(problem, reference).problem, parts).question);
    return formulated(JSON.stringify(problem), (f) => {
      const { shares } = f.best()!;
      const works = { grams: () => f.grams(shares), solver: () => bare(model) };
      return ratioOf(
        works,
        ({ grams, solver }) => grams / solver,
        (r) => r < MOST_GRAMS,
      );
    });
  });
  // Measured: about a tenth.
  expect(ratios.sort((a, b) => a - b)[3]).toBeLessThan(MOST_GRAMS);
});

test('what is done around the solver grows hardly faster than the foods', () => {
  const works = (count: number) => {
    const given = JSON.stringify(drawn(count, count));
    const shares = formulated(given, (f) => f.best()!.shares);
    return () => formulated(given, (f) => f.evaluate(shares));
  };
  const most = 1.6;
  const power = ratioOf(
    { few: works(40), many: works(200) },
    ({ few, many }) => Math.log(many / few) / Math.log(200 / 40),
    (p) => p < most,
  );
  // Measured: about the power 0.9; a cost that grows with the square would be 2.
  expect(power).toBeLessThan(most);
});
