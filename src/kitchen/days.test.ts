import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countOfDays, dayInWords, dayNumber, dayOf, daysBetween, isDay, plusDays } from './days.ts';

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
