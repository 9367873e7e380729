/** What an animal refuses is not brought up again: foods under `not_offered` are in no remedy and no swap. */
import { expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { demoProblem } from '../../src/household/demo.ts';
import { loadReference } from '../../src/household/reference-file.ts';

const parts = { reference: loadReference(), highs: await loadHighs() };
const { problem: poor } = parseProblem(
  { foods: [{ id: 'rice', ref: 'sr28:20444' }], rules: [{ nutrient: 'PROCNT', min: 16 }] },
  parts.reference,
);
const { problem: counted } = parseProblem(
  {
    foods: [{ id: 'rice', ref: 'sr28:20444' }],
    rules: [{ count: { group: 'legume', at_least: 5 }, min: 1 }],
  },
  parts.reference,
);

function ask<T>(problem: Problem, question: (f: Formulation) => T): T {
  const formulation = new Formulation(problem, parts);
  try {
    return question(formulation);
  } finally {
    formulation.dispose();
  }
}

/** Foods of the tables that advice brings in, by number and by name. */
function remedies(problem: Problem) {
  const result = ask(problem, (f) => f.solve());
  if (result.status !== 'infeasible') throw new Error('the problem has a mix');
  return result.remedies.flatMap((r) => (r.kind === 'add' ? [{ ref: r.food.ref, name: r.food.name }] : []));
}

function swaps(problem: Problem) {
  const shares = ask(problem, (f) => f.best())?.shares ?? {};
  const all = ask(problem, (f) => f.substitutes(shares, { perFood: 3 }));
  return all.flatMap((s) => s.swaps.flatMap(({ ref, name }) => (ref === undefined ? [] : [{ ref, name }])));
}

test.each([
  ['the remedies of a mix that is out of range', poor, remedies],
  ['the remedies where foods are counted', counted, remedies],
  ['the swaps of a mix', demoProblem(), swaps],
] as const)('%s', (_, problem, brought) => {
  const [first] = brought(problem);
  expect(first).toBeDefined();
  for (const named of [first?.ref, first?.name?.toUpperCase()]) {
    const left = brought({ ...problem, not_offered: [named ?? ''] });
    expect(left.length).toBeGreaterThan(0);
    expect(left.map((f) => f.ref)).not.toContain(first?.ref);
  }
});

test('it is read from a file, and anything else there is refused by field', () => {
  const json = { foods: poor.foods, not_offered: ['sr28:16057'] };
  expect(parseProblem(json, parts.reference).problem.not_offered).toEqual(['sr28:16057']);
  expect(() => parseProblem({ ...json, not_offered: [3] }, parts.reference)).toThrow('/not_offered/0');
  expect(() => parseProblem({ ...json, not_offered: 'millet' }, parts.reference)).toThrow('/not_offered');
});
