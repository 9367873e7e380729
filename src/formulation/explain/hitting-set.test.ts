import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cheapestHit } from './hitting-set.ts';

const COLUMNS = 9;

test('the cheapest choice that meets every set is the one that trying all of them finds', () => {
  const sets = fc.array(fc.uniqueArray(fc.nat(COLUMNS - 1), { minLength: 1, maxLength: 5 }), {
    maxLength: 12,
  });
  const costs = fc.array(fc.constantFrom(1, 1 + 1 / 40), { minLength: COLUMNS, maxLength: COLUMNS });
  fc.assert(
    fc.property(sets, costs, fc.integer({ min: 1, max: 9 }), (asked, cost, below) => {
      const price = (chosen: readonly number[]) => chosen.reduce((sum, k) => sum + cost[k]!, 0);
      let least = Number.POSITIVE_INFINITY;
      for (let choice = 0; choice < 2 ** COLUMNS; choice++) {
        const chosen = cost.flatMap((_, k) => ((choice >> k) & 1 ? [k] : []));
        if (asked.every((set) => set.some((k) => chosen.includes(k)))) least = Math.min(least, price(chosen));
      }
      const found = cheapestHit(asked, cost, below);
      if (least > below - 1e-9) {
        expect(found).toBeUndefined();
        return;
      }
      expect(found).toBeDefined();
      expect(asked.every((set) => set.some((k) => found?.includes(k)))).toBe(true);
      expect(price(found ?? [])).toBeCloseTo(least, 9);
    }),
    { numRuns: 300 },
  );
});
