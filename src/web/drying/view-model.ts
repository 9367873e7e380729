/** What the drying screen says: water in words, and what the food of a run holds. */
import { onCrudeProtein } from '../../foods/crude-protein.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { FoodTable } from '../../household/reckon/drying/measured-moisture.ts';
import { compositionOf } from '../../household/reckon/mix/beside-blend.ts';
import type { DriedRun } from '../../kitchen/drying/finished-run.ts';
import { ingredientAt } from '../../kitchen/drying/ingredient-at.ts';
import { countedName, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';

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
