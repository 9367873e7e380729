/** Targets whose figures are from memory, in words: why no mix may follow them yet. */
import { unconfirmedBounds } from '../../../targets/confirm.ts';
import type { TargetProfile } from '../../../targets/profile.ts';

/** A target as it stands in a list of them. */
export function targetOption(profile: TargetProfile): readonly [id: string, words: string] {
  const waiting = unconfirmedBounds(profile).length > 0;
  return [profile.id, waiting ? `${profile.name} (from memory, not confirmed)` : profile.name];
}

/** Why a mix cannot follow the target; undefined where it can. @param where they are confirmed */
export function unconfirmedWords(profile: TargetProfile, where = 'under Targets'): string | undefined {
  const { length } = unconfirmedBounds(profile);
  if (length === 0) return undefined;
  const figures = length === 1 ? 'One figure' : `${length} figures`;
  return `${figures} of “${profile.name}” ${length === 1 ? 'is' : 'are'} from memory. A mix can follow it once you have confirmed ${length === 1 ? 'it' : 'them'} ${where}.`;
}
