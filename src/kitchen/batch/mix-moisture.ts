/** Whether a mix is dry enough to keep, and the rule of a formulation that it is. */

import type { Rule } from '../../formulation/problem/problem.ts';
import type { NutrientLine } from '../../formulation/problem/result.ts';
import { normalBelow } from '../../nutrition/normal.ts';
import { words } from '../../words/words.ts';
import { COMPLETE, SURE } from '../tolerances.ts';
import data from './shelf-life.json' with { type: 'json' };

/** Most moisture of a mix that keeps, g per 100 g. */
export const MIX_MOISTURE: { readonly most: number; readonly source: string } = data.mix;

/** The rule that a mix keeps, as formulation takes it. @param most instead of the limit above, g per 100 g */
export function moistureRule(most = MIX_MOISTURE.most): Rule {
  if (!(most > 0 && most < 100))
    throw new RangeError(`the most moisture of a mix must be above 0 and below 100 g per 100 g, not ${most}`);
  const source = most === MIX_MOISTURE.most ? MIX_MOISTURE.source : words().batch.ownMoisture;
  return { nutrient: 'WATER', max: most, on: 'mix', source };
}

/** Whether a mix is dry enough to keep. */
export interface MixMoisture {
  readonly state: 'dry' | 'unsure' | 'damp';
  readonly moisture: number;
  readonly sd: number;
  readonly most: number;
  /** Chance that it is at most that; of the foods whose moisture is known. */
  readonly chance: number;
  readonly source: string;
  readonly sentence: string;
}

/**
 * Holds the moisture of a mix against the safe limit.
 * @param water the mix's line for WATER, as an evaluation gives it; undefined where nothing is known of it
 */
export function mixMoisture(water: NutrientLine | undefined): MixMoisture {
  const { most, source } = MIX_MOISTURE;
  const moisture = water?.mix ?? 0;
  const sd = water?.sd_mix ?? 0;
  const chance = sd > 0 ? normalBelow((most - moisture) / sd) : moisture <= most ? 1 : 0;
  const known = water !== undefined && water.coverage_mix > 100 - COMPLETE;
  const answer = { moisture, sd, most, chance, source };
  const t = words().batch.moisture;
  // What is known can only grow by what is not, so too damp is too damp.
  if (moisture > most)
    return {
      ...answer,
      state: 'damp',
      sentence: known ? t.damp(moisture, most) : t.dampAtLeast(moisture, most),
    };
  if (!known)
    return {
      ...answer,
      state: 'unsure',
      sentence: t.unknown(Math.floor(water?.coverage_mix ?? 0)),
    };
  if (chance < SURE)
    return {
      ...answer,
      state: 'unsure',
      sentence: t.unsure(moisture, most),
    };
  return {
    ...answer,
    state: 'dry',
    sentence: t.dry(moisture, most),
  };
}
