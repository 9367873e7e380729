/** Target profiles: those that come with the program, and the keeper's own. */
import type { Household } from '../../household/model.ts';
import { withConfirmations } from '../../targets/confirm.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { PROFILES } from '../../targets/profiles.ts';

/** Whether a profile is the keeper's own, so may be changed. */
export function isOwnProfile(profile: TargetProfile): boolean {
  return !PROFILES.some((p) => p.id === profile.id);
}

/**
 * Published profiles first, then the keeper's own. What is stored under the id of a published one is what the keeper
 * confirmed of it.
 */
export function allProfiles(house: Household): TargetProfile[] {
  const published = PROFILES.map((p) =>
    withConfirmations(
      p,
      house.profiles.find((kept) => kept.id === p.id),
    ),
  );
  return [...published, ...house.profiles.filter(isOwnProfile)];
}
