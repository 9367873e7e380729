/** The example household: taken away together, brought back as it was, and looked at beside what is the keeper's own. */
import { useState } from 'react';
import { EXAMPLE, type ExampleParts, exampleIn, ownMixes } from '../../household/reckon/example.ts';
import { later } from '../shared/later/later.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

const demo = later(() => import('../../household/demo.ts'));

/** What was taken away since the page was opened, as it stood: the press that undoes it may stand on another screen. */
let takenAway: ExampleParts | undefined;

export function useExample() {
  const { house, choose } = useMixDraft();
  const [, redraw] = useState(0);
  const save = {
    foods: useSave('foods'),
    animals: useSave('animals'),
    mixes: useSave('mixes'),
    versions: useSave('versions'),
  };
  const remove = { foods: useRemove('foods'), animals: useRemove('animals'), mixes: useRemove('mixes') };
  const there = exampleIn(house);
  const faults = [...Object.values(save), ...Object.values(remove)].flatMap((s) => s.error ?? []);

  /** What names another goes in after it. */
  async function bring(parts: ExampleParts) {
    for (const food of parts.foods) await save.foods.mutateAsync(food, undefined);
    for (const animal of parts.animals) await save.animals.mutateAsync(animal, undefined);
    for (const mix of parts.mixes) await save.mixes.mutateAsync(mix, undefined);
    for (const version of parts.versions) await save.versions.mutateAsync(version, undefined);
  }

  return {
    /** Whether anything of it is kept. */
    isThere: there !== undefined,
    /** Whether its mix is kept and can be looked at. */
    canBeSeen: (there?.mixes.length ?? 0) > 0,
    error: faults[0],
    /** Takes it away; what is the keeper's own stays. */
    async leave() {
      if (!there) return;
      takenAway = there;
      // Versions go with their mix.
      for (const mix of there.mixes) await remove.mixes.mutateAsync(mix);
      for (const animal of there.animals) await remove.animals.mutateAsync(animal);
      for (const food of there.foods) await remove.foods.mutateAsync(food);
      redraw((n) => n + 1);
    },
    /** Brings back what was just taken away; undefined where nothing was. */
    undo:
      takenAway === undefined || there !== undefined
        ? undefined
        : async () => {
            const parts = takenAway;
            if (!parts) return;
            takenAway = undefined;
            await bring(parts);
            if (parts.mixes.length > 0 && ownMixes(house).length === 0) choose(EXAMPLE.mix);
          },
    /** Brings the example in where it is not, and goes to it. */
    async look() {
      if (!there?.mixes.length) {
        const { demoHousehold } = await demo.fetch();
        const { foods, animals, mixes, versions } = demoHousehold(new Date().toISOString());
        const lacks = <T extends { id: string }>(all: readonly T[], kept: readonly { id: string }[]) =>
          all.filter((one) => !kept.some((k) => k.id === one.id));
        await bring({
          foods: lacks(foods, house.foods),
          animals: lacks(animals, house.animals),
          mixes,
          versions,
        });
      }
      choose(EXAMPLE.mix);
    },
    /** Back from the example to the keeper's own mix. */
    toOwn() {
      const [own] = ownMixes(house);
      if (own) choose(own.id);
    },
  };
}
