/** The ratios of crude to dietary fibre follow from the pairs that stand beside them. */
import { describe, expect, test } from 'vitest';
import table from './data/fibre-estimates.json' with { type: 'json' };
import { FIBRE_ESTIMATES } from './fibre-ratio.ts';

interface Pair {
  readonly group: string;
  readonly FIBC: number;
  readonly FIBTG: number;
  readonly ratio: number;
  /** Foods that one line stands for; 1 unless written. */
  readonly foods?: number;
}
const pairs = table.pairs as readonly Pair[];
const groups = table.rows.map((row) => row.group);

const pairsOf = (group: string) =>
  pairs
    .filter((p) => group === 'any' || p.group === group)
    .flatMap((p) => Array.from({ length: p.foods ?? 1 }, () => p));

function median(values: readonly number[]): number {
  const rising = [...values].sort((a, b) => a - b);
  const middle = (rising.length - 1) / 2;
  return (rising[Math.floor(middle)]! + rising[Math.ceil(middle)]!) / 2;
}

test('a ratio is the crude over the dietary fibre of its pair, and never above 1', () => {
  for (const p of pairs) {
    expect(Math.abs(p.ratio - p.FIBC / p.FIBTG)).toBeLessThan(0.0006);
    expect(p.ratio).toBeLessThanOrEqual(1);
  }
});

describe.each(groups)('%s', (group) => {
  const { mean, low, high } = FIBRE_ESTIMATES[group]!;
  const ratios = pairsOf(group).map((p) => p.ratio);
  const ofSums = (of: 'FIBC' | 'FIBTG') => pairsOf(group).reduce((sum, p) => sum + p[of], 0);

  test('counts its pairs', () => {
    expect(table.rows.find((row) => row.group === group)!.n).toBe(ratios.length);
  });

  test('every pair lies within the bounds', () => {
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(low);
    expect(Math.max(...ratios)).toBeLessThanOrEqual(high);
  });

  test('the middle is no outlier’s doing: median and ratio of sums lie within 0.05 of it', () => {
    expect(Math.abs(mean - median(ratios))).toBeLessThanOrEqual(0.05);
    expect(Math.abs(mean - ofSums('FIBC') / ofSums('FIBTG'))).toBeLessThanOrEqual(0.05);
  });
});

test('the middle of legumes is moved by no single source by more than 0.03', () => {
  const { mean } = FIBRE_ESTIMATES.legume!;
  for (const left of pairs.filter((p) => p.group === 'legume')) {
    const others = pairsOf('legume').filter((p) => p !== left);
    expect(Math.abs(median(others.map((p) => p.ratio)) - mean)).toBeLessThanOrEqual(0.03);
  }
});
