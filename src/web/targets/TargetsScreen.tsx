/** Targets: what animals need, bound by bound with its source; own profiles are made from a copy. */
import { Button } from 'react-aria-components';
import { withProfile } from '../../household/reckon/mix/mix-edits.ts';
import { unconfirmedBounds } from '../../targets/confirm.ts';
import { needsStage, speciesWord } from '../../targets/life-stage.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { go, linkTo } from '../shared/route.ts';
import { unconfirmedWords } from '../shared/targets/target-words.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { allProfiles, isOwnProfile } from '../store/profiles.ts';
import { ConfirmFigures } from './ConfirmFigures.tsx';
import { ProfileEditor } from './ProfileEditor.tsx';
import { ProfileTable } from './ProfileTable.tsx';
import '../shared/styles/list-detail.css';

export function TargetsScreen({ shown }: { shown: string | undefined }) {
  const { house, mix, change } = useMixDraft();
  const { targets: t, common } = words();
  const profiles = allProfiles(house);
  const profile =
    profiles.find((p) => p.id === shown) ?? profiles.find((p) => p.id === mix?.profileId) ?? profiles[0];
  const parts = useParts(profiles, { part: 50, always: (p) => p.id === profile?.id });
  const save = useSave('profiles');
  const erase = useRemove('profiles');
  const own = profile && isOwnProfile(profile);
  const waits = profile !== undefined && unconfirmedBounds(profile).length > 0;
  const users = [...house.mixes, ...house.animals].filter((m) => m.profileId === profile?.id);

  function copy(from: TargetProfile) {
    const made = { ...from, id: newId(), name: t.copyName(from.name) };
    save.mutate(made, undefined, { onSuccess: () => go('targets', made.id) });
  }

  return (
    <main id="main" className="targets-screen">
      <section className="finder" aria-label={t.list}>
        <h1>{t.title}</h1>
        <ul className="food-list">
          {parts.shown.map((p) => (
            <li key={p.id}>
              <a href={linkTo('targets', p.id)} aria-current={p.id === profile?.id ? 'true' : undefined}>
                <span>{p.name}</span> {p.id === mix?.profileId && <span className="tag">{t.inThisMix}</span>}{' '}
                {unconfirmedBounds(p).length > 0 && <span className="tag from-memory">{t.fromMemory}</span>}
                <small>{t.kind(kindOf(p))}</small>
              </a>
            </li>
          ))}
        </ul>
        {parts.more}
      </section>
      {profile && (
        <section className="detail" aria-label={t.one}>
          <h2>{profile.name}</h2>
          <p>{profile.about}</p>
          <div className="button-row">
            <Button
              className="button"
              isDisabled={!mix || mix.profileId === profile.id || waits}
              aria-describedby={waits ? 'why-not-yet' : undefined}
              onPress={() => change((m) => withProfile(m, profile))}
            >
              {mix?.profileId === profile.id ? t.used : t.use}
            </Button>
            <Button className="quiet-button" onPress={() => copy(profile)}>
              {t.copy}
            </Button>
            {own && (
              <Button
                className="quiet-button"
                isDisabled={users.length > 0}
                onPress={() => erase.mutate(profile, { onSuccess: () => go('targets') })}
              >
                {common.delete}
              </Button>
            )}
            {own && users.length > 0 && <span className="hint">{t.usedIn(users.map((m) => m.name))}</span>}
          </div>
          {waits && (
            <p id="why-not-yet" className="hint">
              {unconfirmedWords(profile, 'here')}
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

/** What animal the needs are of, and whether they are the keeper's own. */
function kindOf(profile: TargetProfile): string[] {
  const own = isOwnProfile(profile) ? [words().targets.own] : [];
  return [speciesWord(profile.species), needsStage(profile.lifeStage), ...own];
}
