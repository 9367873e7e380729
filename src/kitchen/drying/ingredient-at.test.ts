import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadReference } from '../../household/reference-file.ts';
import { ingredientAt } from './ingredient-at.ts';

const reference = loadReference();

const carrot = reference.get('sr28:11124')!;
const nearly = (a: number, b: number, relative = 1e-9) =>
  Math.abs(a - b) <= relative * Math.max(1, Math.abs(a), Math.abs(b));
describe('ingredientAt', () => {
  it('moves every amount with the dry matter, and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        (had, now, protein) => {
          const food = {
            id: 'f',
            composition: { WATER: had, PROCNT: protein },
            sd: { PROCNT: 1 },
            low: { FIBC: 2 },
          };
          const moved = ingredientAt(food, now, reference);
          expect(moved.composition!.WATER).toBe(now);
          expect(nearly(moved.composition!.PROCNT! / (100 - now), protein / (100 - had))).toBe(true);
          expect(nearly(moved.low!.FIBC! / (100 - now), 2 / (100 - had))).toBe(true);
          const back = ingredientAt(moved, had, reference);
          expect(nearly(back.composition!.PROCNT!, protein)).toBe(true);
          expect(nearly(back.sd!.PROCNT!, 1)).toBe(true);
        },
      ),
    );
  });

  it('takes the amounts of the table, the own ones first, and never makes an unknown known', () => {
    const moved = ingredientAt({ id: 'c', ref: carrot.ref, composition: { PROCNT: 2 } }, 50, reference);
    const factor = 50 / (100 - carrot.composition.WATER!);
    expect(moved.composition!.PROCNT).toBeCloseTo(2 * factor, 9);
    expect(moved.sd!.PROCNT).toBeUndefined();
    expect(moved.composition!.CA).toBeCloseTo(carrot.composition.CA! * factor, 9);
    expect(Object.keys(moved.composition!).sort()).toEqual(Object.keys(carrot.composition).sort());
  });

  it('keeps the nitrogen factor of the table with the protein it takes from there', () => {
    const table = { get: () => ({ ...carrot, proteinFactor: 5.8 }) };
    expect(ingredientAt({ id: 'c', ref: carrot.ref }, 50, table).protein_factor).toBe(5.8);
    const own = { id: 'c', ref: carrot.ref, composition: { PROCNT: 2 } };
    expect(ingredientAt(own, 50, table).protein_factor).toBeUndefined();
  });

  it('only writes the moisture where none was known before', () => {
    const moved = ingredientAt({ id: 'c', composition: { PROCNT: 2 } }, 9, reference);
    expect(moved.composition).toEqual({ PROCNT: 2, WATER: 9 });
  });
});
