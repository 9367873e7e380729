/** What of the food beside a mix is to be had for as long as a batch of it lasts, and what there is. */
import type { ChosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import type { LotLeft } from '../../../kitchen/shopping/at-hand.ts';
import type { Household, Mix } from '../../model.ts';
import { isHere } from '../care/here.ts';
import { foodsBeside } from '../cupboard/foods-beside.ts';
import { packStandings } from '../cupboard/pellet-days.ts';
import { type PackCircumstances, pelletEaters } from '../cupboard/pellet-eaters.ts';
import { eatingOf } from './eating.ts';

export interface BesideNeeds {
  readonly foods: readonly {
    readonly food: string;
    readonly name: string;
    /** g that the animals of the mix are fed of it in all those days. */
    readonly grams: number;
  }[];
  /** Packs of them, with what is left of each by estimate. */
  readonly cupboard: readonly LotLeft[];
  /** Days that the batch lasts; absent where nobody knows what the animals eat. */
  readonly days?: number;
  /** Names of foods of which nobody can say how much is needed. */
  readonly unknown: readonly string[];
}

/**
 * The foods fed from packs beside a mix, for the days that a batch of it lasts: fresh ones are bought as they are needed.
 * @param mix with what its animals bring @param batch g of the mix @param chosen shares beside it, where they are chosen
 */
export function besideNeeds(
  house: Household,
  mix: Mix,
  batch: number,
  p: { readonly under: PackCircumstances; readonly chosen?: ChosenShares | undefined },
): BesideNeeds {
  const packed = new Set(foodsBeside(house).map((f) => f.id));
  const beside = mix.problem.beside.filter((b) => packed.has(b.id));
  const { animals, gramsADay } = eatingOf(mix, house.animals.filter(isHere), p.chosen);
  const nameOf = (b: (typeof beside)[number]) => b.name ?? b.id;
  if (gramsADay === undefined) return { foods: [], cupboard: [], unknown: beside.map(nameOf) };
  const days = batch / gramsADay;
  const whole = animals.reduce((sum, a) => sum + (a.dailyGrams ?? 0), 0);
  const share = (b: (typeof beside)[number]) => p.chosen?.[b.id] ?? b.share_of_ration;
  const foods = beside.flatMap((b) => {
    const grams = (days * whole * share(b)) / 100;
    return grams > 0 ? [{ food: b.id, name: nameOf(b), grams }] : [];
  });
  return {
    foods,
    cupboard: foods.flatMap(({ food }) =>
      packStandings(house, food, pelletEaters(house, food, p.under), p.under.today)
        .filter(({ lot }) => lot.boughtOn <= p.under.today)
        .map(({ lot, left }) => ({ lot, left: Math.min(left, lot.grams) })),
    ),
    days,
    unknown: [],
  };
}
