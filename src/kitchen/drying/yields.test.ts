import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  driedFromPrepared,
  driedPerBought,
  type FreshFood,
  freshToBuy,
  TRIM_ROWS,
  trimOf,
} from './yields.ts';

const food = (more: Partial<FreshFood> = {}): FreshFood => ({
  ref: 'own:root',
  name: 'blue root',
  source: 'test',
  composition: { WATER: 88 },
  sd: {},
  ...more,
});

describe('trim loss', () => {
  it('is the keeper’s own first, then the table’s, then the row’s', () => {
    expect(trimOf(food({ ref: 'sr28:11124', refuse: 50 }), 20)).toMatchObject({
      trimLoss: 20,
      source: 'weighed by you',
    });
    expect(trimOf(food({ ref: 'sr28:11124', refuse: 50 }))).toMatchObject({
      trimLoss: 11,
      parts: 'crown, tops and scrapings',
    });
    expect(trimOf(food({ refuse: 30 }))).toMatchObject({ trimLoss: 30 });
    expect(trimOf(food({ refuse: 30 }))).not.toHaveProperty('parts');
  });

  it('is unknown, not 0, where nobody says', () => {
    const trim = trimOf(food());
    expect(trim).not.toHaveProperty('trimLoss');
    expect(trim.note).toContain('unknown');
    expect(driedPerBought(food(), 8)).toBeUndefined();
    const needed = freshToBuy(10, food(), 4);
    expect(needed).not.toHaveProperty('purchased');
    expect(needed.prepared).toBeCloseTo(80, 9);
  });

  it('says how little a printed 0 rests on', () => {
    expect(trimOf(food({ refuse: 0 }))).toMatchObject({
      trimLoss: 0,
      note: expect.stringContaining('names no parts'),
    });
  });

  it.each([-1, 100, Number.NaN])('refuses %d percent', (percent) => {
    expect(() => trimOf(food(), percent)).toThrow('trim loss of blue root');
    expect(() => trimOf(food({ refuse: percent }))).toThrow(RangeError);
  });

  it('names each food once, in order, with the parts', () => {
    const refs = TRIM_ROWS.map((r) => r.ref);
    expect(refs).toEqual([...new Set(refs)].sort());
    for (const row of TRIM_ROWS) {
      expect(row.trimLoss > 0 && row.trimLoss < 100).toBe(true);
      expect(row.parts.length).toBeGreaterThan(2);
    }
  });
});

describe('from dried grams to grams to buy, and back', () => {
  const moistureFresh = fc.double({ min: 20, max: 97, noNaN: true });
  const trim = fc.double({ min: 0, max: 90, noNaN: true });

  it('is each other’s inverse, and never less than what is wanted', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1e4, noNaN: true }),
        moistureFresh,
        trim,
        fc.double({ min: 0, max: 19, noNaN: true }),
        (dried, wet, loss, moisture) => {
          const fresh = food({ composition: { WATER: wet } });
          const { prepared, purchased } = freshToBuy(dried, fresh, moisture, loss);
          expect(purchased! * driedPerBought(fresh, moisture, loss)!).toBeCloseTo(dried, 6);
          expect(driedFromPrepared(prepared, fresh, moisture)).toBeCloseTo(dried, 6);
          expect(prepared).toBeGreaterThan(dried);
          expect(purchased!).toBeGreaterThanOrEqual(prepared);
          // Dry matter is neither made nor lost.
          expect(purchased! * (1 - loss / 100) * (1 - wet / 100)).toBeCloseTo(
            dried * (1 - moisture / 100),
            6,
          );
        },
      ),
    );
  });

  it('needs the moisture of the fresh food, above that of the dried', () => {
    expect(() => freshToBuy(10, food({ composition: {} }), 4)).toThrow('moisture');
    expect(() => freshToBuy(10, food(), 88)).toThrow('not below');
    expect(() => driedFromPrepared(-1, food(), 4)).toThrow('prepared grams');
  });
});
