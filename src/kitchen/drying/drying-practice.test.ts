import { describe, expect, it } from 'vitest';
import data from './drying.json' with { type: 'json' };
import { dryingCautions, dryKindOf, waysToDry } from './drying-practice.ts';

describe('the figures', () => {
  it('name a source each, and say so where there is none', () => {
    const rows = [...data.ways, ...data.loads];
    for (const { source, known } of rows) {
      expect([known, source.startsWith('common practice, no source')]).toEqual([
        known,
        known === 'common practice',
      ]);
    }
    for (const { source } of [...data.keeps, ...data.cautions, data.checks])
      expect(source).toMatch(/\b(1[89]|20)\d\d\b|common practice, no source|USDA|Agrodok|Extension/);
  });

  it('give a way of the trade and a published one for every kind, and for a dehydrator the published alone', () => {
    for (const kind of ['vegetable', 'leaf', 'herb', 'fruit'] as const) {
      expect(waysToDry(kind, 'oven').map((w) => w.known)).toEqual(['common practice', 'published']);
      expect(waysToDry(kind, 'dehydrator').map((w) => w.known)).toEqual(['published']);
    }
    expect(dryKindOf('herb')).toBe('herb');
    expect(dryKindOf(undefined)).toBe('vegetable');
  });

  it('warn of the oven only where it is an oven', () => {
    expect(dryingCautions('oven').some((c) => /children/.test(c.sentence))).toBe(true);
    expect(dryingCautions('dehydrator').map((c) => c.device)).not.toContain('oven');
    expect(dryingCautions('dehydrator').length).toBeGreaterThan(0);
  });
});
