/** From what an animal needs to what a mix must keep. */
import type { TargetProfile } from '../../targets/profile.ts';
import type { Rule } from './problem.ts';

/**
 * A target profile's bounds as rules on the whole ration, in the profile's order, each with its source.
 * @throws RangeError when a bound names neither a nutrient nor a ratio
 */
export function rulesFrom(profile: TargetProfile): Rule[] {
  return profile.bounds.map(({ nutrient, ratio, min, max, basis, source }): Rule => {
    const bounds = {
      ...(min !== undefined && { min }),
      ...(max !== undefined && { max }),
      on: 'ration' as const,
      source,
    };
    if (nutrient) return { nutrient, ...bounds, ...(basis === 'DM' && { basis }) };
    // Both halves of a ratio are per the same 100 g, so its basis makes no difference.
    if (ratio) return { ratio, ...bounds };
    throw new RangeError(`a bound of profile ${profile.id} names neither a nutrient nor a ratio`);
  });
}
