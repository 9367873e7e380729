/** How often weigh-outs end in range: with corrections, without any, and where an all-knowing solver could. */

import type { WeighOutOptions } from '../../src/kitchen/weighing/weigh-out.ts';
import { randomFrom } from '../formulation/problems.ts';
import { inRange, leastOf } from './grams-oracle.ts';
import { drawSlips, type Outcome, weighed } from './simulated-weighing.ts';
import type { WeighedMix } from './weighing-mixes.ts';

export interface Trial extends Outcome {
  readonly mix: string;
  /**
   * Whether some batch in range was within reach of one who knows every error beforehand and so undoes each of them
   * by its target, but for the gross one: what fell in by it, or more, lies in the bowl; any amount, in any fineness,
   * of every other food that its lot holds; a batch of any weight up to the most. More than the program may do.
   */
  readonly couldBe: boolean;
}

/** Most a batch may come to, in parts of the planned. */
const MOST = 2;

/** So many weigh-outs of each mix at one level of error, repeatable from the seed. Lots hold 1.2 to 3 times the plan. */
export async function simulate(
  mix: WeighedMix,
  options: WeighOutOptions,
  sd: number,
  count: number,
  seed: number,
): Promise<Trial[]> {
  const random = randomFrom(seed);
  const { batch, oracle, planned } = mix;
  const trials: Trial[] = [];
  for (let k = 0; k < count; k++) {
    const stock = Object.fromEntries(
      Object.entries(planned).map(([id, g]) => [id, Math.ceil(g * (1.2 + 1.8 * random()))]),
    );
    const slips = drawSlips(random, sd, batch.order);
    const mostGrams = MOST * batch.grams;
    const outcome = weighed(batch, { ...options, stock, mostGrams }, slips, (grams) =>
      inRange(oracle, grams),
    );
    // What is said to be in range is judged by the other's rows.
    const corrected = outcome.corrected && inRange(oracle, outcome.grams);
    const high = Object.fromEntries(oracle.ids.map((id) => [id, stock[id] ?? 0]));
    const couldBe =
      corrected ||
      (await leastOf(oracle, {
        low: { [slips.gross.food]: outcome.gross },
        high,
        total: [1, mostGrams],
      })) !== undefined;
    trials.push({ ...outcome, corrected, mix: mix.name, couldBe });
  }
  return trials;
}

export interface Rates {
  readonly trials: number;
  readonly couldBe: number;
  /** Percent of those that could be. */
  readonly corrected: number;
  readonly uncorrected: number;
  /** Percent of all. */
  readonly correctedOfAll: number;
  /** Means. */
  readonly pours: number;
  readonly again: number;
  readonly total: number;
}

export function rates(trials: readonly Trial[]): Rates {
  const could = trials.filter((t) => t.couldBe);
  const percent = (part: number, of: number) => Number(((100 * part) / of).toFixed(2));
  const mean = (of: (t: Trial) => number) =>
    Number((trials.reduce((s, t) => s + of(t), 0) / trials.length).toFixed(2));
  return {
    trials: trials.length,
    couldBe: could.length,
    corrected: percent(could.filter((t) => t.corrected).length, could.length),
    uncorrected: percent(could.filter((t) => t.uncorrected).length, could.length),
    correctedOfAll: percent(trials.filter((t) => t.corrected).length, trials.length),
    pours: mean((t) => t.pours),
    again: mean((t) => t.again),
    total: mean((t) => t.total),
  };
}
