/** Lots made of what was bought. */
import { type LotGroup, needsTreatment } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import type { PacksOf } from '../../../kitchen/shopping/packs.ts';
import { lotName } from '../cupboard/lot-name.ts';

/** Something that comes into the cupboard, and the name of its food. */
export interface Purchase extends Pick<Lot, 'food' | 'name' | 'grams' | 'form' | 'seller' | 'price'> {}

/** All packs of one offer. @param name of the food */
export function purchaseOf(name: string, { offer, grams, price }: PacksOf): Purchase {
  const { food, form, seller } = offer;
  return { food, name, grams, form, seller, price };
}

/**
 * What was bought, as lots: one for all packs of an offer, since they come in on one day from one seller and go
 * through the freeze treatment together. Two offers are two lots, so that each keeps its seller and its price.
 * @param p.taken names of the lots there are @param p.id makes one anew at each call
 * @param p.frozen where and by whom all of it was frozen already, in the keeper's words: what needs the freeze treatment
 * then need not wait for it, and the lot says why
 */
export function purchasedLots(
  bought: readonly Purchase[],
  p: {
    readonly on: Day;
    readonly taken: readonly string[];
    id(): string;
    readonly frozen?: string | undefined;
    groupOf(food: string): LotGroup | undefined;
  },
): Lot[] {
  const taken = [...p.taken];
  return bought.map(({ name, ...what }): Lot => {
    const called = lotName(name, p.on, taken);
    taken.push(called);
    const lot: Lot = { ...what, id: p.id(), name: called, boughtOn: p.on, frozen: false, cold: [] };
    const through = p.frozen !== undefined && needsTreatment(lot, p.groupOf(lot.food)).needs;
    return through ? { ...lot, overruled: { note: p.frozen ?? '', on: p.on } } : lot;
  });
}
