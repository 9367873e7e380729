/** What is really fed beside the mix, where the keeper lets the share of it be chosen. */
import type { Problem } from '../../formulation/problem/problem.ts';
import { buildRation, type FormulationOptions } from '../../formulation/solve/build-ration.ts';

/** Percent of the ration by id of what is fed beside the mix. */
export type ChosenShares = Readonly<Record<string, number>>;

/**
 * The share of each food beside the mix: as written, or within its bounds the nearest to that for which some mix keeps
 * every rule. Needs the solver where a share is open.
 */
export function chosenShares(problem: Problem, options: FormulationOptions): ChosenShares {
  const { besideShares } = buildRation(problem, options);
  return Object.fromEntries(
    problem.beside.map((b, i) => [b.id, besideShares[i]?.share ?? b.share_of_ration]),
  );
}
