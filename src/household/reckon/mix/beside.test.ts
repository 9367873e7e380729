/** What is fed beside the mix: shares and grams in step with what the formulation reads. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cucumber, mix, pellet, reference, waterOf } from '../../../../test/mix/pellet-and-cucumber.ts';
import { parseProblem } from '../../../formulation/problem/parse.ts';
import { demoHousehold } from '../../demo.ts';
import type { Mix } from '../../model.ts';
import {
  addBeside,
  besideTotal,
  byGrams,
  byShare,
  countAirDry,
  countedPart,
  dailyOf,
  gramsOfShare,
  isFresh,
  LEAST_MIX,
  leastDaily,
  ownBeside,
  referenceBeside,
  removeBeside,
  roomFor,
  shareNow,
  shareOfGrams,
  withChoice,
  withDaily,
} from './beside.ts';

const shareOf = (m: Mix, id: string) => m.problem.beside.find((b) => b.id === id)?.share_of_ration;

describe('shares and grams', () => {
  it('are each other’s inverse', () => {
    const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 0.01, max: 1, noNaN: true }), (grams, daily, part) => {
        expect(gramsOfShare(shareOfGrams(grams, daily, part), daily, part)).toBeCloseTo(grams, 6);
      }),
    );
  });

  it('grams of a fresh food are read as the formulation reads them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 6, max: 40, noNaN: true }),
        fc.boolean(),
        (grams, daily, airDry) => {
          const fed = addBeside(withDaily(byShare(mix, pellet.id, 1), daily, waterOf), cucumber);
          const given = byGrams(countAirDry(fed, 'cucumber', airDry, waterOf), 'cucumber', grams, waterOf);
          fc.pre(shareOf(given, 'cucumber')! < 99);
          const { problem } = parseProblem(JSON.parse(JSON.stringify(given.problem)), reference);
          expect(shareOf(given, 'cucumber')).toBeCloseTo(problem.beside[1]!.share_of_ration, 9);
        },
      ),
    );
  });

  it('follow the whole ration of a day: grams stay; without it, shares stay', () => {
    const given = byGrams(
      withDaily(addBeside(byShare(mix, pellet.id, 10), cucumber), 12, waterOf),
      pellet.id,
      3,
      waterOf,
    );
    expect(shareOf(given, pellet.id)).toBeCloseTo(25, 9);
    const more = withDaily(given, 15, waterOf);
    expect(shareOf(more, pellet.id)).toBeCloseTo(20, 9);
    expect(more.problem.beside[0]!.grams_a_day).toBe(3);
    expect(shareOf(more, 'cucumber')).toBe(1);
    const none = withDaily(more, undefined, waterOf);
    expect(none.problem.beside[0]).not.toHaveProperty('grams_a_day');
    expect(shareOf(none, pellet.id)).toBeCloseTo(20, 9);
    expect(() => parseProblem(JSON.parse(JSON.stringify(none.problem)), reference)).not.toThrow();
  });

  it('without a whole ration of a day, grams are not taken', () => {
    expect(byGrams(mix, pellet.id, 3, waterOf)).toBe(mix);
  });

  it('a fresh food counts as the dry matter it brings, at the water of dry food', () => {
    const water = 95.23;
    expect(waterOf(cucumber)).toBe(water);
    expect(countedPart({ counts_as: 'air dry' }, water)).toBeCloseTo((100 - water) / 90, 12);
    expect(countedPart({}, water)).toBe(1);
    expect(countedPart({ counts_as: 'air dry' }, undefined)).toBe(1);
  });
});

describe('room', () => {
  it('whatever is fed within the room it is offered, the mix keeps its least part', () => {
    const percent = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(3), percent), { maxLength: 12 }), (steps) => {
        let m = byShare(mix, pellet.id, 0);
        for (const [i, part] of steps) {
          const id = i === 0 ? pellet.id : `food-${i}`;
          m = addBeside(m, { id, composition: {}, share_of_ration: 0 });
          m = byShare(m, id, part * roomFor(m.problem, id));
          expect(besideTotal(m.problem, undefined)).toBeLessThanOrEqual(100 - LEAST_MIX + 1e-9);
        }
      }),
    );
  });

  it('the least whole ration leaves the mix exactly its least part', () => {
    const given = byGrams(
      withDaily(addBeside(byShare(mix, pellet.id, 40), { ...cucumber, counts_as: 'air dry' }), 12, waterOf),
      'cucumber',
      5,
      waterOf,
    );
    const least = leastDaily(given.problem, waterOf);
    expect(besideTotal(withDaily(given, least, waterOf).problem, undefined)).toBeCloseTo(100 - LEAST_MIX, 9);
    expect(leastDaily(mix.problem, waterOf)).toBe(0);
  });

  it('nothing is fed twice, and what is taken out is gone', () => {
    const twice = addBeside(addBeside(mix, cucumber), { ...cucumber, share_of_ration: 9 });
    expect(twice.problem.beside.map((b) => b.share_of_ration)).toEqual([50, 1]);
    expect(addBeside(mix, { ...cucumber, id: mix.problem.foods[0]!.id })).toBe(mix);
    expect(removeBeside(twice, pellet.id).problem.beside.map((b) => b.id)).toEqual(['cucumber']);
  });
});

describe('what is added', () => {
  const own = demoHousehold().foods.find((f) => f.kind === 'pellet')!;
  const empty = { ...mix.problem, beside: [] };

  it('a second pellet begins with a little of the first one’s share, and the mix keeps its own', () => {
    const second = { ...own, id: 'second', name: 'Another pellet' };
    const fed = addBeside(mix, ownBeside(second, mix.problem));
    expect(fed.problem.beside.map((b) => b.share_of_ration)).toEqual([40, 10]);
    const third = { ...own, id: 'third' };
    const all = addBeside(fed, ownBeside(third, fed.problem));
    expect(all.problem.beside.map((b) => b.share_of_ration)).toEqual([30, 10, 10]);
    // What is given in grams, or may not be less, keeps its share: then half of the mix is the most.
    const fixed = byGrams(withDaily(byShare(mix, pellet.id, 98), 12, waterOf), pellet.id, 0.98 * 12, waterOf);
    expect(ownBeside(second, fixed.problem).share_of_ration).toBeCloseTo(0.5, 9);
    const least = withChoice(mix, pellet.id, 45, 60);
    expect(addBeside(least, ownBeside(second, least.problem)).problem.beside[0]!.share_of_ration).toBe(45);
  });

  it('begins with half the ration for a pellet, with little for others, and with no more than there is room', () => {
    expect(ownBeside(own, empty).share_of_ration).toBe(50);
    expect(ownBeside({ ...own, kind: 'mix' }, empty).share_of_ration).toBe(5);
    const full = byShare(mix, pellet.id, 97).problem;
    expect(referenceBeside(reference.get('sr28:20038')!, full).share_of_ration).toBe(2);
  });

  it('counts air dry where it is fresh, and has an id of its own', () => {
    const raw = referenceBeside(reference.get('sr28:11205')!, empty);
    expect(raw).toMatchObject({ id: 'beside-sr28-11205', share_of_ration: 1, counts_as: 'air dry' });
    expect(referenceBeside(reference.get('sr28:20038')!, empty)).not.toHaveProperty('counts_as');
    expect(isFresh(undefined)).toBe(false);
  });

  it('takes no dried food for a fresh one, and every fresh food for one', () => {
    const plain = reference.plainFoods();
    const ending = (form: string) => plain.filter((f) => f.name.endsWith(form));
    const water = (f: (typeof plain)[number]) => f.composition.WATER;
    expect(ending('dried').length).toBeGreaterThan(10);
    expect(ending('dried').filter((f) => isFresh(water(f)))).toEqual([]);
    expect(ending(', fresh').length).toBeGreaterThan(30);
    expect(ending(', fresh').filter((f) => !isFresh(water(f)))).toEqual([]);
    const apple = plain.find((f) => f.name === 'Apple, dried');
    expect(apple && referenceBeside(apple, empty)).not.toHaveProperty('counts_as');
  });
});

describe('a chosen share', () => {
  const chosen = withChoice(mix, pellet.id, 40, 60);

  it('is the program’s, and the written one before it has answered or where none is open', () => {
    const answer = { beside: { [pellet.id]: { share: 44.5 } } };
    expect(shareNow(chosen.problem.beside[0]!, answer)).toBe(44.5);
    expect(shareNow(chosen.problem.beside[0]!, undefined)).toBe(50);
    expect(shareNow(pellet, answer)).toBe(50);
  });

  it('loses its bounds with both of them', () => {
    const fixed = withChoice(chosen, pellet.id, undefined, undefined).problem.beside[0]!;
    expect(fixed).toEqual(pellet);
  });
});

describe('what the animals are fed a day', () => {
  const animals = [
    { id: 'a', name: 'Bramble', dailyGrams: 12 },
    { id: 'b', name: 'Hazel', dailyGrams: 7 },
    { id: 'c', name: 'Sorrel' },
  ];
  it('is summed and averaged over those of the mix for which it is said', () => {
    expect(dailyOf(animals, ['a', 'b', 'c'])).toEqual({ names: ['Bramble', 'Hazel'], sum: 19, mean: 9.5 });
    expect(dailyOf(animals, ['c'])).toBeUndefined();
  });
});
