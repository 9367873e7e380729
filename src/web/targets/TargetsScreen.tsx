/** Targets: what animals need, bound by bound with its source; own profiles are made from a copy. */
import { Button } from 'react-aria-components';
import { withProfile } from '../../household/reckon/mix/mix-edits.ts';
import { unconfirmedBounds } from '../../targets/confirm.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { useParts } from '../shared/parts.tsx';
import { go, linkTo } from '../shared/route.ts';
import { unconfirmedWords } from '../shared/targets/target-words.ts';
import { allProfiles, isOwnProfile, useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { ConfirmFigures } from './ConfirmFigures.tsx';
import { ProfileEditor } from './ProfileEditor.tsx';
import { ProfileTable } from './ProfileTable.tsx';
import '../shared/styles/list-detail.css';

export function TargetsScreen({ shown }: { shown: string | undefined }) {
  const { house, mix, change } = useMixDraft();
  const profiles = allProfiles(house);
  const profile =
    profiles.find((p) => p.id === shown) ?? profiles.find((p) => p.id === mix?.profileId) ?? profiles[0];
  const parts = useParts(profiles, { part: 50, of: 'targets', always: (p) => p.id === profile?.id });
  const save = useSave('profiles');
  const erase = useRemove('profiles');
  const own = profile && isOwnProfile(profile);
  const waits = profile !== undefined && unconfirmedBounds(profile).length > 0;
  const users = [...house.mixes, ...house.animals].filter((m) => m.profileId === profile?.id);

  function copy(from: TargetProfile) {
    const made = { ...from, id: newId(), name: `${from.name} (own)` };
    save.mutate(made, undefined, { onSuccess: () => go('targets', made.id) });
  }

  return (
    <main id="main" className="targets-screen">
      <section className="finder" aria-label="Target profiles">
        <h1>Targets</h1>
        <ul className="food-list">
          {parts.shown.map((p) => (
            <li key={p.id}>
              <a href={linkTo('targets', p.id)} aria-current={p.id === profile?.id ? 'true' : undefined}>
                <span>{p.name}</span> {p.id === mix?.profileId && <span className="tag">in this mix</span>}{' '}
                {unconfirmedBounds(p).length > 0 && <span className="tag from-memory">from memory</span>}
                <small>
                  {p.species}, {p.lifeStage}
                  {isOwnProfile(p) ? ', own' : ''}
                </small>
              </a>
            </li>
          ))}
        </ul>
        {parts.more}
      </section>
      {profile && (
        <section className="detail" aria-label="Profile">
          <h2>{profile.name}</h2>
          <p>{profile.about}</p>
          <div className="button-row">
            <Button
              className="button"
              isDisabled={!mix || mix.profileId === profile.id || waits}
              aria-describedby={waits ? 'why-not-yet' : undefined}
              onPress={() => change((m) => withProfile(m, profile))}
            >
              {mix?.profileId === profile.id ? 'Used in the mix' : 'Use in the mix'}
            </Button>
            <Button className="quiet-button" onPress={() => copy(profile)}>
              Copy and edit
            </Button>
            {own && (
              <Button
                className="quiet-button"
                isDisabled={users.length > 0}
                onPress={() => erase.mutate(profile, { onSuccess: () => go('targets') })}
              >
                Delete
              </Button>
            )}
            {own && users.length > 0 && (
              <span className="hint">Used in {users.map((m) => m.name).join(', ')}.</span>
            )}
          </div>
          {waits && (
            <p id="why-not-yet" className="hint">
              {unconfirmedWords(profile, 'below')}
            </p>
          )}
          {(save.error ?? erase.error) && (
            <p role="alert" className="field-error">
              {(save.error ?? erase.error)?.message}
            </p>
          )}
          {own ? (
            <ProfileEditor key={profile.id} profile={profile} />
          ) : (
            <>
              <ConfirmFigures key={profile.id} profile={profile} />
              <ProfileTable profile={profile} />
            </>
          )}
        </section>
      )}
    </main>
  );
}
