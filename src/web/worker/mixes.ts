/**
 * What is worked out of mixes: the largest part of the worker, since it judges foods and has the solver's work to do. A live
 * Formulation is kept for each of the last few problems.
 */
import { cautionsFor } from '../../foods/cautions/find.ts';
import { Formulation } from '../../formulation/formulation.ts';
import { parseProblem } from '../../formulation/problem/parse.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';

export { chosenShares } from '../../kitchen/feeding/chosen-shares.ts';

const KEPT = 4;
const live = new Map<string, Formulation>();

// The lists of words are made ready, which every first question about a mix would wait for.
cautionsFor({ name: 'oats' });

/** The live formulation of a problem. @throws ProblemError where it is none */
export function formulationOf(problem: Problem, parts: FormulationOptions): Formulation {
  const key = JSON.stringify(problem);
  const known = live.get(key);
  if (known) {
    live.delete(key);
    live.set(key, known);
    return known;
  }
  const parsed = parseProblem(JSON.parse(key), parts.reference);
  const made = new Formulation(parsed.problem, parts, parsed.ignored);
  live.set(key, made);
  for (const [oldest, old] of live) {
    if (live.size <= KEPT) break;
    old.dispose();
    live.delete(oldest);
  }
  return made;
}
