import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { plusDays } from '../../kitchen/days.ts';
import { ageInWords, ageOn, bornAbout, monthsOld, stageForAge } from './age.ts';

describe('how old an animal is', () => {
  it('is counted in days, months and years', () => {
    expect(ageInWords({ on: '2026-03-02' }, '2026-03-14')).toBe('12 days');
    expect(ageInWords({ on: '2026-03-13' }, '2026-03-14')).toBe('1 day');
    expect(ageInWords({ on: '2025-11-14' }, '2026-03-14')).toBe('4 months');
    expect(ageInWords({ on: '2024-12-01' }, '2026-03-14')).toBe('1 year 3 months');
    expect(ageInWords({ on: '2024-03-14' }, '2026-03-14')).toBe('2 years');
    expect(ageInWords({ on: '2024-03-15' }, '2026-03-14')).toBe('1 year 11 months');
    expect(ageInWords(bornAbout(15, '2026-03-14'), '2026-03-14')).toBe('about 1 year 3 months');
  });

  it('is nothing before it is born, and where nobody knows', () => {
    expect(ageInWords({ on: '2026-03-15' }, '2026-03-14')).toBeUndefined();
    expect(ageInWords(undefined, '2026-03-14')).toBeUndefined();
  });

  it('grows by the day and never goes back, and months go back to the day they came from', () => {
    const first = '2020-01-01';
    fc.assert(
      fc.property(fc.nat(2000), fc.nat(2000), fc.nat(60), (a, b, months) => {
        const born = plusDays(first, a);
        const now = plusDays(born, b);
        const [age, next] = [monthsOld(born, now)!, monthsOld(born, plusDays(now, 1))!];
        expect(next - age === 0 || next - age === 1).toBe(true);
        expect(ageOn(born, now)?.days).toBe(b);
        expect(monthsOld(bornAbout(months, now).on, now)).toBe(months);
      }),
      { numRuns: draws(2000, 200) },
    );
  });

  it('hints at a life stage, where keepers have a custom', () => {
    const now = '2026-03-14';
    expect(stageForAge('golden', '2026-02-01', now)).toBe('growing');
    expect(stageForAge('golden', '2025-12-14', now)).toBe('adult');
    expect(stageForAge('chinese', '2024-09-14', now)).toBe('old');
    expect(stageForAge('rat', '2026-02-01', now)).toBe('growing');
    expect(stageForAge('rat', '2024-02-01', now)).toBeUndefined();
    expect(stageForAge('other', '2026-02-01', now)).toBeUndefined();
    expect(stageForAge('golden', '2026-04-01', now)).toBeUndefined();
  });
});
