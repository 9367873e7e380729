/** A target profile as its keeper leaves it, made fit to be kept. */
import type { TargetProfile } from './profile.ts';

/**
 * The profile without bounds that bound nothing, its name trimmed; it reads fibre as the measure that it bounds, and
 * where it bounds both as total dietary fibre.
 */
export function finishProfile(draft: TargetProfile): TargetProfile {
  const bounds = draft.bounds.filter((b) => b.min !== undefined || b.max !== undefined);
  const fibre = (['FIBTG', 'FIBC'] as const).find((tag) => bounds.some((b) => b.nutrient === tag)) ?? 'none';
  return { ...draft, name: draft.name.trim(), bounds, fibre };
}
