/** What a household's records say was offered and eaten. */
import { beforeAll, describe, expect, it } from 'vitest';
import { fedHousehold, fedOn, MIX_A_DAY, PELLET_A_DAY } from '../../../../test/household/fed-household.ts';
import type { Feeding, WeighBack } from '../../../care/model.ts';
import type { Reference } from '../../../foods/reference.ts';
import { foodAmounts } from '../../../formulation/amounts/food-amounts.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Household } from '../../model.ts';
import { loadReference } from '../../reference-file.ts';
import { intakeOver } from './intake.ts';
import { intakeQuestion } from './intake-question.ts';
import { notedNights } from './noted-nights.ts';
import { offeredOf, UNKNOWN_MIX } from './offered.ts';

const TODAY = '2026-03-20';
const ANIMAL = 'demo-animal';
const day = (n: number) => plusDays(TODAY, n);
const house = fedHousehold(TODAY);
const [millet, oats] = ['millet', 'rolled-oats'];
let reference: Reference;
beforeAll(() => {
  reference = loadReference();
});

const withFeedings = (...feedings: Feeding[]): Household => ({ ...house, feedings });
const left = (on: string, rest: Partial<WeighBack>): WeighBack => ({ on: plusDays(on, 1), ...rest });
const over = (kept: Household, from: string, to: string) => intakeOver(kept, ANIMAL, from, to, { reference });
const exactly = (range: { low: number; high: number } | undefined, value: number) => {
  expect(range?.low).toBeCloseTo(value, 9);
  expect(range?.high).toBeCloseTo(value, 9);
};

describe('what a feeding offered', () => {
  it('is the mix as it was poured, and what was beside it', () => {
    const [batch] = house.batches;
    if (!batch) throw new Error('no batch');
    const pours = batch.pours.map((p) => (p.food === millet ? { ...p, grams: 30 } : p));
    const uneven = { ...house, batches: [{ ...batch, pours }] };
    const { foods, mix } = offeredOf(uneven, fedOn(day(-1)));
    expect(mix).toBe('poured');
    expect(foods.reduce((sum, f) => sum + f.grams, 0)).toBeCloseTo(MIX_A_DAY + PELLET_A_DAY, 9);
    expect(foods[0]).toMatchObject({ name: 'Millet', from: 'mix' });
    expect(foods[0]?.grams).toBeCloseTo((MIX_A_DAY * 30) / 315, 9);
    expect(foods.at(-1)).toMatchObject({ name: 'Invented pellet', grams: PELLET_A_DAY, from: 'beside' });
  });

  it('is the planned mix where nobody knows the batch, and one unknown food where there are several mixes', () => {
    const { mix: _, ...bare } = fedOn(day(-1));
    const fed = { ...bare, mix: { grams: 8 } };
    expect(offeredOf(house, fed)).toMatchObject({ mix: 'planned' });
    expect(offeredOf(house, fed).foods.filter((f) => f.from === 'mix')).toHaveLength(20);
    const [mix] = house.mixes;
    const two = { ...house, mixes: mix ? [mix, { ...mix, id: 'other' }] : [] };
    const unknown = offeredOf(two, fed);
    expect(unknown.mix).toBe('unknown');
    expect(unknown.foods[0]).toMatchObject({ food: UNKNOWN_MIX, grams: 8 });
    expect(offeredOf(house, bare)).toMatchObject({ mix: 'none' });
  });
});

