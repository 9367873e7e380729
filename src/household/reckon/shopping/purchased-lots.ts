/** Lots made of what was bought. */
import type { Day, Lot } from '../../../kitchen/model.ts';
import type { PacksOf } from '../../../kitchen/shopping/packs.ts';
import { lotName } from '../cupboard/lot-name.ts';

/** Packs of one offer, and the name of their food. */
export interface Purchase {
  readonly name: string;
  readonly packs: PacksOf;
}

/**
 * What was bought, as lots: one for all packs of an offer, since they come in on one day from one seller and go
 * through the freeze treatment together. Two offers are two lots, so that each keeps its seller and its price.
 * @param taken names of the lots there are @param id makes one anew at each call
 */
export function purchasedLots(
  bought: readonly Purchase[],
  p: { readonly on: Day; readonly taken: readonly string[]; id(): string },
): Lot[] {
  const taken = [...p.taken];
  return bought.map(({ name, packs }) => {
    const called = lotName(name, p.on, taken);
    taken.push(called);
    return {
      id: p.id(),
      food: packs.offer.food,
      name: called,
      grams: packs.grams,
      form: packs.offer.form,
      boughtOn: p.on,
      frozen: false,
      seller: packs.offer.seller,
      price: packs.price,
      cold: [],
    };
  });
}
