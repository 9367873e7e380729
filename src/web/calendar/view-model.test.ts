/** From a household to a calendar: what counts as the present batch, days that stand with lots, and moves. */
import { describe, expect, test } from 'vitest';
import { readyFoods } from '../../household/reckon/calendar/plan-notices.ts';
import { planKitchen } from '../../kitchen/calendar/plan-kitchen.ts';
import { byDay, dayWithWeekday, spanOf, strandsOf } from './view-model.ts';

const today = '2026-03-10';

describe('what is shown', () => {
  const supplies = [
    { id: 'old', route: 'ready' as const, boughtOn: '2026-01-01', goods: [{ food: 'a', name: 'Oats' }] },
    { id: 'new', route: 'freeze' as const, goods: ['b', 'c', 'd'].map((food) => ({ food, name: food })) },
  ];
  const plan = planKitchen({ id: 'p', name: 'batch 4', supplies }, { from: today });

  test('a line for what is to be done, the bowl for all of it, names for what is ready', () => {
    const { strands, bowl } = strandsOf(plan);
    expect(strands.map((s) => [s.title, s.steps.length])).toEqual([['b and 2 more', 5]]);
    expect(bowl.steps.map((s) => s.kind)).toEqual(['weigh', 'change-over']);
    expect(readyFoods(plan)).toEqual(['Oats']);
    expect(byDay(plan).map((d) => d.day)).toEqual([
      '2026-03-10',
      '2026-03-14',
      '2026-03-18',
      '2026-03-22',
      '2026-03-26',
      '2026-03-27',
    ]);
  });

  test('a span from today to the end; a far deadline does not press all else together', () => {
    const days = (until: string) => {
      const [a, b] = spanOf(
        planKitchen(
          {
            id: 'p',
            name: 'batch 4',
            supplies,
            present: { name: 'b', runsOut: { status: 'known', day: until, gramsADay: 1, sentence: '' } },
          },
          { from: today },
        ),
        today,
      );
      return b - a - 1;
    };
    expect(days('2026-04-20')).toBe(41);
    expect(days('2026-12-01')).toBe(31);
  });

  test('days with their weekday', () => {
    expect(dayWithWeekday('2026-03-14', today)).toBe('Saturday, 14 March');
    expect(dayWithWeekday('1969-12-31', '1969-01-01')).toBe('Wednesday, 31 December');
  });
});
