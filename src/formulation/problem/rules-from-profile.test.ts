import { describe, expect, it } from 'vitest';
import { profile } from '../../targets/profiles.ts';
import { rulesFrom } from './rules-from-profile.ts';

describe('rules from a profile', () => {
  it('bind the ration, each with its source', () => {
    expect(rulesFrom(profile('hamster-adult-crude')!)[0]).toEqual({
      nutrient: 'PROCNT',
      min: 17,
      max: 19,
      on: 'ration',
      source: 'common practice, no source',
    });
    expect(rulesFrom(profile('hamster-adult')!).every((rule) => rule.on === 'ration')).toBe(true);
  });

  it('keep the basis and ratios', () => {
    expect(rulesFrom(profile('mouse-nrc')!)[0]).toMatchObject({ nutrient: 'PROCNT', min: 20, basis: 'DM' });
    const own = {
      ...profile('hamster-adult')!,
      bounds: [{ ratio: ['CA', 'P'], min: 1, basis: 'DM', source: 'mine' }],
    } as const;
    expect(rulesFrom(own)).toEqual([{ ratio: ['CA', 'P'], min: 1, on: 'ration', source: 'mine' }]);
    expect(() => rulesFrom({ ...own, bounds: [{ min: 1, basis: 'DM', source: 'mine' }] })).toThrow('neither');
  });

  it('per 1000 kcal hold against the energy, and keep the words of their bound', () => {
    const own = {
      id: 'own',
      bounds: [{ nutrient: 'F18D2CN6', min: 1.8, basis: 'per 1000 kcal', source: 'mine' }],
    } as const;
    expect(rulesFrom(own)).toEqual([
      {
        ratio: ['F18D2CN6', 'ENERC_KCAL'],
        min: 0.0018,
        on: 'ration',
        source: 'at least 1.8 g per 1000 kcal; mine',
      },
    ]);
  });

  it('say what the keeper confirmed a figure against', () => {
    const confirmed = { against: 'the printed book', on: '2026-03-14' };
    const [rule] = rulesFrom({
      id: 'own',
      bounds: [{ nutrient: 'CA', min: 1, basis: 'DM', source: 'x', confirmed }],
    });
    expect(rule?.source).toBe('x; confirmed by the keeper against the printed book on 2026-03-14');
  });
});
