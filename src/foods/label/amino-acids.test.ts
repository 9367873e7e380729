/** Amino acids on labels: each by its name in five languages, and sums of two told as unread. */
import { describe, expect, it } from 'vitest';
import { figuresOf } from './figures.ts';
import { readLabel } from './read.ts';

const read = (text: string) => figuresOf(readLabel(text));

describe('amino acids', () => {
  it.each([
    ['Analytical constituents: crude protein 17 %, lysine 0.9 %, methionine 0.35 %', { LYS: 900, MET: 350 }],
    ['Analytische Bestandteile: Rohprotein 17 %, Lysin 0,9 %, Methionin 0,35 %', { LYS: 900, MET: 350 }],
    [
      'Constituants analytiques : protéine brute 17 %, lysine 0,9 %, méthionine 0,35 %',
      { LYS: 900, MET: 350 },
    ],
    ['Analytische bestanddelen: ruw eiwit 17 %, lysine 0,9 %, threonine 0,6 %', { LYS: 900, THR: 600 }],
    ['Componentes analíticos: proteína bruta 17 %, lisina 0,9 %, triptófano 0,2 %', { LYS: 900, TRP: 200 }],
  ])('%s', (text, amounts) => {
    const { figures } = read(text);
    for (const [tag, value] of Object.entries(amounts))
      expect(figures.composition[tag as keyof typeof figures.composition], tag).toBeCloseTo(value, 6);
  });

  it.each([
    'Crude protein 17 %\nMethionine + cystine 0.6 %',
    'Rohprotein 17 %\nMethionin und Cystin 0,6 %',
    'Crude protein 17 %\nLysine HCl 0.6 %',
    'Crude protein 17 %\nTaurine 0.1 %',
  ])('a sum or a salt is no amino acid: %s', (text) => {
    const { composition } = read(text).figures;
    expect([composition.MET, composition.CYS, composition.LYS]).toEqual([undefined, undefined, undefined]);
  });
});
