import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Beside } from '../../formulation/problem/problem.ts';
import { feedingOf } from './feeding.ts';

const pellet: Beside = { id: 'pellet', name: 'Pellet', share_of_ration: 50 };
const cucumber: Beside = {
  id: 'cucumber',
  name: 'Cucumber',
  share_of_ration: 10,
  counts_as: 'air dry',
  composition: { WATER: 95.5 },
};
const ada = { id: 'ada', name: 'Ada', dailyGrams: 10 };
const bo = { id: 'bo', name: 'Bo' };

describe('feedingOf', () => {
  it('shares out the day, fresh food as it is weighed', () => {
    const { animals, lasts, runsOutOn, sentence } = feedingOf({
      problem: { beside: [pellet, cucumber] },
      animals: [ada],
      grams: 300,
      from: '2026-03-14',
    });
    // 1 g of air-dry cucumber is 20 g of cucumber: (100 - 10) / (100 - 95.5).
    expect(animals[0]!.mix).toBeCloseTo(4, 12);
    expect(animals[0]!.beside.map((b) => Number(b.grams!.toFixed(9)))).toEqual([5, 20]);
    expect(animals[0]!.sentence).toBe('Ada: 4 g of the mix, 5 g Pellet and 20 g Cucumber a day.');
    expect(lasts!.days).toBeCloseTo(75, 9);
    expect(runsOutOn).toBe('2026-05-28');
    expect(sentence).toBe('Lasts 75 days, until 28 May 2026.');
  });

  it('adds up to the ration, and lasts as long as the grams go round', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 200, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.double({ min: 0, max: 99, noNaN: true }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        (dailies, share, grams) => {
          const { animals, lasts } = feedingOf({
            problem: { beside: [{ ...pellet, share_of_ration: share }] },
            animals: dailies.map((dailyGrams, i) => ({ id: `${i}`, name: `${i}`, dailyGrams })),
            grams,
            from: '2026-03-14',
          });
          let eaten = 0;
          for (const { animal, mix, beside } of animals) {
            expect(Math.abs(mix! + beside[0]!.grams! - animal.dailyGrams!)).toBeLessThan(1e-9);
            eaten += mix!;
          }
          expect(lasts!.atMost).toBe(false);
          expect(Math.abs(lasts!.days * eaten - grams)).toBeLessThan(1e-6 * grams);
        },
      ),
    );
  });

  it('leaves unknown what nobody has said', () => {
    const some = feedingOf({
      problem: { beside: [pellet] },
      animals: [ada, bo],
      grams: 50,
      from: '2026-03-14',
    });
    expect(some.animals[1]).not.toHaveProperty('mix');
    expect(some.animals[1]!.sentence).toMatch(/How much Bo is fed a day is not known/);
    expect(some.lasts).toEqual({ days: 10, atMost: true });
    expect(some.sentence).toMatch(/at most 10 days, at the latest until 24 March 2026; how much Bo/);

    const none = feedingOf({ problem: { beside: [pellet] }, animals: [bo], grams: 50, from: '2026-03-14' });
    expect(none).not.toHaveProperty('lasts');
    expect(none.sentence).toMatch(/nobody has said how much Bo/);
    const nobody = feedingOf({ problem: { beside: [] }, animals: [], grams: 50, from: '2026-03-14' });
    expect(nobody.sentence).toMatch(/No animal is named/);

    const dry: Beside = { ...pellet, counts_as: 'air dry' };
    const unsure = feedingOf({ problem: { beside: [dry] }, animals: [ada], grams: 50, from: '2026-03-14' });
    expect(unsure.animals[0]!.beside).toEqual([{ food: 'pellet', name: 'Pellet' }]);
    expect(unsure.animals[0]!.mix).toBe(5);
  });

  it('takes chosen shares, and refuses what is no amount', () => {
    const p = { problem: { beside: [pellet] }, animals: [ada], grams: 50, from: '2026-03-14' };
    expect(feedingOf({ ...p, shares: { pellet: 80 } }).animals[0]!.mix).toBeCloseTo(2, 12);
    expect(() => feedingOf({ ...p, grams: -1 })).toThrow(/grams of the batch/);
    expect(() => feedingOf({ ...p, animals: [{ ...ada, dailyGrams: 0 }] })).toThrow(/dailyGrams of Ada/);
  });
});
