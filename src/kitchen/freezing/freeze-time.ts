/**
 * How long a bag of a dry good must lie in the freezer: until its core is cold, and then as long as that kills insects
 * there; no less than is common practice.
 */

import { words } from '../../words/words.ts';
import { WHOLE } from '../tolerances.ts';
import { type Cooling, casesOf, daysTo, type Estimate, GOODS } from './cooling.ts';
import { holdingDays, LETHAL_TIMES } from './lethal-cold.ts';

/** Days in the freezer in one round, and out of it to thaw, as keepers have it: the longer of 3 to 4 (common practice, no source). */
export const COMMON_DAYS = 4;

/** What household freezers are set to, °C (common practice, no source). */
const USUAL_FREEZER = -18;

export interface FreezeAdvice {
  /** Whole days that this bag should lie in the freezer, one round. */
  readonly days: number;
  /** Whole days by common practice. */
  readonly common: number;
  /** Days until the core is at `core` °C. */
  readonly cooling: Estimate;
  readonly core: number;
  /** Days that it must then stay as cold. */
  readonly holding: number;
  /** One sentence for the keeper. */
  readonly sentence: string;
  readonly source: string;
}

/**
 * Days that this bag should lie in the freezer in one round: common practice, or cooling to the core (at its slow
 * end) and holding there, whichever is longer. Of the temperatures that the core passes the one is taken that asks
 * for the fewest days in all; that errs on the safe side, since the core cools on while it is held.
 * @param options.common whole days of the keeper's own practice, 4 where not given
 * @param options.lethal which figures the holding time follows; "laboratory" where not given
 * @throws RangeError when the air is so warm that no lethal time was found for it, or a size is not above 0
 */
export function freezeAdvice(
  cooling: Cooling,
  options: { readonly common?: number; readonly lethal?: keyof typeof LETHAL_TIMES } = {},
): FreezeAdvice {
  const { common = COMMON_DAYS, lethal = 'laboratory' } = options;
  const t = words().freezing;
  const cases = casesOf(cooling);
  let best: { core: number; cooling: Estimate; holding: number } | undefined;
  for (let core = LETHAL_TIMES[lethal].points[0][0]; core > cooling.air + 0.4; core -= 0.5) {
    const holding = holdingDays(core, lethal)!;
    if (best && holding >= best.cooling.high + best.holding) continue;
    const time = daysTo(core, cooling, cases);
    if (!best || time.high + holding < best.cooling.high + best.holding)
      best = { core, cooling: time, holding };
  }
  if (!best) throw new RangeError(t.tooWarm(cooling.air, USUAL_FREEZER));
  const needed = Math.ceil(best.cooling.high + best.holding - WHOLE);
  const days = Math.max(common, needed);
  const { core, holding, cooling: time } = best;
  const sentence =
    needed > common
      ? t.longer(days, time.mid, time.high, core, holding)
      : t.usual(days, time.high, core, holding);
  return {
    days,
    common,
    ...best,
    sentence,
    source: t.source(t.lethal[lethal], GOODS[cooling.good].source),
  };
}
