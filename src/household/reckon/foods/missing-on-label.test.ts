import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../../foods/label/figures.ts';
import { readLabel } from '../../../foods/label/read.ts';
import { missingOnLabel, withAnswers } from './missing-on-label.ts';

const told = (label: string) => figuresOf(readLabel(label)).figures;

describe('what a label leaves open', () => {
  it('asks for the most of what is printed as "at least", and the least of what is printed as "at most"', () => {
    expect(missingOnLabel(told('Crude protein min. 16 %\nCrude fat min. 4 %\nCrude fibre max. 9 %'))).toEqual(
      [
        { tag: 'FAT', side: 'high', printed: 4 },
        { tag: 'PROCNT', side: 'high', printed: 16 },
        { tag: 'FIBC', side: 'low', printed: 9 },
      ],
    );
  });

  it('asks for what is not printed at all', () => {
    expect(missingOnLabel(told('Crude protein 16 %'))).toEqual([
      { tag: 'FAT', side: 'value' },
      { tag: 'FIBC', side: 'value' },
    ]);
    expect(missingOnLabel({ composition: {}, sd: {} }).map((m) => m.tag)).toEqual(['FAT', 'PROCNT', 'FIBC']);
  });

  it('asks nothing where all is printed, fibre in either measure', () => {
    expect(missingOnLabel(told('Rohprotein 16 %\nRohfett 4,2 %\nRohfaser 9 %'))).toEqual([]);
    expect(missingOnLabel({ composition: { PROCNT: 1, FAT: 1, FIBTG: 1 }, sd: {} })).toEqual([]);
  });
});

it('an answer to a missing most is a bound, and never the amount', () => {
  const figures = told('Crude protein 16 %\nCrude fat min. 4 %');
  const answered = withAnswers(figures, missingOnLabel(figures), { FAT: 6, FIBC: 9 });
  expect(answered.composition).toEqual({ PROCNT: 16, FIBC: 9 });
  expect(answered.low?.FAT).toBe(4);
  expect(answered.high?.FAT).toBe(6);
  const fibre = told('Crude fibre max. 9 %');
  expect(withAnswers(fibre, missingOnLabel(fibre), { FIBC: 7 })).toMatchObject({
    low: { FIBC: 7 },
    high: { FIBC: 9 },
  });
});
