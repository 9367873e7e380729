import { describe, expect, it } from 'vitest';
import { profile } from '../../targets/profiles.ts';
import { rulesFrom } from './rules-from-profile.ts';

describe('rules from a profile', () => {
  it('bind the ration, each with its source', () => {
    expect(rulesFrom(profile('hamster-adult')!)[0]).toEqual({
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
});
