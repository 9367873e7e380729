/** The keeper's own first mix: begun with the first thing that is said of it, and made to fit by one press. */

import type { Mix } from '../../household/model.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import { EXAMPLE } from '../../household/reckon/example.ts';
import { fedMix } from '../../household/reckon/mix/eaters.ts';
import { newMix, withHolds } from '../../household/reckon/mix/mix-edits.ts';
import { withWantedShares } from '../../household/reckon/mix/wanted-mix.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { words } from '../../words/words.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { allProfiles } from '../store/profiles.ts';
import { longAnswers } from '../worker/engine.ts';

export interface OwnMix {
  readonly mix: Mix | undefined;
  /** Changes the mix, or begins one and changes that; once in a press, since a mix that is begun is seen only after it. */
  edit(next: (mix: Mix) => Mix): void;
  /**
   * Works the shares out. Where no mix keeps the limits it gets the shares that are wanted, so that it shows what is
   * wrong with them.
   * @returns why that cannot be done; undefined where it is
   */
  makeFit(): Promise<string | undefined>;
}

export function useOwnMix(): OwnMix {
  const { house, mix, change, create, current } = useMixDraft();
  const own = mix && mix.id !== EXAMPLE.mix ? mix : undefined;
  return {
    mix: own,
    edit(next) {
      if (own) return change(next);
      const eaters = house.animals.filter((a) => a.id !== EXAMPLE.animal && isHere(a));
      const profile = allProfiles(house).find((p) => p.id === eaters[0]?.profileId) ?? PROFILES[0];
      if (!profile) throw new Error('no target profile comes with the program');
      const at = new Date().toISOString();
      const begun = newMix({ id: newId(), name: words().start.mixName, profile, at });
      create(next({ ...begun, animalIds: eaters.map((a) => a.id) }));
    },
    async makeFit() {
      const now = current();
      if (!now) return undefined;
      const fed = fedMix(house, now, allProfiles(house));
      const answer = await longAnswers.solve(withHolds(fed));
      if (!answer.ok) return answer.message;
      const { value } = answer;
      change((m) =>
        value.status === 'optimal' ? { ...m, shares: { ...m.shares, ...value.shares } } : withWantedShares(m),
      );
      return undefined;
    },
  };
}
