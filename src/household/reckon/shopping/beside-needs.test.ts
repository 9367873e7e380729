import { describe, expect, it } from 'vitest';
import { demo, house, lot, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { besideNeeds } from './beside-needs.ts';

const PELLET = demo.foods[0]!.id;

describe('what is fed beside the mix', () => {
  const needs = (about: Parameters<typeof house>[0] = {}, grams = 300) =>
    besideNeeds(house(about), mix, grams, { under: under(today) });

  it('is wanted for the days that the batch lasts, less nothing: what is there is told apart', () => {
    // 300 g at half of 12 g a day are 50 days, and the other half of each day is pellet.
    expect(needs()).toEqual({
      foods: [{ food: PELLET, name: 'Invented pellet', grams: 300 }],
      cupboard: [],
      days: 50,
      unknown: [],
    });
    const lots = [lot(PELLET), lot('millet')];
    // Bought two days ago: two days of 6 g are counted as fed.
    expect(needs({ lots }).cupboard).toMatchObject([{ lot: { food: PELLET }, left: 488 }]);
  });

  it('is said to be unknown where nobody has said what an animal eats', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    expect(needs({ animals })).toEqual({ foods: [], cupboard: [], unknown: ['Invented pellet'] });
    const gone = demo.animals.map((a) => ({ ...a, gone: { how: 'died' as const, on: today } }));
    expect(needs({ animals: gone }).foods).toEqual([]);
  });

  it('takes the share that was chosen, and leaves out what is fresh', () => {
    const fresh = {
      ...mix,
      problem: {
        ...mix.problem,
        beside: [
          ...mix.problem.beside,
          { id: 'cucumber', name: 'Cucumber', share_of_ration: 1, counts_as: 'air dry' as const },
        ],
      },
    };
    const kept = house({ mixes: [fresh] });
    const answer = besideNeeds(kept, fresh, 300, { under: under(today), chosen: { [PELLET]: 39 } });
    expect(answer.foods.map((f) => f.food)).toEqual([PELLET]);
    // The mix is then 60 % of 12 g a day, so 300 g last 41.7 days; of the pellet 39 % of 12 g on each.
    expect(answer.days).toBeCloseTo(300 / 7.2, 9);
    expect(answer.foods[0]!.grams).toBeCloseTo((300 / 7.2) * 12 * 0.39, 9);
  });
});
