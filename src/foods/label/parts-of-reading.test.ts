import { describe, expect, it } from 'vitest';
import { match } from './match.ts';
import { readNumber } from './numbers.ts';
import { NAMES } from './nutrient-words.ts';
import { readLabel } from './read.ts';
import { ROLES } from './role-words.ts';
import { keyOf } from './tokens.ts';
import { inTagUnit } from './units.ts';
import { WITHOUT_TAG } from './untagged-words.ts';

describe('numbers', () => {
  const cases: readonly (readonly [string, readonly number[]])[] = [
    ['4,5', [4.5]],
    ['4.5', [4.5]],
    ['1250', [1250]],
    ['1.250', [1.25, 1250]],
    ['1,250', [1.25, 1250]],
    ['0.125', [0.125]],
    ['1.250,5', [1250.5]],
    ['1,250.5', [1250.5]],
    ["1'250", [1250]],
    ['1 250', [1250]],
    ['1\u202f250,5', [1250.5]],
    ['1.250.000', [1250000]],
    ['12.50', [12.5]],
    ['½', [0.5]],
    ['2¾', [2.75]],
  ];
  for (const [text, readings] of cases)
    it(`${text} is ${readings.join(' or ')}`, () => {
      expect(readNumber(text)).toMatchObject({ readings });
    });

  for (const text of ['1,2,3', '1.25.000', "1'25", '1,250,5', '1234567890123456789012'])
    it(`${text} is no number`, () => {
      expect(readNumber(text)).toBeTypeOf('string');
    });
});

describe('units', () => {
  it('become those of the tagname', () => {
    expect(inTagUnit(0.8, '%', 'CA')).toBe(800);
    expect(inTagUnit(12, 'mg', 'CA')).toBe(12);
    expect(inTagUnit(200, 'ug', 'CA')).toBeCloseTo(0.2, 12);
    expect(inTagUnit(2, 'mg', 'SE')).toBe(2000);
    expect(inTagUnit(418.4, 'kJ', 'ENERC_KCAL')).toBeCloseTo(100, 9);
    expect(inTagUnit(1.5, 'MJ', 'ENERC_KCAL')).toBeCloseTo(358.5086, 3);
    expect(inTagUnit(500, 'mg', 'PROCNT')).toBe(0.5);
  });
});

describe('the word table', () => {
  it('gives no phrase two nutrients', () => {
    const owner = new Map<string, string>();
    for (const row of [...NAMES, ...WITHOUT_TAG])
      for (const phrase of (row.slice(1, 6) as string[]).flatMap((c) => c.split('|')).filter(Boolean)) {
        const key = keyOf(phrase).replaceAll('-', ' ');
        expect(owner.get(key) ?? row[1], phrase).toBe(row[1]);
        owner.set(key, row[1]);
      }
    expect(owner.size).toBeGreaterThan(400);
  });

  it('is read back: every name is found as that one name', () => {
    for (const row of [...NAMES, ...WITHOUT_TAG])
      for (const phrase of (row.slice(1, 6) as string[]).flatMap((c) => c.split('|')).filter(Boolean)) {
        // With a figure: "dry matter" alone says what other amounts are part of.
        const { items } = match(`${phrase.toUpperCase()} 5 %`);
        expect(
          items.slice(0, -2).map((i) => (i.kind === 'name' ? i.name.called : i.kind)),
          phrase,
        ).toEqual([row[1].split('|')[0]]);
      }
  });

  it('has five columns in every row', () => {
    for (const row of [...NAMES, ...WITHOUT_TAG, ...ROLES]) expect([6, 7]).toContain(row.length);
  });
});

describe('questions', () => {
  it('a wrong answer leaves the question open and says why', () => {
    const [question] = readLabel('Fibre 8 %', { 'name:fibre': 'both' }).questions;
    expect(question!.message).toContain('“both” is not');
    expect(readLabel('Protein 5 g', { per: '0' }).questions).toHaveLength(1);
    expect(readLabel('Protein 5 g', { per: 'toString' }).questions).toHaveLength(1);
  });

  it('every choice can be given back', () => {
    const text = 'per 1 kg\nCalcium 1,234 mg\nFibre 8 %';
    for (const question of readLabel(text).questions)
      for (const { answer } of question.options)
        expect(readLabel(text, { [question.id]: answer }).questions.map((q) => q.id)).not.toContain(
          question.id,
        );
  });

  it('a line tells what was understood', () => {
    const [line] = readLabel('Crude protein min. 17 %').lines;
    expect(line).toMatchObject({ kind: 'amount', note: 'Protein at least 17 %', missed: [] });
  });

  const unread: readonly (readonly [string, RegExp])[] = [
    ['Protein O,5 g', /mixes letters and digits/],
    ['Fat l2 %', /mixes letters and digits/],
    ['Fat,5 g', /decimal mark/],
    ['Protein -5 %', /minus/],
    ['Protein 16-14 %', /falls/],
    ['Protein 12', /no unit/],
    ['Protein 12 IU', /not measured in IU/],
    ['Vitamin E 12 IU', /write it in mg/],
    ['Vitamin C 20 %', /daily need/],
    ['NFE 50 %', /no tagname/],
    ['Energy kJ/kcal 1580/377', /one unit too many/],
    ['animal protein 12 %', /not known here/],
    ['12 %', /without a nutrient/],
    ['Protein ١٢ %', /another script/],
    ['Fat Protein 3 %', /share one figure/],
    ['Protein 17 ± 1 %', /no unit|±/],
  ];
  for (const [text, why] of unread)
    it(`"${text}" is unread, with the reason`, () => {
      const reading = readLabel(text);
      expect(reading.lines[0]!.kind).toBe('unread');
      expect(reading.lines[0]!.note).toMatch(why);
      expect(reading.amounts).toEqual([]);
    });
});