describe('nights', () => {
  it('are those whose left-overs were noted; several may be looked at together', () => {
    const kept = withFeedings(
      fedOn(day(-5), left(day(-5), { bowl: { grams: 2 } })),
      fedOn(day(-4)),
      fedOn(day(-2), left(day(-2), { since: day(-4), bowl: { grams: 5 } })),
      fedOn(day(-1)),
    );
    expect(notedNights(kept, ANIMAL).map((n) => [n.since, n.on, n.feedings.length, n.unticked])).toEqual([
      [day(-5), day(-5), 1, 0],
      [day(-4), day(-2), 2, 1],
    ]);
    const intake = over(kept, day(-9), TODAY);
    expect(intake.nights).toEqual({ fed: 4, noted: 2, unticked: 1 });
    expect(intake.grams.offered).toBeCloseTo(36, 9);
    exactly(intake.grams.taken, 29);
  });

  it('do not count again what an earlier look had taken away', () => {
    const kept = withFeedings(
      fedOn(day(-3), left(day(-3), { bowl: { grams: 2 } })),
      fedOn(day(-2), left(day(-2), { since: day(-3), bowl: { grams: 1 } })),
    );
    expect(notedNights(kept, ANIMAL).map((n) => [n.since, n.on])).toEqual([
      [day(-3), day(-3)],
      [day(-2), day(-2)],
    ]);
  });

  it('of other animals do not count', () => {
    const other = fedOn(day(-1), left(day(-1), { bowl: { grams: 2 } }), 'another');
    expect(over(withFeedings(other), day(-9), TODAY).nights.noted).toBe(0);
  });
});

