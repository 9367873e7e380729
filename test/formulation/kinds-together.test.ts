/** Problems that put the kinds of rule together, every part of the answer held against an oracle of its own. */
import { expect, test } from 'vitest';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { LONG } from '../draws.ts';
import { answering, checkKinds, noneMet } from './kinds-check.ts';
import { drawKinds, type Kinds } from './kinds-generator.ts';

const reference = loadReference();
const highs = await loadHighs();
const answer = answering((problem) => new Formulation(problem, { reference, highs }));

/** What is drawn, and how many in the long run and the short one. */
const MIXTURES: readonly (readonly [string, Kinds, number, number])[] = [
  ['without confidence or counting', { confidence: false, counting: false }, 2000, 60],
  ['with counting', { confidence: false, counting: true }, 800, 12],
  ['with a confidence', { confidence: true, counting: false }, 800, 20],
  ['with a confidence and counting', { confidence: true, counting: true }, 300, 3],
];

for (const [name, kinds, all, least] of MIXTURES) {
  const problems = LONG ? all : least;
  test(`${problems} problems ${name}: status, shares beside, objective, spans, conflict and loosenings are right`, () => {
    const met = noneMet();
    for (let seed = 0; seed < problems; seed++) {
      const { problem } = parseProblem(JSON.parse(JSON.stringify(drawKinds(seed, kinds))), reference);
      checkKinds(problem, answer, met, `seed ${seed}`);
    }
    const { faults, ...counted } = met;
    console.log(name, counted);
    expect(faults).toEqual([]);
    expect(met.optimal).toBeGreaterThan(0);
    expect(met.infeasible).toBeGreaterThan(0);
    expect(met.close).toBeLessThan(0.1 * problems + 1);
  });
}
