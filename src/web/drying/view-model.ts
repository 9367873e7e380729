/** What the drying screen says: when to check a run, water in words, and what its food holds. */
import { onCrudeProtein } from '../../foods/crude-protein.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Household } from '../../household/model.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import type { FoodTable } from '../../household/reckon/drying/measured-moisture.ts';
import { compositionOf } from '../../household/reckon/mix/beside-blend.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import { ingredientAt } from '../../kitchen/drying/ingredient-at.ts';
import type { DryingRun, Moment } from '../../kitchen/model.ts';
import { countedName, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { clockOf, sayTime } from '../shared/words/clock.ts';

/** The next check of a run that goes on. */
interface CheckLine {
  readonly at: Moment;
  readonly due: boolean;
  /** "Look and turn at 14:30, in 1 h 12 min". */
  readonly words: string;
}

/** @param now ms since 1970 */
export function checkLine(run: DryingRun, now: number): CheckLine | undefined {
  const at = nextCheck(run);
  if (at === undefined) return undefined;
  const ms = Date.parse(at) - now;
  const due = ms <= 0;
  const t = words().drying.check;
  return {
    at,
    due,
    words: due ? t.dueSince(clockOf(at, now)) : t.next(clockOf(at, now), sayTime(ms)),
  };
}

/** Checks that are due, each under a key of its own. @param now ms since 1970 */
export function checksDue(house: Household, now: number): { readonly key: string; readonly words: string }[] {
  return runLines(house).flatMap(({ run, name }) => {
    const check = checkLine(run, now);
    return check?.due ? [{ key: `${run.id} ${check.at}`, words: words().drying.check.due(name) }] : [];
  });
}

/** "8.4 % (6.1 to 10.7 %)". */
export function sayWater(of: {
  readonly moisture: number;
  readonly low: number;
  readonly high: number;
}): string {
  const { drying, figures } = words();
  const exact = of.high - of.low < 0.05;
  return exact ? figures.percent(of.moisture, 1) : drying.waterWithRange(of.moisture, of.low, of.high);
}

/** dm2 of a tray given in cm. */
export function trayArea(width: number, length: number): number {
  return (width * length) / 100;
}

/** One content of the food, per 100 g: as the mix counts it, as it would at the moisture of this run, as dried from fresh. */
export interface FoodLine {
  readonly tag: Tag;
  readonly name: string;
  readonly unit: string;
  readonly mix?: number;
  readonly damp?: number;
  readonly fresh?: number;
}

const SHOWN: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'FIBTG', 'FIBC', 'CA', 'P'];

/** A line for each content that one of the three gives. */
export function foodLines(food: Ingredient, dried: DriedRun, table: FoodTable): FoodLine[] {
  const now = compositionOf(food, table);
  const damp = compositionOf(ingredientAt(food, dried.moisture, table), table);
  const fresh = onCrudeProtein(dried.figures).composition;
  return SHOWN.flatMap((tag) => {
    if (now[tag] === undefined && damp[tag] === undefined && fresh[tag] === undefined) return [];
    return [
      {
        tag,
        name: countedName(tag),
        unit: nutrient(tag).unit,
        mix: now[tag],
        damp: damp[tag],
        fresh: fresh[tag],
      },
    ];
  });
}
