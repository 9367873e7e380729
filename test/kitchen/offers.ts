import type { Offer } from '../../src/kitchen/model.ts';

/** 500 g of oats, dry, for 2.00 at one seller, unless said otherwise. */
export const offer = (about: Partial<Offer> & Pick<Offer, 'id'>): Offer => ({
  food: 'oats',
  seller: 'Alder Mill',
  packGrams: 500,
  price: 2,
  form: 'dry',
  ...about,
});
