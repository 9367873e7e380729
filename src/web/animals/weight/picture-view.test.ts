import { describe, expect, test } from 'vitest';
import type { WeightPoint, WeightStory } from '../../../care/weight/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import { windowUntil } from '../timeline/time-window.ts';
import { marksOf, scaleOf } from './picture-view.ts';

const TODAY = '2026-03-10';
const dayAt = (at: string) => at.slice(0, 10);

function point(day: string, grams: number, unlikely = false): WeightPoint {
  return { id: `${day} ${grams}`, day, at: `${day}T20:00:00Z`, grams, unlikely };
}
function storyOf(points: readonly WeightPoint[]): WeightStory {
  const trend = points
    .filter((p) => !p.unlikely)
    .map(({ day, grams }) => ({ day, grams, low: grams - 2, high: grams + 2 }));
  return { points, trend, alerts: [], past: [] };
}

/** One weighing a day for ten years. */
const daily = storyOf(
  Array.from({ length: 3650 }, (_, i) => point(plusDays(TODAY, i - 3649), 140 + (i % 7))),
);

describe('the marks of the picture', () => {
  test('are single weighings of the stretch, each with the trend of its day', () => {
    const month = windowUntil('month', TODAY);
    const marks = marksOf(daily, month, dayAt);
    expect(marks).toHaveLength(31);
    for (const m of marks) {
      expect(m.low).toBe(m.high);
      expect(m.trend?.day).toBe(m.day);
      expect(m.day >= month.first && m.day <= month.last).toBe(true);
    }
  });

  test('are weeks in a year: every weighing in one of them, none twice', () => {
    const marks = marksOf(daily, windowUntil('year', TODAY), dayAt);
    expect(marks.length).toBeLessThanOrEqual(53);
    expect(marks.reduce((n, m) => n + m.count, 0)).toBe(366);
    for (const m of marks.filter((one) => one.count === 7)) expect([m.low, m.high]).toEqual([140, 146]);
  });

  test('leave what is doubtful out of its week, and show it by itself', () => {
    const story = storyOf([point('2026-03-02', 142), point('2026-03-08', 412, true)]);
    const marks = marksOf(story, windowUntil('year', TODAY), dayAt);
    expect(marks.map((m) => [m.high, m.count, m.unlikely])).toEqual([
      [142, 1, false],
      [412, 1, true],
    ]);
  });
});

describe('the scale', () => {
  const month = windowUntil('month', TODAY);
  const scale = (story: WeightStory) => scaleOf(marksOf(story, month, dayAt), story.trend, month);

  test('holds weights and band, and no less than a tenth of the weight, so that grams look like grams', () => {
    const [low, high] = scale(storyOf([point('2026-03-02', 142), point('2026-03-03', 143)])) ?? [0, 0];
    expect(low).toBeLessThan(140);
    expect(high).toBeGreaterThan(145);
    expect(high - low).toBeGreaterThanOrEqual(0.1 * 142);
  });

  test('is not stretched by what is doubtful, unless there is nothing else', () => {
    const doubtful = point('2026-03-03', 412, true);
    expect(scale(storyOf([point('2026-03-02', 142), doubtful]))?.[1]).toBeLessThan(160);
    expect(scale(storyOf([doubtful]))?.[1]).toBeGreaterThan(412);
    expect(scale(storyOf([]))).toBeUndefined();
  });
});
