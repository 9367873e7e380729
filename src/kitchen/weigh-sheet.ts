/** The sheet that a batch is weighed out by. Plain data: whoever prints it chooses the layout. */
import type { Reference } from '../foods/reference.ts';
import { nameOf } from './batch.ts';
import type { Allocation } from './cupboard.ts';
import type { Batch } from './model.ts';

/** One line of the sheet to weigh by. */
export interface WeighLine {
  readonly food: string;
  readonly name: string;
  /** g wanted. */
  readonly target: number;
  /** g from which to which the batch stays in range; absent where nobody worked it out. */
  readonly tolerance?: readonly [low: number, high: number];
  /** Lots to take it from, and what they cannot give. */
  readonly lots?: Allocation;
  /** g on the scale already. */
  readonly poured?: number;
}

/** The data of the sheet to weigh by. */
export interface WeighSheet {
  readonly batch: string;
  readonly name: string;
  readonly grams: number;
  /** In the order of pouring; foods without a share are left out. */
  readonly lines: readonly WeighLine[];
  /** What to mend before weighing begins, one sentence each. */
  readonly notes: readonly string[];
}

/**
 * The sheet to weigh a batch by.
 * @param p.targets g by food, whole steps of the scale; share x batch weight where not given
 * @param p.tolerance g from which to which a food may lie @param p.lots which lots a weight comes from
 */
export function weighSheet(
  batch: Batch,
  p: {
    readonly reference: Reference;
    readonly targets?: Readonly<Record<string, number>>;
    readonly tolerance?: (food: string) => readonly [low: number, high: number] | undefined;
    readonly lots?: (food: string, grams: number) => Allocation | undefined;
  },
): WeighSheet {
  const ingredients = new Map(batch.problem.foods.map((f) => [f.id, f]));
  const planned = Object.keys(batch.shares).filter((food) => batch.shares[food]! > 0);
  const order = [
    ...batch.order.filter((f) => planned.includes(f)),
    ...planned.filter((f) => !batch.order.includes(f)),
  ];
  const lines = order
    .map((food): WeighLine => {
      const ingredient = ingredients.get(food);
      if (!ingredient)
        throw new RangeError(
          `batch ${batch.id}: "${food}" has a share and is not among the foods of its mix`,
        );
      const target = p.targets?.[food] ?? (batch.shares[food]! * batch.grams) / 100;
      const tolerance = p.tolerance?.(food);
      const poured = batch.pours
        .filter((pour) => pour.food === food)
        .reduce((sum, pour) => sum + pour.grams, 0);
      const lots = p.lots?.(food, Math.max(0, target - poured));
      return {
        food,
        name: nameOf(ingredient, p.reference),
        target,
        ...(tolerance && { tolerance }),
        ...(lots && { lots }),
        ...(poured > 0 && { poured }),
      };
    })
    .filter((line) => line.target > 0);
  const notes = lines.flatMap(({ name, lots }) => [
    ...(lots && lots.short > 0 ? [`${name}: ${tenths(lots.short)} g short.`] : []),
    ...(lots?.notes ?? []),
  ]);
  return { batch: batch.id, name: batch.name, grams: batch.grams, lines, notes };
}

const tenths = (value: number) => Number(value.toFixed(1));
