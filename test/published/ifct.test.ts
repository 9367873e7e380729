/**
 * IFCT 2017 figures and their standard deviations, in the unit of the tagname, as a reference file made with
 * `npm run reference -- --ifct` holds them. What is shipped holds none of them.
 */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildReference, readIndian } from '../../src/foods/build/sources.ts';
import type { Composition } from '../../src/foods/food.ts';
import { decodeReference } from '../../src/foods/reference.ts';

const reference = decodeReference(buildReference(process.cwd(), readIndian(process.cwd())).reference);

describe('IFCT A010, finger millet', () => {
  const food = reference.get('ifct:A010')!;

  it('has the printed amounts', () => {
    expect(food.composition).toMatchObject({
      WATER: 10.89,
      PROCNT: 7.16,
      FAT: 1.92,
      FIBTG: 11.18,
      CA: 364,
      SE: 15.3,
    });
  });

  it('has its energy reckoned as that of the other tables is: 4 x 7.16 + 9 x 1.92 + 4 x 77.99', () => {
    expect(100 - 10.89 - 7.16 - 1.92 - food.composition.ASH!).toBeCloseTo(77.99, 2);
    expect(food.composition.ENERC_KCAL).toBeCloseTo(357.88, 2);
  });

  it('has the printed standard deviations', () => {
    expect(food.sd).toMatchObject({ WATER: 0.61, PROCNT: 0.63, FAT: 0.14, FIBTG: 1.14, CA: 58, SE: 6.23 });
  });

  it('says where it is from', () => {
    expect(food).toMatchObject({ source: 'IFCT 2017, A010', tableGroup: 'Cereals and Millets' });
    // Whoever adds the table may look its foods up; advice does not bring them in.
    expect(food.suggestible).toBe(false);
  });
});

describe('what IFCT leaves open', () => {
  it('is unknown, not zero: a zero may mean not analysed', () => {
    expect(reference.get('ifct:A010')!.composition).not.toHaveProperty('VITC');
    expect(reference.get('ifct:T001')!.composition).not.toHaveProperty('ENERC_KCAL');
  });

  it('is zero by nature: fibre in fish, retinol in grain', () => {
    expect(reference.get('ifct:P033')!.composition.FIBTG).toBe(0);
    expect(reference.get('ifct:A010')!.composition.RETOL).toBe(0);
  });

  it('has no spread where one region was sampled', () => {
    expect(reference.get('ifct:A001')!.composition.PROCNT).toBe(14.59);
    expect(reference.get('ifct:A001')!.sd).toEqual({});
  });

  it('is unknown where the carrier slipped a unit: 316 mg of vitamin B6 in a fish', () => {
    expect(reference.get('ifct:P031')!.composition).not.toHaveProperty('VITB6A');
    expect(reference.get('ifct:P031')!.composition).not.toHaveProperty('BIOT');
  });
});

interface Row {
  readonly ref: string;
  readonly composition: Composition;
  readonly sd?: Composition;
}

// Further rows typed from the printed table, where they are at hand.
const rowsFile = new URL('./ifct-rows.json', import.meta.url);
const rows: Row[] = existsSync(rowsFile) ? JSON.parse(readFileSync(rowsFile, 'utf8')) : [];
describe.runIf(rows.length > 0)('rows of the printed table', () => {
  it.each(rows)('$ref', ({ ref, composition, sd = {} }) => {
    expect(reference.get(ref)!.composition).toMatchObject(composition);
    expect(reference.get(ref)!.sd).toMatchObject(sd);
  });
});
