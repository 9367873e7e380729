/** A keeper at the scale who pours wrong, for tests: with the program's corrections, and weighing on without any. */
import type { Problem } from '../../src/formulation/problem/problem.ts';
import type { Batch } from '../../src/kitchen/model.ts';
import { WeighOut, type WeighOutOptions } from '../../src/kitchen/weighing/weigh-out.ts';

/** What goes wrong in one weigh-out: a factor on every pour, and one pour that goes badly wrong. */
export interface Slips {
  /** Factor on the next pour of anything. */
  readonly factor: () => number;
  /** Food of the gross error and its factor; it befalls that food's first pour. */
  readonly gross: { readonly food: string; readonly factor: number };
}

/** Normal errors of a given relative sd, and one gross error: half to once and a half too much, or half to four fifths missing. */
export function drawSlips(random: () => number, sd: number, foods: readonly string[]): Slips {
  const food = foods[Math.floor(random() * foods.length)]!;
  const factor = random() < 0.5 ? 1.5 + random() : 0.2 + 0.3 * random();
  return { factor: () => Math.max(0, 1 + sd * normal(random)), gross: { food, factor } };
}

/** Box and Muller 1958. */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

export function batchOf(
  problem: Problem,
  grams: Readonly<Record<string, number>>,
  order: readonly string[],
): Batch {
  const shares = Object.fromEntries(
    Object.entries(grams).map(([id, g]) => [id, (100 * g) / problem.batch_grams]),
  );
  return {
    id: 'batch',
    name: 'Batch',
    problem,
    shares,
    order,
    grams: problem.batch_grams,
    pours: [],
    animalIds: [],
    startedAt: '2026-03-14T10:00:00.000Z',
  };
}

export interface Outcome {
  readonly corrected: boolean;
  readonly uncorrected: boolean;
  /** g of each food in the end. */
  readonly grams: Readonly<Record<string, number>>;
  readonly total: number;
  readonly pours: number;
  /** Foods the keeper went back to. */
  readonly again: number;
  /** What the first pour of the food with the gross error came to. */
  readonly gross: number;
  readonly saidLost: boolean;
}

/** As many pours as a keeper has patience for. */
const PATIENCE = 3;

export function weighed(
  batch: Batch,
  options: WeighOutOptions,
  slips: Slips,
  judge: (grams: Readonly<Record<string, number>>) => boolean,
): Outcome {
  const step = batch.problem.scale_step_grams;
  const weighOut = new WeighOut(batch, options);
  const planned = weighOut.planned;
  const foods = batch.order.filter((id) => planned[id]! > 0);
  const first = new Map<string, number>();
  let pours = 0;
  let again = 0;
  let saidLost = false;
  try {
    while (pours < PATIENCE * foods.length) {
      const state = weighOut.state();
      saidLost = state.status === 'out';
      const food = weighOut.upcoming();
      if (food === undefined) break;
      const inBowl = weighOut.inBowl(food);
      const target = state.targets[food]! - inBowl;
      let factor = slips.factor();
      if (!first.has(food)) {
        if (food === slips.gross.food) factor = slips.gross.factor;
        first.set(food, factor);
      } else again++;
      const held = (options.stock?.[food] ?? Number.POSITIVE_INFINITY) - inBowl;
      const most = Math.floor(held / step + 1e-9) * step;
      // A pour that does not move the scale is none; and a lot cannot give more than it holds.
      weighOut.pour(food, Math.max(step, Math.min(most, step * Math.round((target * factor) / step))));
      pours++;
    }
    const plain = Object.fromEntries(
      foods.map((id) => {
        const factor = first.get(id) ?? slips.factor();
        const most = options.stock?.[id] ?? Number.POSITIVE_INFINITY;
        return [id, Math.min(most, step * Math.round((planned[id]! * factor) / step))];
      }),
    );
    return {
      corrected: weighOut.inRange,
      uncorrected: judge(plain),
      grams: Object.fromEntries(foods.map((id) => [id, weighOut.inBowl(id)])),
      total: weighOut.inBowl(),
      pours,
      again,
      gross: Math.min(
        options.stock?.[slips.gross.food] ?? Number.POSITIVE_INFINITY,
        step * Math.round((planned[slips.gross.food]! * slips.gross.factor) / step),
      ),
      saidLost,
    };
  } finally {
    weighOut.dispose();
  }
}
