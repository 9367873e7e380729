/** The mix at hand, or the first step to one; a mix that was deleted can be had back. */

import { useEffect, useState } from 'react';
import { Button, type Key } from 'react-aria-components';
import type { Household, Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { adviceAt } from './advice/AdviceTabs.tsx';
import { Workbench } from './Workbench.tsx';
import './MixScreen.css';

/** A mix that was just deleted, with what went along. */
interface Deleted {
  readonly mix: Mix;
  readonly versions: Household['versions'];
}

/** @param shown the advice to open at once, by its name in the address */
export function MixScreen({ shown }: { shown: string | undefined }) {
  const { house, mix, choose } = useMixDraft();
  /** Which advice is open: it stays open when another mix is taken up. */
  const advice = useState<Key>(() => adviceAt(shown));
  useEffect(() => {
    if (shown !== undefined) focusWhenThere('.advice-tab[aria-selected="true"]');
  }, [shown]);
  const [deleted, setDeleted] = useState<Deleted>();
  const remove = useRemove('mixes');
  const mixes = useSave('mixes');
  const versions = useSave('versions');

  /** Versions go with their mix; both can be had back. */
  async function take(mix: Mix) {
    const along = house.versions.filter((v) => v.mixId === mix.id);
    // As it is kept this moment: what was changed last counts.
    await remove.mutateAsync(house.mixes.find((m) => m.id === mix.id) ?? mix);
    setDeleted({ mix, versions: along });
    focusWhenThere('.mix-deleted button');
  }
  async function bringBack({ mix, versions: along }: Deleted) {
    setDeleted(undefined);
    await mixes.mutateAsync(mix, undefined);
    for (const version of along) await versions.mutateAsync(version, undefined);
    choose(mix.id);
    focusWhenThere('.mix-name input');
  }
  const error = remove.error ?? mixes.error ?? versions.error;
  return (
    <>
      {(deleted || error) && (
        <div className="mix-deleted notice-line" role="status">
          {deleted && words().mix.head.deleted(deleted.mix.name)}{' '}
          {deleted && (
            <Button className="quiet-button small" onPress={() => void bringBack(deleted).catch(() => {})}>
              {words().common.undo}
            </Button>
          )}
          <Failed error={error} />
        </div>
      )}
      {mix ? (
        <Workbench
          key={mix.id}
          mix={mix}
          advice={advice}
          onDelete={() => void take(mix).catch(() => {})} // `error` says why
        />
      ) : (
        <FirstMix />
      )}
    </>
  );
}
