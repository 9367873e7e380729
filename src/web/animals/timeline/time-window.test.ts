import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, dayOf, daysBetween } from '../../../kitchen/days.ts';
import {
  canGoBack,
  canGoOn,
  isIn,
  moved,
  placeOf,
  type Span,
  ticksOf,
  windowAround,
  windowUntil,
} from './time-window.ts';

const TODAY = '2026-03-10';
const spans = fc.constantFrom<Span>('day', 'month', 'quarter', 'year');
const days = fc.integer({ min: 15_000, max: 20_522 }).map(dayOf);

describe('a stretch of days', () => {
  test('ends on the day that it is to end on', () => {
    expect(windowUntil('day', TODAY)).toEqual({ span: 'day', first: TODAY, last: TODAY });
    expect(windowUntil('month', TODAY)).toMatchObject({ first: '2026-02-08', last: TODAY });
    expect(daysBetween(windowUntil('year', TODAY).first, TODAY)).toBe(365);
  });

  test('holds the day round which it lies, and shows nothing that is still to come', () => {
    fc.assert(
      fc.property(spans, days, (span, day) => {
        const window = windowAround(span, day, TODAY);
        expect(isIn(window, day)).toBe(true);
        expect(window.last <= TODAY || window.last === day).toBe(true);
      }),
    );
  });

  test('moved back and on again is the same, and never goes beyond today', () => {
    fc.assert(
      fc.property(spans, days, (span, day) => {
        const window = windowUntil(span, day);
        const back = moved(window, -1, TODAY);
        expect(daysBetween(back.last, window.first)).toBe(1);
        expect(moved(back, 1, TODAY)).toEqual(window);
        expect(moved(window, 1, TODAY).last <= TODAY).toBe(true);
      }),
    );
  });

  test('says whether there is something before and after it', () => {
    const window = windowUntil('month', TODAY);
    expect(canGoOn(window, TODAY)).toBe(false);
    expect(canGoOn(moved(window, -1, TODAY), TODAY)).toBe(true);
    expect(canGoBack(window, '2026-02-07')).toBe(true);
    expect(canGoBack(window, '2026-02-08')).toBe(false);
    expect(canGoBack(window, undefined)).toBe(false);
  });
});

describe('the names on the axis', () => {
  test('are hours of one day, weeks of a month, firsts of months', () => {
    expect(ticksOf(windowUntil('day', TODAY), 4).map((t) => t.hour)).toEqual([0, 6, 12, 18]);
    expect(ticksOf(windowUntil('month', TODAY), 5).map((t) => t.day)).toEqual([
      '2026-02-08',
      '2026-02-15',
      '2026-02-22',
      '2026-03-01',
      '2026-03-08',
    ]);
    expect(ticksOf(windowUntil('quarter', TODAY), 4).map((t) => t.day)).toEqual([
      '2026-01-01',
      '2026-02-01',
      '2026-03-01',
    ]);
  });

  test('are never more than there is room for', () => {
    fc.assert(
      fc.property(spans, days, fc.integer({ min: 4, max: 12 }), (span, day, most) => {
        const ticks = ticksOf(windowUntil(span, day), most);
        expect(ticks.length).toBeLessThanOrEqual(most);
        expect(ticks.length).toBeGreaterThan(0);
      }),
    );
  });

  test('a moment lies in its day, as far on as the clock there', () => {
    const noon = new Date(2026, 2, 10, 12, 0).toISOString();
    expect(placeOf(noon, () => TODAY)).toBe(dayNumber(TODAY) + 0.5);
  });
});
