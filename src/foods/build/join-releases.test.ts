import { describe, expect, it } from 'vitest';
import { joined } from './join-releases.ts';
import { readSr26 } from './sr26.ts';
import type { TableRow } from './table.ts';

const FOODS = `food_id\tgrp_id\tfood\tcommon\trefuse\tref_pct\tscientific\tn_factor\tpro_factor\tfat_factor\tcarb_factor
20038\t2000\tOats\t\tHusk\t30\tAvena sativa\t5.83\t3.46\t8.37\t4.12
5001\t500\tChicken\t\t\t0\t\t0\t4\t9\t4
`;
const HEAD = 'food_id\tnutr_id\tvalue\tnum_points\tse\tsource_type_id\tderiv_id';
type Amount = readonly [id: string, nutrient: string, value: number, points?: number, se?: number];
const amounts = (...rows: readonly Amount[]) =>
  [HEAD, ...rows.map(([id, n, v, points = 0, se]) => `${id}\t${n}\t${v}\t${points}\t${se ?? ''}\t1\t`)].join(
    '\n',
  );

const newer: TableRow = {
  ref: 'sr28:20038',
  tableName: 'OATS',
  tableGroup: '20',
  composition: { PROCNT: 16.89, FAT: 6.9, CHOCDF: 66.27, CA: 54 },
  sd: {},
  suggestible: false,
};
const join = (...rows: readonly Amount[]) => joined(newer, readSr26(FOODS, amounts(...rows)).get('20038')!);

describe('a row of release 28 joined with release 26', () => {
  it('has the factor, the names and what is refuse; none of a factor of 0', () => {
    expect(join()).toMatchObject({
      tableName: 'Oats',
      proteinFactor: 5.83,
      scientific: 'Avena sativa',
      refuseDescription: 'Husk',
      suggestible: true,
    });
    expect(readSr26(FOODS, HEAD).get('05001')).not.toHaveProperty('proteinFactor');
  });

  it('has amino acids in mg where the protein is the same within 3 %, and none where it is another sample', () => {
    expect(join(['20038', '203', 16.5], ['20038', '505', 0.701]).composition.LYS).toBe(701);
    expect(join(['20038', '203', 18], ['20038', '505', 0.701]).composition).not.toHaveProperty('LYS');
    expect(join(['20038', '505', 0.701]).composition).not.toHaveProperty('LYS');
  });

  it('has fatty acids with the fat and starch with the carbohydrate, by the same rule', () => {
    const all = [
      ['20038', '204', 6.9],
      ['20038', '675', 2.4],
      ['20038', '205', 40],
      ['20038', '209', 30],
    ] as const;
    const { composition } = join(...all);
    expect(composition.F18D2CN6).toBe(2.4);
    expect(composition).not.toHaveProperty('STARCH');
  });

  it('keeps its own figures, and takes none that it has withdrawn', () => {
    const { composition } = join(['20038', '301', 60], ['20038', '303', 4.7]);
    expect(composition.CA).toBe(54);
    expect(composition).not.toHaveProperty('FE');
  });

  it('has a standard deviation of 3 analyses or more, where both releases print the same amount', () => {
    expect(join(['20038', '301', 54, 4, 2]).sd).toEqual({ CA: 4 });
    expect(join(['20038', '301', 54, 2, 2]).sd).toEqual({});
    expect(join(['20038', '301', 60, 4, 2]).sd).toEqual({});
    expect(join(['20038', '301', 54, 4]).sd).toEqual({});
  });
});

describe('18:2 and 18:3 that are not told apart', () => {
  const read = (id: string, ...rows: readonly Amount[]) => {
    const food = readSr26(FOODS, amounts(...rows)).get(id.padStart(5, '0'))!;
    return Object.fromEntries([...food.amounts].map(([tag, { value }]) => [tag, value]));
  };

  it('stand for linoleic and alpha-linolenic acid in plants, less the 18:3 known to be n-6', () => {
    expect(read('20038', ['20038', '618', 2.424], ['20038', '619', 0.11])).toEqual({
      F18D2CN6: 2.424,
      F18D3N3: 0.11,
    });
    expect(read('20038', ['20038', '619', 0.11], ['20038', '685', 0.03])).toEqual({ F18D3N3: 0.08 });
  });

  it('give way to the acid itself', () => {
    expect(read('20038', ['20038', '618', 2.424], ['20038', '675', 2.4])).toEqual({ F18D2CN6: 2.4 });
  });

  it('say nothing of an animal food', () => {
    expect(read('5001', ['5001', '618', 2.4], ['5001', '619', 0.1])).toEqual({});
  });
});

describe('a table that is not as it should be', () => {
  it('is refused: an amount of a food without a name, a figure that is none, a column that is missing', () => {
    expect(() => readSr26(FOODS, amounts(['99', '203', 1]))).toThrow(/SR26 99.*no name/);
    expect(() => readSr26(FOODS, amounts(['20038', '203', Number.NaN]))).toThrow(/203 is no amount/);
    expect(() => readSr26('food_id\tfood\n1\tA', HEAD)).toThrow(/no "grp_id"/);
  });
});
