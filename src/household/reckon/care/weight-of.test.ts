import { expect, it } from 'vitest';
import { EMPTY } from '../../../../test/household/empty-household.ts';
import { dayNumber, dayOf } from '../../../kitchen/days.ts';
import type { Animal, Household } from '../../model.ts';
import { weightsOf } from './weight-of.ts';

const animal: Animal = {
  id: 'snow',
  name: 'Snow',
  species: 'winter white hamster',
  lifeStage: 'adult',
  profileId: 'p',
  refuses: [],
  daylight: true,
  invented: true,
};
const START = dayNumber('2026-01-19');
const weighings = Array.from({ length: 120 }, (_, i) => ({
  id: `w${i}`,
  animalId: i % 10 === 9 ? 'another' : 'snow',
  at: `${dayOf(START + i)}T18:00:00Z`,
  grams: Math.round(42 * (1 - 0.32 * (i < 20 ? 0 : (i - 20) / 130))),
}));
const under = { today: dayOf(START + 119), dayAt: (at: string) => at.slice(0, 10) };
const house: Household = { ...EMPTY, weighings };

it("is of the animal's own weighings, and knows its kind, its light and where the home lies", () => {
  const north = weightsOf(house, animal, under);
  expect(north.points).toHaveLength(108);
  expect(north.alerts.some((a) => a.way === 'loss')).toBe(true);
  const south = weightsOf({ ...house, keeper: [{ id: 'keeper', south: true }] }, animal, under);
  expect(south.expected).toBe('autumn');
  expect(south.alerts).toEqual([]);
});

it('knows what the animal is in', () => {
  const since = dayOf(START + 100);
  const carrying = { ...animal, conditions: [{ what: 'pregnant' as const, since }] };
  expect(weightsOf(house, carrying, { ...under, today: dayOf(START + 110) }).expected).toBe('pregnancy');
});

it('is worked out once for the day and the weighings of the animal, whatever else is weighed', () => {
  const story = weightsOf(house, animal, under);
  const weighed = (animalId: string) =>
    weightsOf(
      {
        ...house,
        weighings: [...weighings, { id: 'new', animalId, at: `${under.today}T20:00:00Z`, grams: 35 }],
      },
      animal,
      under,
    );
  expect(weightsOf(house, animal, under)).toBe(story);
  expect(weighed('another')).toBe(story);
  expect(weighed('snow')).not.toBe(story);
  expect(weighed('snow').points).toHaveLength(109);
  const corrected = weighings.map((w) => (w.id === 'w3' ? { ...w, grams: 43 } : w));
  expect(weightsOf({ ...house, weighings: corrected }, animal, under).points[3]?.grams).toBe(43);
  expect(weightsOf(house, animal, { ...under, today: dayOf(START + 120) })).not.toBe(story);
});
