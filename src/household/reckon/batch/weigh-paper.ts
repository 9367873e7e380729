/** The sheet to weigh a batch by on paper. */
import { type Verdict, verdictOf } from '../../../formulation/explain/verdict.ts';
import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import { evaluateWith } from '../../../kitchen/batch/batch.ts';
import { cautionsOf, type FoodsCaution } from '../../../kitchen/batch/foods-cautions.ts';
import type { CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import type { DayAt } from '../../../kitchen/days.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import { paperTolerances, type WeighSheet, weighSheet } from '../../../kitchen/weighing/weigh-sheet.ts';
import { lotsFor } from '../cupboard/take-from-lots.ts';
import type { Standing } from './batch-standing.ts';
import { judgedProblem } from './judged-problem.ts';
import { groupsOfFoods } from './problem-groups.ts';

/** What a printed sheet says beside its lines. */
export interface SheetPaper extends WeighSheet {
  /** Whether the weights as printed keep the rules, and how sure that is. */
  readonly verdict: Verdict;
  readonly cautions: readonly FoodsCaution[];
}

/** The sheet to weigh by on paper: what is poured, and the targets as they stand now. @param p.day of the weighing @param p.standing of the batch */
export function sheetOf(
  batch: Batch,
  p: {
    readonly kept: CupboardContents;
    readonly day: Day;
    readonly parts: FormulationOptions;
    readonly standing: Standing;
    readonly dayAt: DayAt;
  },
): SheetPaper {
  const { reference } = p.parts;
  const { state, names } = p.standing;
  const groupOf = groupsOfFoods(batch.problem, p.parts);
  const problem = judgedProblem(batch, { kept: p.kept, day: p.day, parts: p.parts, ended: false });
  const tolerances = paperTolerances({ problem }, state.targets, p.parts);
  const touched = new Set(batch.pours.map((pour) => pour.food));
  const evaluation = evaluateWith(p.parts)(
    problem,
    Object.fromEntries(Object.entries(state.targets).map(([food, g]) => [food, (100 * g) / state.total])),
  );
  const sheet = weighSheet(batch, {
    reference,
    dayAt: p.dayAt,
    targets: state.targets,
    tolerance: (food) => (touched.has(food) ? undefined : tolerances.get(food)),
    lots: (food, grams) => lotsFor(p.kept, food, grams, { day: p.day, groupOf }),
  });
  const printed = new Set(sheet.lines.map((line) => line.food));
  return {
    ...sheet,
    verdict: verdictOf(evaluation),
    cautions: cautionsOf(evaluation.cautions, (food) => (printed.has(food) ? names[food] : undefined)),
  };
}
