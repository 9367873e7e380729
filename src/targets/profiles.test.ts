import { describe, expect, it } from 'vitest';
import type { Tag } from '../nutrition/nutrients.ts';
import { NRC_HAMSTER, NRC_RAT } from './nrc.ts';
import { PROFILES, profile } from './profiles.ts';

const bound = (id: string, tag: Tag) => profile(id)!.bounds.find((b) => b.nutrient === tag)!;

describe('every profile', () => {
  it('has its own id, the default first; ids of old households stay known', () => {
    const ids = PROFILES.map((p) => p.id);
    expect(ids).toEqual([
      'hamster-adult-crude',
      'hamster-adult',
      'hamster-adult-limits',
      'hamster-nrc',
      'mouse-nrc',
      'mouse-nrc-breeding',
      'gerbil',
      'rat',
      'rat-nrc',
    ]);
    expect(profile('no such profile')).toBeUndefined();
  });

  it.each(PROFILES)('$id bounds each nutrient once, possibly, with a source', ({ bounds, fibre }) => {
    expect(new Set(bounds.map((b) => b.nutrient ?? b.ratio?.join())).size).toBe(bounds.length);
    for (const b of bounds) {
      expect(b.source.length).toBeGreaterThan(10);
      expect(b.min ?? b.max).toBeGreaterThan(0);
      expect(b.max ?? Infinity).toBeGreaterThan(b.min ?? 0);
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
    ['hamster-nrc', 'VITD', 6.21],
    ['hamster-nrc', 'BIOT', 60],
    ['hamster-nrc', 'VITB12', 2],
    ['hamster-nrc', 'FOL', 200],
    ['mouse-nrc', 'PROCNT', 18],
    ['mouse-nrc', 'F18D2CN6', 0.68],
    ['mouse-nrc', 'VITA_RAE', 72],
    ['mouse-nrc', 'VITD', 2.5],
    ['mouse-nrc', 'TOCPHA', 2.2],
    ['mouse-nrc', 'VITK1', 100],
    ['mouse-nrc', 'BIOT', 20],
    ['mouse-nrc', 'SE', 15],
    ['mouse-nrc', 'LYS', 400],
    ['mouse-nrc', 'PHE', 760],
    ['mouse-nrc', 'ZN', 1],
    ['mouse-nrc-breeding', 'ZN', 3],
    ['mouse-nrc-breeding', 'CU', 0.8],
    ['mouse-nrc-breeding', 'CA', 500],
    ['mouse-nrc', 'CHOLN', 200],
    ['gerbil', 'MG', 150],
    ['rat', 'PROCNT', 16.3],
    ['rat', 'FAT', 5],
    ['rat', 'THIA', 0.4],
    ['rat-nrc', 'PROCNT', 15],
    ['rat-nrc', 'K', 360],
    ['rat-nrc', 'VITB12', 5],
  ] as const)('%s %s: %d per 100 g at 10 %% moisture', (id, tag, per100g) => {
    const { min, basis, source } = bound(id, tag);
    expect(min).toBeCloseTo(per100g / 0.9, 3 - Math.ceil(Math.log10(per100g)));
    expect(min! * 0.9).toBeCloseTo(per100g, 3);
    expect(basis).toBe('DM');
    expect(source).toContain('10 % moisture');
  });

  it('says so where figures are from memory', () => {
    const memory = (id: string) => profile(id)!.bounds.filter((b) => b.source.includes('from memory'));
    expect(memory('hamster-nrc').map((b) => b.nutrient)).toEqual(NRC_HAMSTER.map((n) => n.nutrient));
    // The limits of law and practice were looked up, and may close a figure from memory.
    expect(memory('rat-nrc').map((b) => b.nutrient)).toEqual(NRC_RAT.map((n) => n.nutrient));
    for (const { id } of PROFILES)
      if (id !== 'hamster-nrc' && id !== 'rat-nrc') expect(memory(id), id).toEqual([]);
  });

  it('has amino acids in mg and vitamin K1 in ug', () => {
    const per100g = (tag: Tag) => bound('hamster-nrc', tag).min! * 0.9;
    expect(per100g('LYS')).toBeCloseTo(1200, 1);
    expect(per100g('TRP')).toBeCloseTo(340, 1);
    expect(per100g('VITK1')).toBeCloseTo(1100, 1);
  });

  it('tells menadione and phylloquinone apart', () => {
    for (const id of ['hamster-nrc', 'mouse-nrc'])
      expect(bound(id, 'VITK1').source).toContain('phylloquinone');
    expect(bound('hamster-nrc', 'VITK1').source).toMatch(/menadione.*not counted/);
  });
});

describe('gerbil and rat', () => {
  it('says of every range of a hamster that it is one', () => {
    for (const tag of ['PROCNT', 'FAT', 'FIBC'] as const)
      expect(bound('gerbil', tag).source).toMatch(/hamster's, taken for want of a figure for gerbils/);
    expect(bound('gerbil', 'MG').source).toMatch(/chapter 6 \(gerbil\), as quoted/);
  });

  it('says where the figures of the rat were read', () => {
    expect(bound('rat', 'PROCNT').source).toContain('Goettsch 1960');
    expect(bound('rat', 'F18D2CN6').source).toContain('NRC 1978');
    expect(bound('rat', 'THIA').source).toContain('as quoted on another page');
  });
});

describe('upper limits', () => {
  it.each([
    ['SE', 50 / 0.88],
    ['VITD', 5 / 0.88],
  ] as const)('%s per 100 g of dry matter', (tag, most) => {
    for (const id of ['hamster-adult-limits', 'mouse-nrc', 'mouse-nrc-breeding']) {
      expect(bound(id, tag)).toMatchObject({ max: Number(most.toPrecision(6)), basis: 'DM' });
      expect(bound(id, tag).source).toContain('(EU)');
    }
  });

  it('leave the least amount of the same nutrient and its source where they are', () => {
    expect(bound('mouse-nrc', 'SE')).toMatchObject({ min: 16.6667, max: 56.8182 });
    expect(bound('mouse-nrc', 'SE').source).toMatch(/^NRC 1995.*At most: .*2020\/2117/);
  });

  it('bound calcium against phosphorus, retinol and the energy of a mouse’s diet', () => {
    const ratio = profile('hamster-adult-limits')!.bounds.find((b) => b.ratio);
    expect(ratio).toMatchObject({ ratio: ['CA', 'P'], min: 1, max: 2 });
    expect(bound('hamster-adult-limits', 'RETOL')).toMatchObject({ max: 1200, basis: 'as fed' });
    expect(bound('mouse-nrc', 'ENERC_KCAL')).toMatchObject({ min: 422.222, max: 455.556, basis: 'DM' });
  });
});
