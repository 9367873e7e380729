/** Begins the first mix, with the first of the target profiles that come with the program. */

import { newMix } from '../../../household/reckon/mix/mix-edits.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { newId } from '../../store/new-id.ts';

export function useFirstMix(): () => void {
  const { create } = useMixDraft();
  return () => {
    const [profile] = PROFILES;
    if (!profile) throw new Error('no target profile comes with the program');
    create(
      newMix({ id: newId(), name: words().shared.firstMix.name, profile, at: new Date().toISOString() }),
    );
  };
}
