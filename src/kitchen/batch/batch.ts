/** The record of a batch, running or finished: what is really in it, what that holds, what it cost, who made it when. */
import { foodName } from '../../foods/food-name.ts';
import type { Reference } from '../../foods/reference.ts';
import { type Verdict, verdictOf } from '../../formulation/explain/verdict.ts';
import { Formulation } from '../../formulation/formulation.ts';
import type { Ingredient, Problem } from '../../formulation/problem/problem.ts';
import type { Evaluation } from '../../formulation/problem/result.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { countedName, NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { CupboardContents } from '../cupboard/cupboard.ts';
import type { DayAt } from '../days.ts';
import type { Batch, Day, Lot, Moment, Overruled } from '../model.ts';
import { tenths } from '../rounding.ts';
import { COMPLETE } from '../tolerances.ts';
import type { ContentLine } from './content-line.ts';
import { pricePerGram } from './trace.ts';
import { pouredFoods, weighedProblem } from './weighed-problem.ts';

/** One food of a batch. */
interface BatchFood {
  readonly food: string;
  readonly name: string;
  /** Percent of the mix: as planned, and as weighed. */
  readonly planned: number;
  readonly share: number;
  /** g on the scale. */
  readonly grams: number;
  readonly lots: readonly { readonly lot: Lot; readonly grams: number }[];
  /** g for which no lot is named. */
  readonly unnamed: number;
}

/** What a batch cost, in the keeper's money. */
interface BatchCost {
  /** Of all whose price is known. */
  readonly known: number;
  /** Foods of which some has no price: the batch cost at least `known`. */
  readonly missing: readonly string[];
  readonly atLeast: boolean;
}

export interface BatchRecord {
  readonly id: string;
  readonly name: string;
  readonly state: 'weighing' | 'finished' | 'given up';
  /** Why and when it was given up: it is not fed. */
  readonly givenUp?: Overruled;
  readonly madeBy?: string;
  readonly startedAt: Moment;
  readonly finishedAt?: Moment;
  /** The day it was finished, or begun while it is weighed. */
  readonly madeOn: Day;
  /** g in all on the scale. */
  readonly grams: number;
  /** Foods poured, the largest share first. */
  readonly foods: readonly BatchFood[];
  /** Its problem, with foods at the moisture that their lots were measured to have. */
  readonly problem: Problem;
  readonly evaluation: Evaluation;
  readonly inRange: boolean;
  /** How it stands, in three states; out of range too where it holds what must not be fed. */
  readonly verdict: Verdict;
  /** The verdict, every broken rule, and every rule that rests on what nobody knows. */
  readonly sentences: readonly string[];
  readonly contents: readonly ContentLine[];
  readonly cost: BatchCost;
  readonly animalIds: readonly string[];
}

/** How given shares of a problem stand; {@link evaluateWith} makes one. */
export type Evaluate = (problem: Problem, shares: Readonly<Record<string, number>>) => Evaluation;

/** Evaluates with a formulation made for the purpose and let go again. */
export function evaluateWith(options: FormulationOptions): Evaluate {
  return (problem, shares) => {
    const formulation = new Formulation(problem, options);
    try {
      return formulation.evaluate(shares);
    } finally {
      formulation.dispose();
    }
  };
}

/**
 * The record of a batch as it stands on the scale.
 * @param p.dayAt the keeper's calendar: it says on which day the batch was made
 * @throws RangeError where nothing was poured, or a pour names a food or a lot that is not there
 */
