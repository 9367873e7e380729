/** The bound on the water of a mix, set, changed and taken out. */
import { describe, expect, test } from 'vitest';
import { MIX_MOISTURE } from '../../../kitchen/batch/mix-moisture.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { demoHousehold } from '../../demo.ts';
import { mostWater, withMostWater } from './keep-dry.ts';
import { withProfile } from './mix-edits.ts';

const mix = demoHousehold('2026-03-01T00:00:00Z').mixes[0]!;

describe('dry enough to keep', () => {
  test('is no rule until it is asked for, then one, then another, then none again', () => {
    expect(mostWater(mix)).toBeUndefined();
    const bound = withMostWater(mix, MIX_MOISTURE.most);
    expect(mostWater(bound)).toBe(12);
    expect(bound.problem.rules.at(-1)).toEqual({
      nutrient: 'WATER',
      max: 12,
      on: 'mix',
      source: MIX_MOISTURE.source,
    });
    const drier = withMostWater(bound, 9);
    expect(mostWater(drier)).toBe(9);
    expect(drier.problem.rules).toHaveLength(bound.problem.rules.length);
    expect(withMostWater(drier, undefined)).toEqual(mix);
  });

  test('stays when the mix gets another target', () => {
    const other = PROFILES.find((p) => p.id !== mix.profileId)!;
    expect(mostWater(withProfile(withMostWater(mix, 11), other))).toBe(11);
  });
});
