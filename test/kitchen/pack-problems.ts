/** Needs, offers and sellers drawn at random, from which packs are to be chosen. */
import fc from 'fast-check';
import type { Offer } from '../../src/kitchen/model.ts';
import type { PackNeed, Seller } from '../../src/kitchen/shopping/usable-offers.ts';

/** A pack of dry food. @param packGrams g, @param price for the pack */
export const offer = (id: string, food: string, seller: string, packGrams: number, price: number): Offer => ({
  id,
  food,
  seller,
  packGrams,
  price,
  form: 'dry',
});

export interface PackProblem {
  readonly needs: PackNeed[];
  readonly offers: Offer[];
  readonly sellers: Seller[];
}

export const SELLERS = ['Alder Mill', 'Bramble Barn', 'Clover Cart'];

/** Whole grams and whole pence, so that ties and exact fits come up often. */
export const drawn: fc.Arbitrary<PackProblem> = fc
  .record({
    foods: fc.array(
      fc.record({
        grams: fc.integer({ min: 1, max: 1500 }),
        offers: fc.array(
          fc.record({
            seller: fc.constantFrom(...SELLERS),
            pack: fc.constantFrom(40, 75, 100, 113, 227, 250, 400, 500, 1000),
            pence: fc.oneof({ weight: 12, arbitrary: fc.integer({ min: 40, max: 900 }) }, fc.constant(0)),
          }),
          { minLength: 1, maxLength: 4 },
        ),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    sellers: fc.subarray(SELLERS),
    delivery: fc.array(fc.constantFrom(0, 0.5, 2.95, 4.5), { minLength: 3, maxLength: 3 }),
    minimum: fc.array(fc.constantFrom(0, 0, 5, 12), { minLength: 3, maxLength: 3 }),
  })
  .map(({ foods, sellers, delivery, minimum }) => ({
    needs: foods.map((f, i) => ({ food: `food ${i}`, grams: f.grams })),
    offers: foods.flatMap((f, i) =>
      f.offers.map((o, k) => offer(`${i}-${k}`, `food ${i}`, o.seller, o.pack, o.pence / 100)),
    ),
    sellers: sellers.map((seller, i) => ({ seller, delivery: delivery[i]!, minimumOrder: minimum[i]! })),
  }));
