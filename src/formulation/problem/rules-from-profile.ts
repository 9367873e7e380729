/** From what an animal needs to what a mix must keep. */
import type { TargetProfile } from '../../targets/profile.ts';
import type { On, Rule } from './problem.ts';

/**
 * A target profile's bounds as rules, in the profile's order, each with its source.
 * @param on what they bind, the whole ration by default
 * @throws RangeError when a bound names neither a nutrient nor a ratio
 */
export function rulesFrom(profile: TargetProfile, on: On = 'ration'): Rule[] {
  return profile.bounds.map(({ nutrient, ratio, min, max, basis, source }): Rule => {
    const bounds = { ...(min !== undefined && { min }), ...(max !== undefined && { max }), on, source };
    if (nutrient) return { nutrient, ...bounds, ...(basis === 'DM' && { basis }) };
    // Both halves of a ratio are per the same 100 g, so its basis makes no difference.
    if (ratio) return { ratio, ...bounds };
    throw new RangeError(`a bound of profile ${profile.id} names neither a nutrient nor a ratio`);
  });
}
