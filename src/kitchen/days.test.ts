import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws } from '../../test/draws.ts';
import {
  countOfDays,
  dayInWords,
  dayNumber,
  dayOf,
  daysBetween,
  instant,
  isDay,
  midnight,
  plusDays,
  plusHours,
  plusMonths,
} from './days.ts';

const day = fc.integer({ min: -700_000, max: 2_900_000 }).map(dayOf);
const step = fc.integer({ min: -5000, max: 5000 });

describe('days', () => {
  test('of February, in leap years too', () => {
    expect(plusDays('2026-02-28', 1)).toBe('2026-03-01');
    expect(plusDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(plusDays('2100-02-28', 1)).toBe('2100-03-01');
    expect(daysBetween('2026-02-21', '2026-03-14')).toBe(21);
    expect(dayNumber('1970-01-01')).toBe(0);
  });

  test('of a change of clocks count like any other', () => {
    expect(plusDays('2026-03-28', 2)).toBe('2026-03-30');
    expect(daysBetween('2026-10-24', '2026-10-26')).toBe(2);
  });

  test('adding undoes subtracting, and the count between is what was added', () => {
    fc.assert(
      fc.property(day, step, (d, n) => {
        expect(plusDays(plusDays(d, n), -n)).toBe(d);
        expect(daysBetween(d, plusDays(d, n))).toBe(n);
        expect(d < plusDays(d, n)).toBe(n > 0);
      }),
    );
  });

  test.each(['2026-02-30', '2026-13-01', '2026-2-3', '26-02-03', '', '2026-02-28T00:00:00Z', '2027-02-29'])(
    '"%s" is none',
    (text) => {
      expect(isDay(text)).toBe(false);
      expect(() => dayNumber(text, 'from')).toThrow(`from: "${text}" is no day; write it as 2026-03-14`);
    },
  );

  test('are those of the calendar that the language has', () => {
    const two = fc.integer({ min: 0, max: 33 }).map((n) => String(n).padStart(2, '0'));
    const year = fc.integer({ min: 0, max: 9999 }).map((n) => String(n).padStart(4, '0'));
    const text = fc.oneof(
      day,
      fc.tuple(year, two, two).map((parts) => parts.join('-')),
      fc.string(),
    );
    fc.assert(
      fc.property(text, (written) => {
        const at = new Date(`${written}T00:00:00Z`);
        const is = !Number.isNaN(at.getTime()) && at.toISOString().slice(0, 10) === written;
        expect(isDay(written)).toBe(is);
        if (!is) return;
        expect(dayNumber(written)).toBe(at.getTime() / 86_400_000);
        expect(dayOf(dayNumber(written))).toBe(written);
      }),
      { numRuns: draws(20_000, 1000) },
    );
  });

  test('end with the year 9999', () => {
    expect(() => plusDays('9999-12-31', 1)).toThrow(RangeError);
    expect(() => plusDays('2026-01-01', 0.5)).toThrow(RangeError);
  });

  test('in words', () => {
    expect(dayInWords('2026-03-04', '2026-11-30')).toBe('4 March');
    expect(dayInWords('2027-01-04', '2026-11-30')).toBe('4 January 2027');
    expect(dayInWords('2026-12-31')).toBe('31 December 2026');
    expect([countOfDays(1), countOfDays(3), countOfDays(0)]).toEqual(['1 day', '3 days', '0 days']);
  });
});

describe('some months later', () => {
  test('keeps the day of the month, or takes the last there is', () => {
    expect(plusMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(plusMonths('2028-01-31', 1)).toBe('2028-02-29');
    expect(plusMonths('2027-12-31', 2)).toBe('2028-02-29');
    expect(plusMonths('2099-11-30', 3)).toBe('2100-02-28');
    expect(plusMonths('2028-02-29', 12)).toBe('2029-02-28');
    expect(plusMonths('2028-02-29', 48)).toBe('2032-02-29');
    expect(plusMonths('2026-03-31', 1)).toBe('2026-04-30');
    expect(plusMonths('2026-11-15', 3)).toBe('2027-02-15');
    expect(plusMonths('2026-03-31', 0)).toBe('2026-03-31');
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 30 }), (d, months) => {
        const later = plusMonths(d, months);
        const gone = dayNumber(later) - dayNumber(d);
        expect(gone).toBeGreaterThanOrEqual(months * 28);
        expect(gone).toBeLessThanOrEqual(months * 31);
        expect([Number(d.slice(8)), 28, 29, 30]).toContain(Number(later.slice(8)));
      }),
    );
  });
});

describe('moments', () => {
  test('some hours later, over midnight, month ends and leap days', () => {
    expect(plusHours('2026-03-14T09:30:00Z', 1.5)).toBe('2026-03-14T11:00:00.000Z');
    expect(plusHours('2028-02-28T23:30:00Z', 1)).toBe('2028-02-29T00:30:00.000Z');
    expect(plusHours('2026-12-31T23:59:00Z', 7 / 60)).toBe('2027-01-01T00:06:00.000Z');
    expect(midnight('2028-02-29').toISOString()).toBe('2028-02-29T00:00:00.000Z');
  });

  test.each(['soon', '2026-03-14', '2026-03-14T09:30', '2026-02-30T25:00:00Z'])('"%s" is none', (text) => {
    expect(() => instant(text, 'stamp')).toThrow(`stamp: "${text}" is no time`);
    expect(() => plusHours(text, 1)).toThrow(RangeError);
  });
});
