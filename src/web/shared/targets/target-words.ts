/** Targets whose figures are from memory, in words: why no mix may follow them yet. */
import { unconfirmedBounds } from '../../../targets/confirm.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { words } from '../../../words/words.ts';

/** A target as it stands in a list of them. */
export function targetOption(profile: TargetProfile): readonly [id: string, words: string] {
  const waiting = unconfirmedBounds(profile).length > 0;
  return [profile.id, waiting ? words().targets.unconfirmed.option(profile.name) : profile.name];
}

/**
 * Why a mix cannot follow the target; undefined where it can.
 * @param where they are confirmed: on the same screen, or under Needs
 */
export function unconfirmedWords(
  profile: TargetProfile,
  where: 'here' | 'there' = 'there',
): string | undefined {
  const { length } = unconfirmedBounds(profile);
  return length === 0 ? undefined : words().targets.unconfirmed[where](length, profile.name);
}
