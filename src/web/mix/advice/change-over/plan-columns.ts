/** The plan of a change-over as columns to weigh, and how each of its days stands. */

import type { Beside, Ingredient } from '../../../../formulation/problem/problem.ts';
import { isSameFood } from '../../../../household/reckon/mix/change-over.ts';
import type { ChangeDay } from '../../../../kitchen/feeding/change-words.ts';
import { withoutFloatNoise } from '../../../../kitchen/rounding.ts';
import { words } from '../../../../words/words.ts';

/** What is wrong with the grams a day, in a sentence with the way out; undefined where nothing is. */
export function dailyFault(grams: number, step: number): string | undefined {
  const steps = Math.round(grams / step);
  if (steps > 0 && Math.abs(steps * step - grams) <= 1e-9 * grams) return undefined;
  const near = [Math.floor(grams / step), Math.ceil(grams / step)]
    .filter((k) => k > 0)
    .map((k) => withoutFloatNoise(k * step));
  return words().changeOver.daily(grams, step, [...new Set(near)]);
}

/** One thing that is weighed out on each day. */
export interface PlanColumn {
  readonly id: string;
  readonly name: string;
  readonly kind: 'old' | 'mix' | 'beside';
  /** Whether the present food is also fed beside the mix: both are then one weight. */
  readonly both: boolean;
  grams(day: ChangeDay): number;
  /** Part of all that is fed, 0 to 1. */
  part(day: ChangeDay): number;
}

/** The present food, the mix, and what is fed beside it; the present food first. */
export function planColumns(
  old: Ingredient,
  mixName: string,
  beside: readonly Beside[],
  nameOf: (food: Ingredient | Beside) => string,
): PlanColumn[] {
  const same = beside.find((b) => isSameFood(b, old));
  const also = (fed: Readonly<Record<string, number>>) => (same ? (fed[same.id] ?? 0) : 0);
  return [
    {
      id: old.id,
      name: nameOf(old),
      kind: 'old',
      both: same !== undefined,
      grams: (d) => withoutFloatNoise(d.grams.old + also(d.grams.beside)),
      part: (d) => d.parts.old + also(d.parts.beside),
    },
    {
      id: 'mix',
      name: mixName,
      kind: 'mix',
      both: false,
      grams: (d) => d.grams.mix,
      part: (d) => d.parts.mix,
    },
    ...beside
      .filter((b) => b !== same)
      .map(
        (b): PlanColumn => ({
          id: b.id,
          name: nameOf(b),
          kind: 'beside',
          both: false,
          grams: (d) => d.grams.beside[b.id] ?? 0,
          part: (d) => d.parts.beside[b.id] ?? 0,
        }),
      ),
  ];
}

/** How a day stands as it is weighed: in range, out of it by the rounding to the scale alone, or out. */
export type DayStanding = 'fine' | 'near' | 'breaks';

/** A mark for each, so that nothing is told by colour alone. */
export const STANDINGS: Readonly<Record<DayStanding, string>> = { fine: '✓', near: '~', breaks: '!' };

export function standingOf(day: Pick<ChangeDay, 'in_range' | 'in_range_as_weighed'>): DayStanding {
  if (day.in_range_as_weighed) return 'fine';
  return day.in_range ? 'near' : 'breaks';
}
