import { describe, expect, test } from 'vitest';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { LeftNight } from '../../../household/reckon/care/left-nights.ts';
import type { Lifeline, LifeSpan } from '../../../household/reckon/care/lifeline.ts';
import { dayNumber, plusDays } from '../../../kitchen/days.ts';
import { windowUntil } from '../timeline/time-window.ts';
import { daysIn, eventsIn, leftBars, rowsOf, spansIn } from './life-view.ts';

const TODAY = '2026-03-10';
const month = windowUntil('month', TODAY);
const year = windowUntil('year', TODAY);
const NO_WEIGHTS: WeightStory = { points: [], trend: [], alerts: [], past: [] };

function condition(id: string, from: string, to?: string): LifeSpan {
  return {
    id,
    lane: 'condition',
    from,
    ...(to !== undefined && { to }),
    what: { is: 'condition', condition: { what: 'teeth', since: from } },
  };
}
const lifeOf = (about: Partial<Lifeline>): Lifeline => ({ spans: [], events: [], left: [], ...about });
const note = (on: string) => ({
  id: on,
  on,
  what: { is: 'note' as const, note: { id: on, animalId: 'a', on, kind: 'seen' as const, text: 'x' } },
});
const night = (on: string, part: number, atLeast = false): LeftNight => ({ on, part, atLeast, mostly: [] });

describe('spans in sight', () => {
  test('are cut at the edges of the stretch, and end today where they have no end', () => {
    const spans = [
      condition('long ago', '2025-01-01', '2025-02-01'),
      condition('into it', '2025-12-01', '2026-02-10'),
      condition('on', '2026-03-01'),
      condition('to come', '2026-04-01'),
    ];
    const shown = spansIn(lifeOf({ spans }), 'condition', month, TODAY);
    expect(shown.map((s) => [s.span.id, s.start, s.end, s.open])).toEqual([
      ['into it', dayNumber(month.first), dayNumber('2026-02-11'), false],
      ['on', dayNumber('2026-03-01'), dayNumber(TODAY) + 1, true],
    ]);
    expect(spansIn(lifeOf({ spans }), 'trial', month, TODAY)).toEqual([]);
  });

  test('that overlap lie in rows of their own, the others in the first that is free', () => {
    const spans = [
      condition('a', '2026-02-10', '2026-02-20'),
      condition('b', '2026-02-15', '2026-03-05'),
      condition('c', '2026-02-21', '2026-02-25'),
    ];
    const shown = spansIn(lifeOf({ spans }), 'condition', month, TODAY);
    expect(shown.map((s) => s.row)).toEqual([0, 1, 0]);
    expect(rowsOf(shown)).toBe(2);
    expect(rowsOf([])).toBe(0);
  });
});

describe('nights', () => {
  const left = [
    night('2026-03-01', 0.1),
    night('2026-03-02', 0.3, true),
    { on: '2026-03-03', atLeast: true, mostly: [] },
    night('2020-01-01', 0.9),
  ];

  test('are bars of a day each; one of which nothing was weighed is none', () => {
    expect(leftBars(left, month).map((b) => [b.start, b.end - b.start, b.part, b.atLeast])).toEqual([
      [dayNumber('2026-03-01'), 1, 0.1, false],
      [dayNumber('2026-03-02'), 1, 0.3, true],
    ]);
  });

  test('are weeks in a year, on the average, and at least that where one of them is', () => {
    const week = ['2026-02-23', '2026-02-24', '2026-02-25'];
    const bars = leftBars([night(week[0]!, 0.1), night(week[1]!, 0.2), night(week[2]!, 0.3, true)], year);
    expect(bars).toHaveLength(1);
    expect(bars[0]!.part).toBeCloseTo(0.2, 9);
    expect(bars[0]!.atLeast).toBe(true);
    const many = Array.from({ length: 3650 }, (_, i) => night(plusDays(TODAY, -i), 0.5));
    const all = leftBars(many, year);
    expect(all.length).toBeLessThanOrEqual(53);
    expect(Math.max(...all.map((b) => b.end))).toBe(dayNumber(TODAY) + 1);
  });
});

describe('days in words', () => {
  const story: WeightStory = {
    ...NO_WEIGHTS,
    points: [{ id: 'w', day: '2026-03-02', at: '2026-03-02T20:00:00Z', grams: 142, unlikely: false }],
  };
  const life = lifeOf({
    events: [note('2020-01-01'), note('2026-03-01'), note('2026-03-02')],
    left: [night('2026-03-02', 0.1), night('2026-03-04', 0.1)],
  });

  test('hold all of a day, the newest day first', () => {
    const days = daysIn(life, story, month);
    expect(days.map((d) => [d.day, d.events.length, d.weighings.length, d.left?.part])).toEqual([
      ['2026-03-04', 0, 0, 0.1],
      ['2026-03-02', 1, 1, 0.1],
      ['2026-03-01', 1, 0, undefined],
    ]);
    expect(eventsIn(life, month).map((e) => e.on)).toEqual(['2026-03-01', '2026-03-02']);
  });

  test('of a year are the events alone', () => {
    expect(daysIn(life, story, year).map((d) => [d.day, d.weighings.length, d.left])).toEqual([
      ['2026-03-02', 0, undefined],
      ['2026-03-01', 0, undefined],
    ]);
  });
});
