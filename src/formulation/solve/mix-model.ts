/** A problem as the solvers have it: which foods may be used, within which bounds, and how the best mix is judged. */
import { type Problem, ProblemError, type Shares } from '../problem/problem.ts';
import { aimLines, onHandOf } from './aims.ts';
import { type Bound, type LinearBound, linearBounds, type Ration } from './bounds.ts';
import { type BuiltRation, buildRation, type FormulationOptions, wantedShares } from './build-ration.ts';
import { ContinuousMixSolver } from './continuous-mix-solver.ts';
import { countBoundsOf } from './counting.ts';
import { dropOneBounds } from './drop-one.ts';
import { IntegerMixSolver } from './integer-mix-solver.ts';
import type { RuleSet } from './integer-question.ts';
import type { MixQuestion, MixSolver } from './mix-solver.ts';
import { elementAt } from './vectors.ts';

export interface MixModel {
  readonly problem: Problem;
  /** Rows in `problem.foods` of the foods that may be used: the columns of the model. */
  readonly open: readonly number[];
  /** What is fed: the foods that may be used, and what is fed beside them. */
  readonly ration: Ration;
  /** Share of the ration of each food beside the mix, and where it may be chosen, its span. */
  readonly besideShares: BuiltRation['besideShares'];
  /** Every linear bound, those of foods and of cautions too. */
  readonly linear: readonly LinearBound[];
  /** Whether it is known beforehand that no mix exists: a food must be fed beyond its caution, or no share beside fits. */
  readonly crossed: boolean;
  readonly question: MixQuestion;
  /** Whether a confidence rounds off the mixes that are left. */
  readonly rounded: boolean;
  /** What is asked, to tell why there is no mix; over the whole ration where no shares beside allow one. */
  readonly asked: RuleSet;
}

/** @throws ProblemError where the caution list leaves no food, or too little room, for a mix */
export function mixModelOf(problem: Problem, options: FormulationOptions): MixModel {
  const { open, caps, besideShares, unshared, ration, z } = buildRation(problem, options);
  if (open.length === 0) {
    throw new ProblemError(
      '/foods',
      'every food is refused or may never be fed (see the caution list); add a food that is eaten',
    );
  }
  const linear = [
    ...linearBounds(problem, ration, open, z, caps),
    ...(problem.drop_one ? dropOneBounds(problem, ration) : []),
  ];
  const foods = open.map((row) => ({
    ...elementAt(problem.foods, row),
    cap: caps.each.get(row)?.max ?? 100,
  }));
  const upper = Float64Array.from(foods, ({ max = 100, cap }) => Math.min(max, cap));
  const lower = Float64Array.from(foods, ({ min = 0, max = 100, cap }) => Math.min(min, max, cap));
  const question: MixQuestion = {
    highs: options.highs,
    lower,
    upper,
    bounds: linear.filter((b) => !b.pointer.startsWith('/foods/')),
    counts: countBoundsOf(problem, open, ration.foods),
    aims: aimLines(problem, ration, open),
    onHand: onHandOf(problem, open),
    objective: problem.objective,
    wants: wantedShares(foods.map((f) => f.want)),
    prices: Float64Array.from(foods, (f) => f.price_per_kg ?? 0),
  };
  const asked: RuleSet = unshared ?? {
    lower: new Float64Array(open.length),
    upper: new Float64Array(open.length).fill(100),
    bounds: linear,
    given: [],
    counts: question.counts,
  };
  const crossed = foods.some(({ min = 0, max = 100, cap }) => min > Math.min(max, cap));
  return {
    problem,
    open,
    ration,
    besideShares,
    linear,
    crossed: crossed || unshared !== undefined,
    question,
    rounded: z > 0,
    asked,
  };
}

/** Whether foods are in or out of the mix, so that the best choice of them is sought too. */
export function countsFoods({ counts, aims }: MixQuestion): boolean {
  return counts.length + aims.length > 0;
}

/** The solver for a question; the caller disposes of it. */
export function solverFor(question: MixQuestion): MixSolver {
  return countsFoods(question) ? new IntegerMixSolver(question) : new ContinuousMixSolver(question);
}

/** Everything that can be broken or stand at its limit. */
export function allBounds({ linear, question }: MixModel): readonly Bound[] {
  return [...linear, ...question.counts];
}

/** Shares by column; a food that is not named counts as 0. */
export function byColumn({ ration }: MixModel, shares: Shares): Float64Array {
  return Float64Array.from(ration.foods, (f) => shares[f.id] ?? 0);
}

/** By food id, in the problem's order, from values by column; foods that may not be used get `none`. */
export function byFood<T>({ problem, open }: MixModel, values: ArrayLike<T>, none: T): Record<string, T> {
  const column = new Map(open.map((row, i) => [row, i]));
  return Object.fromEntries(
    problem.foods.map((f, row) => {
      const i = column.get(row);
      return [f.id, i === undefined ? none : elementAt(values, i)];
    }),
  );
}
