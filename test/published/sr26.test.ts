/** USDA SR26 figures as printed: nitrogen factors, amino acids, fatty acids, starch and standard errors of named rows. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { loadReference } from '../../src/household/reference-file.ts';

const reference = loadReference();
const food = (ref: string) => reference.get(ref)!;

describe('crude protein, from the protein as printed and its nitrogen factor', () => {
  it.each([
    ['sr28:20038', 'oats', 16.89, 5.83, 18.11],
    ['sr28:12036', 'sunflower kernels', 20.78, 5.3, 24.5],
    ['sr28:20031', 'millet', 11.02, 5.83, 11.81],
    ['sr28:12023', 'sesame', 17.73, 5.3, 20.91],
    ['sr28:16052', 'broad beans', 26.12, 6.25, 26.12],
    ['sr28:20036', 'brown rice', 7.54, 5.95, 7.92],
  ])('%s, %s', (ref, _, printed, factor, crude) => {
    const { composition, proteinFactor } = food(ref);
    expect([composition.PROCNT, proteinFactor]).toEqual([printed, factor]);
    expect((composition.PROCNT! / proteinFactor!) * 6.25).toBeCloseTo(crude, 2);
  });

  it('of published figures that give a factor of their own: black soldier fly, N x 4.73', () => {
    expect(food('pub:bsf-larva-dried').proteinFactor).toBe(4.73);
  });
});

describe('amino acids, printed in g and kept in mg', () => {
  it.each([
    ['sr28:20038', 'oats', { TRP: 234, LYS: 701, MET: 312, CYS: 408 }],
    ['sr28:12036', 'sunflower kernels', { TRP: 348, LYS: 937, MET: 494, CYS: 451 }],
    ['sr28:20031', 'millet', { TRP: 119, LYS: 212, MET: 221, CYS: 212 }],
    ['sr28:01123', 'whole egg', { TRP: 167, LYS: 912, MET: 380, CYS: 272 }],
    ['sr28:16052', 'broad beans', { TRP: 247, LYS: 1671, MET: 213, CYS: 334 }],
  ])('%s, %s', (ref, _, printed) => {
    expect(food(ref).composition).toMatchObject(printed);
  });
});

describe('linoleic and alpha-linolenic acid', () => {
  it.each([
    ['pumpkin seed, both acids printed', 'sr28:12014', { F18D2CN6: 20.667, F18D3N3: 0.12 }],
    [
      'whole egg, both printed, less than the sums of their isomers',
      'sr28:01123',
      { F18D2CN6: 1.531, F18D3N3: 0.036 },
    ],
    [
      'oats: only the sums are printed, which in plants are these acids',
      'sr28:20038',
      { F18D2CN6: 2.424, F18D3N3: 0.111 },
    ],
    ['sesame: the same', 'sr28:12023', { F18D2CN6: 21.375, F18D3N3: 0.376 }],
  ])('%s', (_, ref, printed) => {
    expect(food(ref).composition).toMatchObject(printed);
  });

  it('in plants that print both, linoleic acid is nearly all of 18:2', () => {
    const table = (name: string) =>
      gunzipSync(readFileSync(`tables/usda-sr26/${name}.tsv.gz`))
        .toString()
        .split('\n')
        .map((line) => line.split('\t'));
    const groups = new Map(table('foods').map(([id = '', group = '']) => [id, group]));
    const acids = new Map<string, { sum?: number; n6?: number }>();
    for (const [id = '', number, value] of table('nutrients')) {
      if (!['200', '900', '1100', '1200', '1600', '2000'].includes(groups.get(id) ?? '')) continue;
      if (number === '618') acids.set(id, { ...acids.get(id), sum: Number(value) });
      if (number === '675') acids.set(id, { ...acids.get(id), n6: Number(value) });
    }
    const parts = [...acids.values()].flatMap(({ sum = 0, n6 }) =>
      n6 !== undefined && sum > 0.05 ? [n6 / sum] : [],
    );
    expect(parts.length).toBe(42);
    expect(Math.min(...parts)).toBeGreaterThan(0.95);
    expect(Math.max(...parts)).toBeLessThanOrEqual(1);
  });

  it('of an animal food that prints the sums alone stay unknown: pork liver', () => {
    expect(food('sr28:10110').composition).not.toHaveProperty('F18D2CN6');
    expect(food('sr28:10110').composition.FAPU).toBeGreaterThan(0);
  });
});

describe('standard deviation between samples: printed standard error x square root of the analyses', () => {
  it.each([
    ['sr28:20038', 'oats, protein: 0.326 of 50 analyses', 'PROCNT', 0.326 * Math.sqrt(50)],
    ['sr28:20038', 'oats, fat: 0.705 of 14', 'FAT', 0.705 * Math.sqrt(14)],
    ['sr28:12023', 'sesame, calcium: 102.528 of 21', 'CA', 102.528 * Math.sqrt(21)],
    ['sr28:01123', 'whole egg, linoleic acid: 0.062 of 12', 'F18D2CN6', 0.062 * Math.sqrt(12)],
    ['sr28:12014', 'pumpkin seed, starch: 0.088 of 3', 'STARCH', 0.088 * Math.sqrt(3)],
  ] as const)('%s, %s', (ref, _, tag, sd) => {
    // Kept to three figures.
    expect(Math.abs(food(ref).sd[tag]! / sd - 1)).toBeLessThan(0.005);
  });

  it('is not there for two analyses, nor where none is printed', () => {
    expect(food('sr28:12036').sd).not.toHaveProperty('PROCNT');
    expect(food('sr28:16052').sd).not.toHaveProperty('PROCNT');
  });
});
