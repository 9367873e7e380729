/** The present food of a change-over: a food of the keeper's, one of the tables, or another mix as a blend. */

import type { Ingredient } from '../../../../formulation/problem/problem.ts';
import type { Mix } from '../../../../household/model.ts';
import {
  type MixAsFood,
  mixAsFood,
  otherMixes,
  withoutFresh,
} from '../../../../household/reckon/mix/change-over.ts';
import { fedMix } from '../../../../household/reckon/mix/eaters.ts';
import { ingredientFromOwn, ingredientFromReference } from '../../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../../words/words.ts';
import { type Asked, useAnswer } from '../../../shared/answer.tsx';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { allProfiles } from '../../../store/profiles.ts';
import { engine, useReferenceFoods } from '../../../worker/engine.ts';
import { type ChangeOverChoices, TABLE } from './choices.ts';

/** What a choice begins with for a food of the keeper's or one fed beside, and for another mix; its id follows. */
const OWN = 'own ';
const MIX_ALONE = 'mix ';
const RATION = 'ration ';

interface PresentOption {
  readonly value: string;
  readonly name: string;
}

/** Everything but the tables; mixes that add up to 100 % as they stand. */
export function usePresentOptions(mix: Mix): PresentOption[] {
  const t = words().changeOver.fields;
  const { house } = useMixDraft();
  const own = [...house.foods].sort((a, b) => Number(a.kind === 'mix') - Number(b.kind === 'mix'));
  const kept = new Set(own.map((f) => f.id));
  // A pellet stays in its mix when the keeper deletes it from the foods.
  const beside = mix.problem.beside.filter((b) => !kept.has(b.id) && !b.counts_as);
  return [
    ...own.map((f) => ({ value: OWN + f.id, name: f.name })),
    ...beside.map((b) => ({ value: OWN + b.id, name: b.name ?? b.id })),
    ...otherMixes(house, mix).flatMap((m) => {
      const pellet = m.problem.beside.filter((b) => !b.counts_as).map((b) => b.name ?? b.id);
      return [
        ...(pellet.length > 0 ? [{ value: RATION + m.id, name: t.withPellet(m.name, pellet) }] : []),
        { value: MIX_ALONE + m.id, name: pellet.length > 0 ? t.alone(m.name) : m.name },
      ];
    }),
  ];
}

export function usePresentFood({ present }: ChangeOverChoices, mix: Mix): Asked<MixAsFood> {
  const { house } = useMixDraft();
  const ref = present.startsWith(TABLE) ? present.slice(TABLE.length) : undefined;
  const table = useReferenceFoods(ref === undefined ? [] : [ref]).get(ref ?? '');
  const on = present.startsWith(RATION) ? 'ration' : present.startsWith(MIX_ALONE) ? 'mix' : undefined;
  const other = on && house.mixes.find((m) => m.id === present.slice(present.indexOf(' ') + 1));
  const effective = other && fedMix(house, other, allProfiles(house));
  const evaluated = useAnswer(
    'present',
    effective && { problem: withoutFresh(effective.problem, undefined).problem, shares: effective.shares },
    (q) => engine.evaluate(q.problem, q.shares),
  );
  if (other && on) {
    // Not an id that is fed beside: a mix is a food of its own here.
    const blend =
      evaluated.value && !evaluated.working
        ? mixAsFood(`mix ${other.id}`, other.name, evaluated.value.nutrients, on)
        : undefined;
    return { ...evaluated, value: blend };
  }
  const whole = (food: Ingredient): Asked<MixAsFood> => ({
    value: { food, partly: [] },
    working: false,
    fault: undefined,
  });
  if (ref !== undefined)
    return table
      ? whole(ingredientFromReference(table))
      : { value: undefined, working: true, fault: undefined };
  const id = present.slice(OWN.length);
  const own = present.startsWith(OWN) ? house.foods.find((f) => f.id === id) : undefined;
  if (own) return whole(ingredientFromOwn(own));
  const beside = mix.problem.beside.find((b) => b.id === id);
  if (!beside) return { value: undefined, working: false, fault: undefined };
  const {
    share_of_ration: _share,
    share_min: _least,
    share_max: _most,
    grams_a_day: _grams,
    ...food
  } = beside;
  return whole(food);
}
