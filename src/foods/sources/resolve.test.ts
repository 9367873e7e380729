import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combine } from './combine.ts';
import { resolve } from './resolve.ts';
import type { FoodSource } from './source.ts';

const table: FoodSource = {
  id: 'table',
  name: 'Table',
  basis: 'as fed',
  composition: { WATER: 10, PROCNT: 12, FAT: 3 },
  sd: { PROCNT: 1 },
};
const label: FoodSource = {
  id: 'label',
  name: 'Label',
  basis: 'as fed',
  composition: { PROCNT: 14 },
  sd: {},
  low: { PROCNT: 13 },
  high: { FIBC: 6 },
};

describe('what a food is taken to hold', () => {
  it('is what combining says of each nutrient', () => {
    const all = resolve([table, label], { FAT: 'table' }, 'seed');
    const protein = combine('PROCNT', [table, label], 'mean', 'seed')!;
    expect(all.composition).toEqual({ WATER: 10, PROCNT: protein.value, FAT: 3 });
    expect(all.sd.PROCNT).toBe(protein.sd);
    expect(all.methods).toEqual({
      WATER: 'Table',
      PROCNT: 'mean of 2 sources (random effects, DerSimonian and Laird 1986): Table; Label',
      FAT: 'Table, chosen by the keeper',
    });
  });

  it('keeps bounds without a value as bounds', () => {
    const all = resolve([table, label], {}, 'seed');
    expect(all.high).toEqual({ FIBC: 6 });
    expect(all.composition).not.toHaveProperty('FIBC');
  });

  it('takes the bounds of the chosen source only', () => {
    expect(resolve([table, label], { PROCNT: 'table' }, 'seed')).not.toHaveProperty('low');
  });

  it('of a choice that does not know the nutrient stays unknown', () => {
    expect(resolve([table, label], { FAT: 'label' }, 'seed').composition).not.toHaveProperty('FAT');
  });

  it('knows nothing from nothing', () => {
    expect(resolve([], {}, undefined)).toEqual({ composition: {}, sd: {}, methods: {} });
  });

  it('never knows what no source knows', () => {
    const figure = (max: number) => fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max, noNaN: true }));
    const amounts = fc.record(
      {
        WATER: figure(99),
        PROCNT: figure(99),
        CA: figure(9999),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.array(amounts, { maxLength: 4 }), (list) => {
        const sources = list.map((composition, i) => ({ ...table, id: String(i), composition, sd: {} }));
        const known = new Set(list.flatMap((c) => Object.keys(c)));
        expect(new Set(Object.keys(resolve(sources, {}, 'seed').composition))).toEqual(known);
      }),
    );
  });
});