describe('what was eaten', () => {
  it('where all was sorted and hoards counted: eaten + left = offered, for every food and nutrient', () => {
    const bowl = { parts: { [millet]: 0.25, 'demo-pellet': 1.5 }, sorted: true as const };
    const hoard = { parts: { [oats]: 0.2 }, sorted: true as const };
    const kept = withFeedings(
      fedOn(day(-3), left(day(-3), { bowl, hoard: { grams: 0 } })),
      fedOn(day(-2), left(day(-2), { bowl })),
      fedOn(day(-1), left(day(-1), { bowl, hoard })),
    );
    const intake = over(kept, day(-9), TODAY);
    expect(intake.hoard).toBe('counted');
    expect(intake.sortedBy).toBe('eaten');
    for (const food of intake.foods) {
      const gone = { Millet: 0.75, 'Invented pellet': 4.5, 'Rolled oats': 0.2 }[food.name] ?? 0;
      exactly(food.eaten, food.offered - gone);
    }
    exactly(intake.grams.eaten, 36 - 0.75 - 4.5 - 0.2);
    expect(intake.nutrients.length).toBeGreaterThan(20);
    for (const n of intake.nutrients) {
      expect(n.eaten.amount.low + n.left.low, n.tag).toBeCloseTo(n.offered.amount.low, 6);
      expect(n.eaten.amount.high + n.left.high, n.tag).toBeCloseTo(n.offered.amount.high, 6);
    }
    // Counted out by hand for one nutrient that is known of all: g of fat.
    const fat = intake.nutrients.find((n) => n.tag === 'FAT');
    const [batch] = kept.batches;
    const byHand = intake.foods.reduce((sum, f) => {
      const made = [...(batch?.problem.foods ?? []), ...(batch?.problem.beside ?? [])].find(
        (one) => (one.name ?? one.id) === f.name,
      );
      return made ? sum + (f.eaten.low * foodAmounts(made, reference).amount('FAT').value) / 100 : sum;
    }, 0);
    exactly(fat?.eaten.amount, byHand);
    expect(fat?.eaten.coverage).toBeCloseTo(100, 6);
    exactly(fat?.eaten.content, (100 * byHand) / intake.grams.eaten.low);
  });

  it('nobody having looked for hoards, is what was taken at most', () => {
    const intake = over(withFeedings(fedOn(day(-1), left(day(-1), { bowl: { grams: 3 } }))), day(-9), TODAY);
    expect(intake.hoard).toBe('unknown');
    exactly(intake.grams.taken, 9);
    expect(intake.grams.eaten.low).toBe(0);
    expect(intake.grams.eaten.high).toBeCloseTo(9, 9);
    expect(intake.advice.map((a) => a.kind)).toContain('hoard');
  });

  it('of one night, with a hoard that other nights may have filled, is a range', () => {
    const kept = withFeedings(
      fedOn(day(-3), left(day(-3), { bowl: { grams: 0 }, hoard: { grams: 0 } })),
      fedOn(day(-2), left(day(-2), { bowl: { grams: 2 } })),
      fedOn(day(-1), left(day(-1), { bowl: { grams: 2 }, hoard: { grams: 3 } })),
    );
    const { eaten } = over(kept, day(-1), day(-1)).grams;
    expect(eaten.low).toBeCloseTo(7, 9);
    expect(eaten.high).toBeCloseTo(10, 9);
    const both = over(kept, day(-2), day(-1));
    expect(both.hoard).toBe('counted');
    exactly(both.grams.eaten, 17);
    // A night of which nobody noted the left-overs may have filled it too.
    const gap = { ...kept, feedings: kept.feedings.map((f) => (f.on === day(-2) ? fedOn(day(-2)) : f)) };
    expect(over(gap, day(-9), TODAY).hoard).toBe('in-part');
  });

  it('of nights of which only some had their hoards counted is a range', () => {
    const kept = withFeedings(
      fedOn(day(-2), left(day(-2), { bowl: { grams: 2 }, hoard: { grams: 0 } })),
      fedOn(day(-1), left(day(-1), { bowl: { grams: 2 } })),
    );
    const intake = over(kept, day(-9), TODAY);
    expect(intake.hoard).toBe('in-part');
    expect(intake.sortedBy).toBe('taken');
    expect(intake.grams.eaten.low).toBeCloseTo(10, 9);
    expect(intake.grams.eaten.high).toBeCloseTo(20, 9);
    expect(intake.advice.map((a) => a.kind)).not.toContain('hoard');
  });

  it('says so where nobody had looked for hoards before', () => {
    const kept = withFeedings(fedOn(day(-1), left(day(-1), { bowl: { grams: 2 }, hoard: { grams: 3 } })));
    const intake = over(kept, day(-9), TODAY);
    exactly(intake.grams.eaten, 7);
    expect(intake.olderHoard).toBe(true);
  });

  it('of a mix that nobody knows is of unknown make: never nothing of a nutrient, and not covered', () => {
    const { mix: _, ...bare } = fedOn(day(-1), left(day(-1), { bowl: { grams: 0 }, hoard: { grams: 0 } }));
    const kept = { ...withFeedings({ ...bare, mix: { grams: 6 } }), mixes: [] };
    const intake = over(kept, day(-9), TODAY);
    expect(intake.mix).toBe('unknown');
    const protein = intake.nutrients.find((n) => n.tag === 'PROCNT');
    expect(protein?.eaten.coverage).toBeCloseTo(50, 6);
    expect(protein?.eaten.amount.low).toBeCloseTo(0.17 * PELLET_A_DAY, 9);
    expect(protein?.eaten.amount.high).toBeGreaterThan(2 * (protein?.eaten.amount.low ?? 0));
  });

  it('calls for a vet by the last nights, and no more once they are past', () => {
    const usual = Array.from({ length: 5 }, (_, i) =>
      fedOn(day(-7 + i), left(day(-7 + i), { bowl: { grams: 2 } })),
    );
    const bad = fedOn(day(-1), left(day(-1), { bowl: { grams: 10.5 } }));
    const kept = withFeedings(...usual, bad);
    expect(over(kept, day(-13), TODAY).advice[0]).toMatchObject({ kind: 'vet', soon: 'today' });
    expect(over(kept, day(-13), day(5)).advice[0]?.kind).not.toBe('vet');
  });

  it('is asked with plain data, which comes back the same over any line', () => {
    const kept = withFeedings(
      fedOn(day(-1), left(day(-1), { bowl: { parts: { [millet]: 0.1 }, grams: 3 }, hoard: { grams: 1 } })),
    );
    const asked = intakeQuestion(kept, ANIMAL, { from: day(-9), to: TODAY });
    expect(JSON.parse(JSON.stringify(asked))).toEqual(asked);
  });
});
