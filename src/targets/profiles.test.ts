import { describe, expect, it } from 'vitest';
import type { Tag } from '../nutrition/nutrients.ts';
import { PROFILES, profile } from './profiles.ts';

const bound = (id: string, tag: Tag) => profile(id)!.bounds.find((b) => b.nutrient === tag)!;

describe('every profile', () => {
  it('has its own id, the default first', () => {
    const ids = PROFILES.map((p) => p.id);
    expect(ids).toEqual(['hamster-adult', 'hamster-adult-crude', 'hamster-nrc', 'mouse-nrc']);
    expect(profile('no such profile')).toBeUndefined();
  });

  it.each(PROFILES)('$id bounds each nutrient once, possibly, with a source', ({ bounds, fibre }) => {
    expect(new Set(bounds.map((b) => b.nutrient)).size).toBe(bounds.length);
    for (const b of bounds) {
      expect(b.source.length).toBeGreaterThan(10);
      expect(b.min).toBeGreaterThan(0);
      if (b.max !== undefined) expect(b.max).toBeGreaterThan(b.min!);
    }
    const fibreTags = bounds.map((b) => b.nutrient).filter((tag) => tag === 'FIBTG' || tag === 'FIBC');
    expect(fibreTags).toEqual(fibre === 'none' ? [] : [fibre]);
  });
});

describe('the range of common practice', () => {
  it.each(['hamster-adult', 'hamster-adult-crude'])(
    '%s is three windows, as fed, and says it has no source',
    (id) => {
      const { bounds, fibre } = profile(id)!;
      expect(bounds.map((b) => [b.nutrient, b.min, b.max])).toEqual([
        ['PROCNT', 17, 19],
        ['FAT', 4, 7],
        [fibre, 6, 15],
      ]);
      for (const b of bounds)
        expect(b).toMatchObject({ basis: 'as fed', source: 'common practice, no source' });
    },
  );
});

describe('NRC needs', () => {
  // Per kg of diet as printed -> per 100 g in the tagname's unit -> divided by 0.9 to dry matter.
  it.each([
    ['hamster-nrc', 'PROCNT', 15],
    ['hamster-nrc', 'FE', 14],
    ['hamster-nrc', 'CA', 590],
    ['hamster-nrc', 'ID', 160],
    ['hamster-nrc', 'VITA_IU', 363.6],
    ['hamster-nrc', 'VITB12', 2],
    ['hamster-nrc', 'FOL', 200],
    ['mouse-nrc', 'PROCNT', 18],
    ['mouse-nrc', 'F18D2CN6', 0.68],
    ['mouse-nrc', 'VITA_RAE', 72],
    ['mouse-nrc', 'VITD', 2.5],
    ['mouse-nrc', 'VITK1', 100],
    ['mouse-nrc', 'SE', 15],
    ['mouse-nrc', 'CHOLN', 200],
  ] as const)('%s %s: %d per 100 g at 10 %% moisture', (id, tag, per100g) => {
    const { min, max, basis, source } = bound(id, tag);
    expect(min).toBeCloseTo(per100g / 0.9, 3 - Math.ceil(Math.log10(per100g)));
    expect(min! * 0.9).toBeCloseTo(per100g, 3);
    expect(max).toBeUndefined();
    expect(basis).toBe('DM');
    expect(source).toContain('10 % moisture');
  });

  it('says so where figures are from memory', () => {
    for (const b of profile('hamster-nrc')!.bounds) expect(b.source).toContain('from memory');
    for (const b of profile('mouse-nrc')!.bounds) expect(b.source).toContain('table 3-3');
  });
});
