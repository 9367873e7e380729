/** The sheet that a batch is weighed out by. Plain data: whoever prints it chooses the layout. */
import type { Reference } from '../../foods/reference.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { words } from '../../words/words.ts';
import { nameOf } from '../batch/batch.ts';
import type { Allocation } from '../cupboard/cupboard.ts';
import type { DayAt } from '../days.ts';
import type { Batch, Day } from '../model.ts';
import { tenths, withoutFloatNoise } from '../rounding.ts';
import { CRUMB, NEAR_STEP } from '../tolerances.ts';
import { BatchRules } from './batch-rules.ts';

/** One line of the sheet to weigh by. */
export interface WeighLine {
  readonly food: string;
  readonly name: string;
  /** g wanted in all. */
  readonly target: number;
  /** What a scale that is not set to zero shows when the target is in, g. */
  readonly reading: number;
  /** g from which to which the batch stays in range with all else as printed; absent where nobody worked it out. */
  readonly tolerance?: readonly [low: number, high: number];
  /** Lots to take it from, and what they cannot give. */
  readonly lots?: Allocation;
  /** g in the bowl already. */
  readonly poured?: number;
}

/** The data of the sheet to weigh by. */
export interface WeighSheet {
  readonly batch: string;
  readonly name: string;
  readonly begunOn: Day;
  readonly madeBy?: string;
  /** g in all, as the lines add up. */
  readonly grams: number;
  /** What is in the bowl first, as it was poured, then the rest in the order of pouring; foods without a share are left out. */
  readonly lines: readonly WeighLine[];
  /** What to mend before weighing begins, one sentence each. */
  readonly notes: readonly string[];
}

/**
 * The sheet to weigh a batch by.
 * @param p.dayAt the keeper's calendar: it says on which day weighing began
 * @param p.targets g by food, whole steps of the scale; share x batch weight where not given
 * @param p.tolerance g from which to which a food may lie @param p.lots which lots a weight comes from
 */
export function weighSheet(
  batch: Batch,
  p: {
    readonly reference: Reference;
    readonly dayAt: DayAt;
    readonly targets?: Readonly<Record<string, number>>;
    readonly tolerance?: (food: string) => readonly [low: number, high: number] | undefined;
    readonly lots?: (food: string, grams: number) => Allocation | undefined;
  },
): WeighSheet {
  const ingredients = new Map(batch.problem.foods.map((f) => [f.id, f]));
  const targetOf = (food: string) => p.targets?.[food] ?? ((batch.shares[food] ?? 0) * batch.grams) / 100;
  const pouredOf = (food: string) =>
    batch.pours.filter((pour) => pour.food === food).reduce((sum, pour) => sum + pour.grams, 0);
  // More of what was poured comes last, as it does beside the scale.
  const touched = [...new Set(batch.pours.map((pour) => pour.food))];
  const more = touched.filter((food) => targetOf(food) > pouredOf(food) + CRUMB);
  const foods = new Set([
    ...touched.filter((food) => !more.includes(food)),
    ...batch.order.filter((food) => !more.includes(food)),
    ...Object.keys(batch.shares).filter((food) => !more.includes(food)),
    ...Object.keys(p.targets ?? {}).filter((food) => !more.includes(food)),
    ...more,
  ]);
  let reading = more.reduce((sum, food) => sum + pouredOf(food), 0);
  const lines = [...foods].flatMap((food): WeighLine[] => {
    const poured = pouredOf(food);
    const wanted = touched.includes(food) ? Math.max(poured, targetOf(food)) : targetOf(food);
    if (!(wanted > 0)) return [];
    const ingredient = ingredients.get(food);
    if (!ingredient)
      throw new RangeError(`batch ${batch.id}: "${food}" has a share and is not among the foods of its mix`);
    const target = touched.includes(food) && !more.includes(food) ? poured : wanted;
    reading = withoutFloatNoise(reading + target - (more.includes(food) ? poured : 0));
    const tolerance = p.tolerance?.(food);
    const lots = p.lots?.(food, Math.max(0, target - poured));
    return [
      {
        food,
        name: nameOf(ingredient, p.reference),
        target,
        reading,
        ...(tolerance && { tolerance }),
        ...(lots && { lots }),
        ...(poured > 0 && { poured }),
      },
    ];
  });
  const notes = lines.flatMap(({ name, lots }) => [
    ...(lots && lots.short > 0 ? [words().weighing.sheet.short(name, tenths(lots.short))] : []),
    ...(lots?.notes ?? []),
  ]);
  return {
    batch: batch.id,
    name: batch.name,
    begunOn: p.dayAt(batch.startedAt),
    ...(batch.madeBy !== undefined && { madeBy: batch.madeBy }),
    grams: lines.at(-1)?.reading ?? 0,
    lines,
    notes,
  };
}

/**
 * For each food of a planned bowl, the grams between which the batch stays in range while every other food is weighed
 * as planned, in whole steps of the scale: on paper nothing is put right afterwards. A food goes up to the planned
 * weight of the whole batch at most. Empty where the bowl is out of range as planned.
 * @param grams by food id
 */
export function paperTolerances(
  batch: Pick<Batch, 'problem'>,
  grams: Readonly<Record<string, number>>,
  options: FormulationOptions,
): ReadonlyMap<string, readonly [low: number, high: number]> {
  const { problem } = batch;
  const step = problem.scale_step_grams;
  const rules = new BatchRules(problem, options);
  const bowl = rules.vector(grams, '/grams');
  const most = bowl.reduce((sum, g) => sum + g, 0);
  if (!rules.hold(bowl)) return new Map();
  /** As far as the rules hold, in whole steps; what they allow of a food that is in is one stretch. */
  const furthest = (i: number, from: number, by: number, steps: number) => {
    const tried = bowl.slice();
    let [good, bad] = [0, steps + 1];
    while (bad - good > 1) {
      const middle = Math.floor((good + bad) / 2);
      tried[i] = from + middle * by;
      if (rules.hold(tried)) good = middle;
      else bad = middle;
    }
    return withoutFloatNoise(from + good * by);
  };
  return new Map(
    rules.ids.flatMap((food, i) => {
      const g = elementAt(bowl, i);
      if (!(g > 0)) return [];
      // Down to one step of it: none at all would be another mix.
      const down = Math.max(0, Math.round(g / step) - 1);
      const up = Math.max(0, Math.floor((most - g) / step + NEAR_STEP));
      return [[food, [furthest(i, g, -step, down), furthest(i, g, step, up)] as const] as const];
    }),
  );
}
