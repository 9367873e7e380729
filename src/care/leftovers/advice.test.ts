import { describe, expect, it } from 'vitest';
import { adviceOn, type NightTaken } from './advice.ts';
import type { SortingIndex } from './sorting-index.ts';

const night = (low: number, high = low, doubtful = false): NightTaken => ({ taken: { low, high }, doubtful });
const usual = [night(10), night(11), night(10), night(9)];
const vetOf = (...nights: NightTaken[]) =>
  adviceOn(nights, [], { hoard: true }).find((a) => a.kind === 'vet');
const index = (food: string, leaning: SortingIndex['leaning']): SortingIndex => ({
  food,
  leaning,
  value: 100,
  bounds: { low: 100, high: 100 },
  nights: 5,
});

describe('a vet', () => {
  it('is called for where much less than usual went, the sooner the less it was', () => {
    expect(vetOf(...usual, night(9))).toBeUndefined();
    expect(vetOf(...usual, night(5))).toBeUndefined();
    expect(vetOf(...usual, night(4.9))).toMatchObject({ soon: 'tomorrow', taken: 4.9, usual: 10 });
    expect(vetOf(...usual, night(4), night(4.5))).toMatchObject({ soon: 'today' });
    expect(vetOf(...usual, night(2))).toMatchObject({ soon: 'today' });
  });

  it('is called for today where nothing went at all, though nobody knows what is usual', () => {
    expect(vetOf(night(0))).toEqual({ kind: 'vet', soon: 'today', taken: 0 });
    expect(vetOf(night(3))).toBeUndefined();
  });

  it('is not called for by what merely was not weighed, nor by weights that cannot be', () => {
    expect(vetOf(...usual, night(0, 12))).toBeUndefined();
    expect(vetOf(...usual, night(0, 0, true))).toBeUndefined();
    expect(vetOf()).toBeUndefined();
  });
});

describe('other advice', () => {
  it('is to offer less of what is picked out and to change what is left, and never to starve it', () => {
    const kinds = adviceOn(usual, [index('seed', 'picked'), index('pea', 'left'), index('oats', 'even')], {
      hoard: true,
    });
    expect(kinds).toEqual([
      { kind: 'less', foods: ['seed'] },
      { kind: 'change', foods: ['pea'] },
      { kind: 'scatter' },
      { kind: 'never-starve' },
    ]);
  });

  it('names a few foods: of many that are left those that are left most, of many that are taken none', () => {
    const many = Array.from({ length: 8 }, (_, i) => ({ ...index(`f${i}`, 'left'), value: 80 - i }));
    const taken = Array.from({ length: 8 }, (_, i) => ({ ...index(`g${i}`, 'picked'), value: 120 + i }));
    const advice = adviceOn(usual, [...many, ...taken], { hoard: true });
    expect(advice[0]).toEqual({ kind: 'change', foods: ['f7', 'f6', 'f5', 'f4', 'f3'] });
    expect(adviceOn(usual, taken.slice(0, 2), { hoard: true })[0]).toEqual({
      kind: 'less',
      foods: ['g1', 'g0'],
    });
  });

  it('is to look for hoards where nobody did', () => {
    expect(adviceOn(usual, [], { hoard: false })).toEqual([{ kind: 'hoard' }]);
    expect(adviceOn(usual, [], { hoard: true })).toEqual([]);
  });
});
