import { describe, expect, it } from 'vitest';
import { fedHousehold, fedOn } from '../../../../test/household/fed-household.ts';
import type { Feeding, WeighBack } from '../../../care/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import { nightWords } from './night-words.ts';
import {
  foodsOf,
  gramsOf,
  gramsOffered,
  nightsNoted,
  nightToNote,
  offerFor,
  sinceChoices,
  withBowl,
  withHoard,
  withoutLeft,
} from './view-model.ts';

const TODAY = '2026-03-20';
const day = (n: number) => plusDays(TODAY, n);
const house = fedHousehold(TODAY);
const [animal] = house.animals;
if (!animal) throw new Error('no animal');
const ID = animal.id;
const fed = (...feedings: Feeding[]) => ({ ...house, feedings });
const left = (n: number, bowl: WeighBack['bowl']): WeighBack => ({ on: day(n + 1), bowl });

describe('the night that is asked about', () => {
  it('is last night, until that is noted and today’s food was ticked off', () => {
    expect(nightToNote(fed(), ID, TODAY)).toBe(day(-1));
    expect(nightToNote(fed(fedOn(TODAY)), ID, TODAY)).toBe(day(-1));
    const noted = fedOn(day(-1), left(-1, { grams: 0 }));
    expect(nightToNote(fed(noted), ID, TODAY)).toBe(day(-1));
    expect(nightToNote(fed(noted, fedOn(TODAY)), ID, TODAY)).toBe(TODAY);
    expect(nightToNote(fed(noted, fedOn(TODAY, left(0, { grams: 1 }))), ID, TODAY)).toBe(day(-1));
  });
});

describe('what was offered', () => {
  const usual = {
    mix: { batch: house.batches[0] as (typeof house.batches)[number], name: 'batch 1', grams: 6.04 },
    beside: [{ food: 'demo-pellet', name: 'Invented pellet', grams: 5.96 }],
  };

  it('is what was ticked off, else the usual meal, else left open', () => {
    expect(offerFor(fed(fedOn(day(-1))), animal, day(-1), undefined)).toMatchObject({ from: 'ticked' });
    const offer = offerFor(fed(), animal, day(-1), usual);
    expect(offer).toEqual({
      from: 'usual',
      mix: { batchId: 'batch-1', grams: 6 },
      beside: [{ food: 'demo-pellet', grams: 6 }],
    });
    const nobody = offerFor(fed(), animal, day(-1), undefined);
    expect(nobody.from).toBe('nobody');
    expect(gramsOffered(nobody)).toBe(0);
    expect(nobody.beside.map((b) => b.food)).toEqual(['demo-pellet']);
  });

  it('names each food once, under the id that its mix has', () => {
    const { foods, mix } = foodsOf(house, ID, offerFor(fed(), animal, day(-1), usual));
    expect(mix).toBe('poured');
    expect(foods).toHaveLength(21);
    expect(foods[0]).toMatchObject({ id: 'demo-pellet', name: 'Invented pellet', grams: 6 });
    expect(foods.map((f) => f.id)).toContain('millet');
  });

  it('is kept with what was left, and only as far as it was anything', () => {
    const offer = { ...offerFor(fed(), animal, day(-1), usual), beside: [{ food: 'demo-pellet', grams: 0 }] };
    const noted = { animalId: ID, on: day(-1), today: TODAY, offer };
    const kept = withBowl(undefined, noted, { grams: 2 });
    expect(kept).toEqual({
      id: `${day(-1)}.${ID}`,
      animalId: ID,
      on: day(-1),
      mix: { batchId: 'batch-1', grams: 6 },
      beside: [],
      left: { on: TODAY, bowl: { grams: 2 } },
    });
    const hoard = withHoard(kept, noted, { grams: 1 });
    expect(hoard.left).toEqual({ on: TODAY, bowl: { grams: 2 }, hoard: { grams: 1 } });
    // Corrected, the hoard stays; food of several nights says since when.
    expect(withBowl(hoard, { ...noted, since: day(-3) }, { grams: 3 }).left).toEqual({
      on: TODAY,
      since: day(-3),
      bowl: { grams: 3 },
      hoard: { grams: 1 },
    });
    expect(withBowl(hoard, noted, { grams: 3 }).left).not.toHaveProperty('since');
    expect(withoutLeft(kept)).toBeUndefined();
    expect(withoutLeft(fedOn(day(-1), left(-1, { grams: 1 })))).toEqual(fedOn(day(-1)));
  });
});

describe('nights noted', () => {
  it('stand the latest first, in words', () => {
    const kept = fed(
      fedOn(day(-3), left(-3, { grams: 0 })),
      fedOn(day(-2)),
      fedOn(day(-1), { ...left(-1, { grams: 2, mostly: ['millet'] }), hoard: { grams: 1.5 } }),
    );
    const nights = nightsNoted(kept, ID);
    expect(nights.map((f) => f.on)).toEqual([day(-1), day(-3)]);
    const words = nights.map((f) => nightWords(f, foodsOf(kept, ID, { ...f, from: 'ticked' }).foods));
    expect(words).toEqual(['2 g left of 12 g, mostly left: Millet and hoard 1.5 g', 'nothing left']);
  });

  it('may be looked at together back to the last that was', () => {
    const kept = fed(fedOn(day(-4), left(-4, { grams: 0 })), fedOn(day(-2)));
    expect(sinceChoices(kept, ID, day(-1))).toEqual([day(-2), day(-3)]);
    expect(sinceChoices(fed(), ID, day(-1))).toHaveLength(6);
    expect(sinceChoices(fed(fedOn(day(-2), left(-2, { grams: 0 }))), ID, day(-1))).toEqual([]);
  });

  it('have grams where they were weighed as a whole, or all of it sorted', () => {
    expect(gramsOf({ grams: 3 })).toBe(3);
    expect(gramsOf({ parts: { millet: 1, pea: 2 }, sorted: true })).toBe(3);
    expect(gramsOf({ parts: { millet: 1 } })).toBeUndefined();
  });
});
