/** From what an animal needs to what a mix must keep. */
import { nutrient as nutrientOf, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import type { TargetBound, TargetProfile } from '../../targets/profile.ts';
import type { Rule } from './problem.ts';

/**
 * A target profile's bounds as rules on the whole ration, in the profile's order, each with its source. A bound per
 * 1000 kcal becomes one on the ratio to energy, per kcal.
 * @throws RangeError when a bound names neither a nutrient nor a ratio
 */
export function rulesFrom(profile: Pick<TargetProfile, 'id' | 'bounds'>): Rule[] {
  return profile.bounds.map((bound): Rule => {
    const { nutrient, ratio, min, max, basis } = bound;
    const source = sourceWords(bound);
    const bounds = (per: number) => ({
      ...(min !== undefined && { min: min / per }),
      ...(max !== undefined && { max: max / per }),
      on: 'ration' as const,
      source,
    });
    if (nutrient && basis === 'per 1000 kcal') return { ratio: [nutrient, 'ENERC_KCAL'], ...bounds(1000) };
    if (nutrient) return { nutrient, ...bounds(1), ...(basis === 'DM' && { basis }) };
    // Both halves of a ratio are per the same 100 g, so its basis makes no difference.
    if (ratio) return { ratio, ...bounds(1) };
    throw new RangeError(`a bound of profile ${profile.id} names neither a nutrient nor a ratio`);
  });
}

function sourceWords({ nutrient, min, max, basis, source, confirmed }: TargetBound): string {
  const energy = nutrient && basis === 'per 1000 kcal' ? `${perEnergyWords(nutrient, min, max)}; ` : '';
  const said = confirmed ? `; confirmed by the keeper against ${confirmed.against} on ${confirmed.on}` : '';
  return `${energy}${source}${said}`;
}

/** "at least 1.8 g per 1000 kcal": the rule itself is per kcal. */
function perEnergyWords(tag: Tag, min: number | undefined, max: number | undefined): string {
  const ends = [min !== undefined && `at least ${min}`, max !== undefined && `at most ${max}`];
  return `${ends.filter(Boolean).join(', ')} ${unitWord(nutrientOf(tag).unit)} per 1000 kcal`;
}
