/** Figures from memory count for no mix until a keeper has compared them with their publication. */
import type { Confirmation, TargetBound, TargetProfile } from './profile.ts';

/** A keeper writes it in their own language. */
const FROM_MEMORY = /\bfrom memory\b|\baus dem gedächtnis\b|\buit het hoofd\b/i;

/** Whether a bound is from memory, and nobody has confirmed it. */
export function isUnconfirmed({ source, confirmed }: TargetBound): boolean {
  return confirmed === undefined && FROM_MEMORY.test(source);
}

/** The bounds of a profile that its keeper must confirm before a mix may follow it; none where it may. */
export function unconfirmedBounds(profile: Pick<TargetProfile, 'bounds'>): TargetBound[] {
  return profile.bounds.filter(isUnconfirmed);
}

/** The profile with every figure from memory confirmed; bounds confirmed before keep what was said of them. */
export function confirmedProfile(profile: TargetProfile, confirmed: Confirmation): TargetProfile {
  return { ...profile, bounds: profile.bounds.map((b) => (isUnconfirmed(b) ? { ...b, confirmed } : b)) };
}

/**
 * A profile that comes with the program, with what its keeper confirmed of it.
 * @param kept what is stored under the same id: its confirmations count, and each only for the figures it was given for
 */
export function withConfirmations(builtIn: TargetProfile, kept: TargetProfile | undefined): TargetProfile {
  if (!kept) return builtIn;
  return {
    ...builtIn,
    bounds: builtIn.bounds.map((bound) => {
      const confirmed = kept.bounds.find((k) => isSameFigure(k, bound))?.confirmed;
      return confirmed ? { ...bound, confirmed } : bound;
    }),
  };
}

function isSameFigure(a: TargetBound, b: TargetBound): boolean {
  return (
    a.nutrient === b.nutrient &&
    a.ratio?.join() === b.ratio?.join() &&
    a.min === b.min &&
    a.max === b.max &&
    a.basis === b.basis
  );
}