export function batchRecord(
  batch: Batch,
  p: {
    readonly kept: CupboardContents;
    readonly reference: Reference;
    readonly evaluate: Evaluate;
    readonly dayAt: DayAt;
  },
): BatchRecord {
  const foods = batchFoods(batch, p.kept, p.reference);
  const grams = foods.reduce((sum, f) => sum + f.grams, 0);
  // What the scale can weigh is asked of this batch, as large as it is.
  const problem = { ...weighedProblem(batch.problem, foods, p.reference), batch_grams: grams };
  const evaluation = p.evaluate(problem, Object.fromEntries(foods.map((f) => [f.food, f.share])));
  const verdict = verdictOf(evaluation);
  const uncounted = 100 - evaluation.total;
  return {
    id: batch.id,
    name: batch.name,
    state: batch.givenUp ? 'given up' : batch.finishedAt === undefined ? 'weighing' : 'finished',
    ...(batch.givenUp && { givenUp: batch.givenUp }),
    ...(batch.madeBy !== undefined && { madeBy: batch.madeBy }),
    startedAt: batch.startedAt,
    ...(batch.finishedAt !== undefined && { finishedAt: batch.finishedAt }),
    madeOn: p.dayAt(batch.finishedAt ?? batch.startedAt),
    grams,
    foods,
    problem,
    evaluation,
    inRange: verdict.state !== 'out',
    verdict,
    sentences: [
      ...(uncounted > COMPLETE ? [words().batch.record.forbidden(tenths(uncounted))] : []),
      evaluation.verdict,
      // The verdict itself says the first of them.
      ...[...evaluation.breaches, ...evaluation.unsure]
        .map(({ sentence }) => sentence)
        .filter((sentence) => !evaluation.verdict.includes(sentence)),
    ],
    contents: contentLines(evaluation),
    cost: costOf(foods, batch.problem, p.kept),
    animalIds: batch.animalIds,
  };
}

function batchFoods(batch: Batch, kept: CupboardContents, reference: Reference): BatchFood[] {
  const total = batch.pours.reduce((sum, pour) => sum + pour.grams, 0);
  if (!(total > 0)) throw new RangeError(`nothing is poured into batch ${batch.id} yet; weigh a first food`);
  const ingredients = new Map(batch.problem.foods.map((f) => [f.id, f]));
  return pouredFoods(batch, kept)
    .map(({ food, grams, lots }): BatchFood => {
      const ingredient = ingredients.get(food);
      if (!ingredient)
        throw new RangeError(
          `batch ${batch.id}: "${food}" was poured and is not among the foods of its mix; add it to the mix or take it out again`,
        );
      return {
        food,
        name: nameOf(ingredient, reference),
        planned: batch.shares[food] ?? 0,
        share: (100 * grams) / total,
        grams,
        lots,
        unnamed: Math.max(0, grams - lots.reduce((sum, l) => sum + l.grams, 0)),
      };
    })
    .sort((a, b) => b.grams - a.grams);
}

/** What a food of a problem is called. */
export function nameOf(food: Ingredient, reference: Reference): string {
  const known = food.ref === undefined ? undefined : reference.get(food.ref);
  return food.name ?? (known ? foodName(known) : food.id);
}

/** An amount of a food of a problem, g or its unit per 100 g; its own, else that of its row; undefined where unknown. */
export function amountOf(food: Ingredient, tag: Tag, reference: Reference): number | undefined {
  return (
    food.composition?.[tag] ??
    (food.ref === undefined ? undefined : reference.get(food.ref)?.composition[tag])
  );
}

function contentLines(evaluation: Evaluation): ContentLine[] {
  return NUTRIENTS.flatMap(({ tag, unit }) => {
    const line = evaluation.nutrients[tag];
    if (!line) return [];
    const { mix: value, sd_mix: sd, low_mix: low, high_mix: high, coverage_mix: coverage } = line;
    return [
      {
        tag,
        name: countedName(tag),
        unit,
        value,
        sd,
        low,
        high,
        coverage,
        atLeast: coverage < 100 - COMPLETE,
      },
    ];
  });
}

function costOf(foods: readonly BatchFood[], problem: Problem, kept: CupboardContents): BatchCost {
  const perKg = new Map(problem.foods.map((f) => [f.id, f.price_per_kg]));
  const missing: string[] = [];
  let known = 0;
  for (const { food, name, lots, unnamed } of foods) {
    const usual = perKg.get(food);
    const perGram = usual === undefined ? undefined : usual / 1000;
    const parts = [
      ...lots.map(({ lot, grams }) => ({ grams, price: pricePerGram(lot, kept) ?? perGram })),
      ...(unnamed > 0 ? [{ grams: unnamed, price: perGram }] : []),
    ];
    for (const { grams, price } of parts) known += grams * (price ?? 0);
    if (parts.some((part) => part.price === undefined && part.grams > 0)) missing.push(name);
  }
  return { known, missing, atLeast: missing.length > 0 };
}
