/** Figures follow from their evidence: sources combined, gaps borrowed on request and given back with one step. */
import { expect, test } from 'vitest';
import { type Evidenced, type Lent, lenders, withEvidence } from './evidence.ts';
import type { FoodSource } from './sources/source.ts';

const source = (id: string, composition: FoodSource['composition']): FoodSource => ({
  id,
  name: id,
  basis: 'as fed',
  composition,
  sd: {},
});
const bare: Evidenced = { group: 'seed', composition: {}, sd: {} };
const lent: Lent = { from: 'sr28:20038', name: 'Oats', value: 54, sd: 20, source: 'borrowed from oats' };

test('one source is taken as it stands; two are combined, or one of them is chosen', () => {
  const one = withEvidence(bare, { sources: [source('a', { PROCNT: 12 })] });
  expect(one.composition).toEqual({ PROCNT: 12 });
  const sources = [source('a', { PROCNT: 12 }), source('b', { PROCNT: 14 })];
  expect(withEvidence(bare, { sources }).composition.PROCNT).toBeCloseTo(13, 9);
  expect(withEvidence(bare, { sources, choices: { PROCNT: 'b' } }).composition.PROCNT).toBe(14);
});

test('a choice falls with its source, and does not stand in the way', () => {
  const left = withEvidence(bare, { sources: [source('a', { PROCNT: 12 })], choices: { PROCNT: 'gone' } });
  expect(left.composition.PROCNT).toBe(12);
  expect(left.evidence?.choices).toEqual({});
});

test('a borrowed amount fills a gap, is named, and goes when taken back: with sources, and without', () => {
  const typed: Evidenced = { group: 'seed', composition: { PROCNT: 12 }, sd: {} };
  for (const evidence of [{ sources: [source('a', { PROCNT: 12 })] }, {}]) {
    const before = withEvidence(typed, evidence);
    expect(before.composition).toEqual({ PROCNT: 12 });
    const filled = withEvidence(before, { ...evidence, borrowed: { CA: lent } });
    expect(filled.composition).toEqual({ PROCNT: 12, CA: 54 });
    expect(filled.sd.CA).toBe(20);
    expect(lenders(filled)).toEqual({ CA: 'Oats (sr28:20038)' });
    const back = withEvidence(filled, { ...filled.evidence, borrowed: {} });
    expect(back.composition).toEqual({ PROCNT: 12 });
    expect(back.sd.CA).toBeUndefined();
    expect(lenders(back)).toEqual({});
  }
});

test('a source that gives the amount takes the place of a borrowed one', () => {
  const told = withEvidence(bare, { sources: [source('a', { CA: 60 })], borrowed: { CA: lent } });
  expect(told.composition.CA).toBe(60);
  expect(lenders(told)).toEqual({});
});

test('a bound is no value, and stays one', () => {
  const bounded: FoodSource = { ...source('a', {}), low: { PROCNT: 14 }, high: { FAT: 8 } };
  const food = withEvidence(bare, { sources: [bounded] });
  expect(food).toMatchObject({ composition: {}, low: { PROCNT: 14 }, high: { FAT: 8 } });
});
