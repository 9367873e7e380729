/** A bound of a target as its keeper changes it. */
import type { TargetBound } from './profile.ts';

/** The source of a figure that the keeper made up. */
export const OWN_CHOICE = 'own choice';

/**
 * The bound with changes. Another figure, or the same on another basis, is not what the source said and nobody has
 * confirmed it: it is the keeper's own choice until they name a source.
 */
export function changedBound(bound: TargetBound, patch: Partial<TargetBound>): TargetBound {
  const next = { ...bound, ...patch };
  const same = next.min === bound.min && next.max === bound.max && next.basis === bound.basis;
  if (same && next.source === bound.source) return next;
  const { confirmed: _, ...rest } = next;
  return same ? rest : { ...rest, source: patch.source ?? OWN_CHOICE };
}
