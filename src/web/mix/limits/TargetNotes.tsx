/** What the keeper should know of the target of a mix: whose it is not, what of it is from memory, what was changed. */

import { Button } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import { hereAmong } from '../../../household/reckon/care/here.ts';
import { otherTarget } from '../../../household/reckon/mix/eaters.ts';
import { withProfile } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { unconfirmedWords } from '../../shared/targets/target-words.ts';
import { Unconfirmed } from '../../shared/targets/Unconfirmed.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import type { FormulationView } from '../useFormulation.ts';

export function TargetNotes({ mix, view }: { mix: Mix; view: FormulationView }) {
  const t = words().limits;
  const { house } = useMixDraft();
  const profiles = allProfiles(house);
  const own = profiles.find((p) => p.id === mix.profileId);
  const other = otherTarget(mix, house.animals, profiles);
  const fed = hereAmong(house.animals, mix.animalIds);
  const others = fed.filter((a) => a.profileId !== mix.profileId);
  const brought = fed.length > 1 ? new Set(others.map((a) => a.profileId)) : new Set();
  return (
    <>
      {other && (
        <p className="hint">
          {t.otherNeeds(other.name, other.profile.name)}{' '}
          {unconfirmedWords(other.profile) ? (
            <Unconfirmed profile={other.profile} />
          ) : (
            <Button
              className="quiet-button small"
              onPress={() => void view.edit((m) => withProfile(m, other.profile))}
            >
              {t.follow(other.name)}
            </Button>
          )}
        </p>
      )}
      {profiles
        .filter((p) => (p === own || brought.has(p.id)) && unconfirmedWords(p))
        .map((p) => (
          <p key={p.id} className="hint">
            {t.fromMemory} <Unconfirmed profile={p} />
          </p>
        ))}
    </>
  );
}
