import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import { sameSeller, sellerNames, withTerms } from './sellers.ts';

describe('sellers', () => {
  it('are offered once each, from offers, terms and lots', () => {
    expect(
      sellerNames({
        offers: [offer({ id: 'a', seller: 'Bramble Barn' }), offer({ id: 'b', seller: 'Bramble Barn' })],
        lots: [lotOf({ id: 'l', seller: 'Market stall' }), lotOf({ id: 'n' })],
        kitchen: [{ id: 'kitchen', sellers: [{ seller: 'Alder Mill', delivery: 1 }] }],
      }),
    ).toEqual(['Alder Mill', 'Bramble Barn', 'Market stall']);
  });

  it('are the same whatever the capitals and spaces', () => {
    expect(sameSeller('  alder   mill ', ['Alder Mill'])).toBe('Alder Mill');
    expect(sameSeller(' New  one', ['Alder Mill'])).toBe('New one');
  });

  it('keep terms once each, and none that ask for nothing', () => {
    const before = [{ seller: 'A', delivery: 1 }, { seller: 'B' }];
    expect(withTerms(before, { seller: 'A', delivery: 2 })).toEqual([
      { seller: 'B' },
      { seller: 'A', delivery: 2 },
    ]);
    expect(withTerms(before, { seller: 'A' })).toEqual([{ seller: 'B' }]);
    expect(withTerms(before, { seller: 'A', delivery: 0 })).toHaveLength(2);
  });
});
