import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Composition, Food } from '../food.ts';
import { atMoisture, DRYING_SPREAD, driedForm } from './dried-composition.ts';
import { fitFor } from './fit.ts';
import { freshFor } from './fresh-for.ts';

const TAGS = NUTRIENTS.map((n) => n.tag).filter((tag) => tag !== 'WATER');
const isFruit = (food: Food) => food.group === 'fruit';
/** Nutrients that drying keeps whole and that get a value. */
const keptWhole = (food: Food) =>
  (Object.keys(food.composition) as Tag[]).filter((tag) => {
    const fit = fitFor(DRYING_SPREAD, tag, isFruit(food));
    return tag !== 'WATER' && fit?.kept === 1 && fit.sd !== null;
  });

const amount = fc.double({ min: 0.001, max: 90, noNaN: true });
const someAmounts = fc
  .subarray(TAGS, { minLength: 1 })
  .chain((tags) =>
    fc
      .tuple(...tags.map(() => amount))
      .map((values) => Object.fromEntries(tags.map((tag, i) => [tag, values[i]!])) as Composition),
  );
/** A fresh food with some nutrients known, some with an sd, some with bounds, some 0. */
const freshFood = fc
  .record({
    moisture: fc.double({ min: 20, max: 97, noNaN: true }),
    composition: someAmounts,
    zeros: fc.subarray(TAGS, { maxLength: 3 }),
    sdShare: fc.option(fc.double({ min: 0.01, max: 0.5, noNaN: true }), { nil: undefined }),
    bounded: fc.subarray(TAGS, { maxLength: 3 }),
    group: fc.constantFrom('fruit', 'vegetable', 'herb', undefined),
  })
  .map(({ moisture, composition, zeros, sdShare, bounded, group }): Food => {
    const all = { ...composition, ...Object.fromEntries(zeros.map((tag) => [tag, 0])), WATER: moisture };
    return {
      ref: 'mine',
      name: 'leaf',
      source: 'test',
      ...(group && { group }),
      composition: all,
      sd:
        sdShare === undefined
          ? {}
          : Object.fromEntries(Object.entries(composition).map(([tag, v]) => [tag, v * sdShare])),
      low: Object.fromEntries(bounded.map((tag) => [tag, 0.5])),
      high: Object.fromEntries(bounded.map((tag) => [tag, 60])),
    };
  });
const dryness = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const dryTo = (food: Food, share: number) => food.composition.WATER! * share;
const nearly = (a: number, b: number, relative: number) =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b));

const carrot: Food = {
  ref: 'mine',
  name: 'carrot',
  group: 'vegetable',
  source: 'test',
  composition: { WATER: 88, PROCNT: 1, NA: 69, VITB12: 0, BIOT: 5, FIBTG: 3 },
  sd: { PROCNT: 0.1 },
};

describe('drying', () => {
  it('conserves dry matter: proximates and water still make 100 g', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 97, noNaN: true }),
        fc.tuple(amount, amount, amount, amount),
        dryness,
        (moisture, parts, share) => {
          const scale = (100 - moisture) / parts.reduce((a, b) => a + b, 0);
          const [PROCNT, FAT, ASH, CHOCDF] = parts.map((p) => p * scale) as [number, number, number, number];
          const fresh = { ...carrot, composition: { WATER: moisture, PROCNT, FAT, ASH, CHOCDF }, sd: {} };
          const { composition } = driedForm(fresh, moisture * share);
          const sum = (['WATER', 'PROCNT', 'FAT', 'ASH', 'CHOCDF'] as const).reduce(
            (total, tag) => total + composition[tag]!,
            0,
          );
          return nearly(sum, 100, 1e-12);
        },
      ),
    );
  });

  it('gives dried grams what the fresh grams held', () => {
    fc.assert(
      fc.property(freshFood, dryness, amount, (fresh, share, grams) => {
        const moisture = dryTo(fresh, share);
        const dried = driedForm(fresh, moisture);
        const needed = freshFor(grams, fresh, moisture).prepared;
        return keptWhole(fresh).every((tag) =>
          nearly(dried.composition[tag]! * grams, fresh.composition[tag]! * needed, 1e-12),
        );
      }),
    );
  });

  it('then wetting to the old moisture gives the fresh food back, in all that drying keeps whole', () => {
    fc.assert(
      fc.property(freshFood, dryness, (fresh, share) => {
        const wet = atMoisture(driedForm(fresh, dryTo(fresh, share)), fresh.composition.WATER!);
        return keptWhole(fresh).every((tag) => nearly(wet.composition[tag]!, fresh.composition[tag]!, 1e-12));
      }),
    );
  });

  it('never makes an unknown known, nor a nutrient 0 that was not', () => {
    fc.assert(
      fc.property(freshFood, dryness, (fresh, share) => {
        const dried = driedForm(fresh, dryTo(fresh, share));
        const had = (tag: string) =>
          tag in fresh.composition || tag in fresh.low! || tag in fresh.high! || tag === 'WATER';
        for (const part of [dried.composition, dried.sd, dried.low!, dried.high!, dried.notes])
          expect(Object.keys(part).filter((tag) => !had(tag))).toEqual([]);
        for (const tag of Object.keys(dried.composition) as Tag[])
          if (tag !== 'WATER')
            expect([tag, dried.composition[tag] === 0]).toEqual([tag, fresh.composition[tag] === 0]);
      }),
    );
  });

  it('says something of every nutrient the fresh food gives: a value, bounds, or why not', () => {
    fc.assert(
      fc.property(freshFood, dryness, (fresh, share) => {
        const dried = driedForm(fresh, dryTo(fresh, share));
        for (const tag of Object.keys(fresh.composition) as Tag[]) {
          expect(dried.notes[tag]).toBeTruthy();
          const said = dried.composition[tag] !== undefined || dried.high![tag] !== undefined;
          if (!said) expect(dried.notes[tag]).toMatch(/^not given/);
        }
      }),
    );
  });

  it('concentrates more the drier it gets: amounts, sd and bounds never fall', () => {
    fc.assert(
      fc.property(freshFood, dryness, dryness, (fresh, a, b) => {
        const wetter = driedForm(fresh, dryTo(fresh, Math.max(a, b)));
        const drier = driedForm(fresh, dryTo(fresh, Math.min(a, b)));
        for (const part of ['composition', 'sd', 'low', 'high'] as const)
          for (const [tag, value] of Object.entries(wetter[part]!))
            if (tag !== 'WATER')
              expect(drier[part]![tag as Tag]!).toBeGreaterThanOrEqual(value * (1 - 1e-12));
      }),
    );
  });

  it('scales: twice the amounts and sds give twice the amounts and sds', () => {
    const twice = (amounts: Composition) =>
      Object.fromEntries(Object.entries(amounts).map(([tag, v]) => [tag, 2 * v])) as Composition;
    fc.assert(
      fc.property(freshFood, dryness, (fresh, share) => {
        const moisture = dryTo(fresh, share);
        const double = {
          ...fresh,
          composition: { ...twice(fresh.composition), WATER: fresh.composition.WATER! },
          sd: twice(fresh.sd),
        };
        const one = driedForm(fresh, moisture);
        const two = driedForm(double, moisture);
        for (const [tag, v] of Object.entries(one.composition))
          if (tag !== 'WATER') expect(nearly(two.composition[tag as Tag]!, 2 * v, 1e-12)).toBe(true);
        for (const [tag, v] of Object.entries(one.sd))
          expect(nearly(two.sd[tag as Tag]!, 2 * v, 1e-12)).toBe(true);
      }),
    );
  });

  it('joins the sd of the fresh food with that of the model', () => {
    const fit = DRYING_SPREAD.general.PROCNT!;
    const dried = driedForm(carrot, 4);
    expect(dried.composition.PROCNT).toBeCloseTo(8, 12);
    expect(dried.sd.PROCNT).toBeCloseTo(Math.hypot(0.8, 8 * fit.sd!), 12);
    expect(driedForm({ ...carrot, sd: {} }, 4).sd.PROCNT).toBeCloseTo(8 * fit.sd!, 12);
  });

  it('gives bounds, not a value, where the pairs scatter too widely', () => {
    const fit = DRYING_SPREAD.general.NA!;
    expect(fit.sd).toBeNull();
    const dried = driedForm(carrot, 4);
    expect(dried.composition).not.toHaveProperty('NA');
    expect(dried.low!.NA).toBeCloseTo(69 * 8 * fit.low, 9);
    expect(dried.high!.NA).toBeCloseTo(69 * 8 * fit.high, 9);
    expect(dried.notes.NA).toContain('limits only');
    const unsure = driedForm({ ...carrot, sd: { NA: 10 } }, 4);
    expect(unsure.low!.NA).toBeCloseTo((69 - 19.6) * 8 * fit.low, 9);
    expect(unsure.high!.NA).toBeCloseTo((69 + 19.6) * 8 * fit.high, 9);
  });

  it('keeps a printed 0, and leaves unknown what nothing is known of', () => {
    const dried = driedForm(carrot, 4);
    expect(dried.composition.VITB12).toBe(0);
    expect(dried.sd).not.toHaveProperty('VITB12');
    expect(dried.high).not.toHaveProperty('VITB12');
    expect(dried.composition).not.toHaveProperty('BIOT');
    expect(dried.high).not.toHaveProperty('BIOT');
    expect(dried.notes.BIOT).toMatch(/^not given/);
  });

  it('takes the published factor for fruit, by our group or the number of the USDA table', () => {
    const fruit: Food = { ...carrot, group: 'fruit', composition: { WATER: 88, NIA: 1 } };
    expect(driedForm(fruit, 4).composition.NIA).toBeCloseTo(8 * 0.9, 12);
    expect(driedForm(fruit, 4).notes.NIA).toContain('code 0158');
    const { group: _, ...unnamed } = fruit;
    expect(driedForm({ ...unnamed, ref: 'sr28:09003' }, 4).composition.NIA).toBeCloseTo(8 * 0.9, 12);
    expect(driedForm({ ...unnamed, ref: 'sr28:11124' }, 4).notes.NIA).not.toContain('code 0158');
  });

  it('keeps folate and vitamin A in step with their parts', () => {
    const greens: Food = {
      ...carrot,
      composition: {
        WATER: 90,
        FOL: 30,
        FOLAC: 0,
        FOLFD: 30,
        FOLDFE: 30,
        VITA_IU: 833,
        VITA_RAE: 42,
        CARTB: 500,
      },
    };
    const { low, high, composition } = driedForm(greens, 10);
    expect(composition.FOLAC).toBe(0);
    for (const part of [low!, high!]) {
      expect(part.FOLFD).toBe(part.FOL);
      expect(part.FOLDFE).toBe(part.FOL);
      expect(part.VITA_IU! / 833).toBeCloseTo(part.CARTB! / 500, 12);
      expect(part.VITA_RAE! / 42).toBeCloseTo(part.CARTB! / 500, 12);
    }
  });

  it('never bounds a nutrient above the dry matter there is', () => {
    fc.assert(
      fc.property(freshFood, dryness, (fresh, share) => {
        const moisture = dryTo(fresh, share);
        for (const [tag, most] of Object.entries(driedForm(fresh, moisture).high!))
          if (nutrient(tag as Tag).unit === 'g') expect(most).toBeLessThanOrEqual(100 - moisture);
      }),
    );
  });

  it.each([
    [{ composition: { PROCNT: 1 } }, 4, /carrot \(mine\): composition.WATER is unknown/],
    [{ composition: { WATER: 100 } }, 4, /composition.WATER is 100/],
    [{}, 88, /moisture 88 .* not below the 88/],
    [{}, 95, /moisture 95/],
    [{}, -1, /moisture must be from 0/],
    [{}, Number.NaN, /moisture must be from 0/],
  ])('refuses what cannot be dried: %j to %d', (change, moisture, message) => {
    expect(() => driedForm({ ...carrot, ...change }, moisture)).toThrow(RangeError);
    expect(() => driedForm({ ...carrot, ...change }, moisture)).toThrow(message);
  });
});

describe('atMoisture', () => {
  it('carries sd and bounds along and refuses a food of unknown moisture', () => {
    const food = { composition: { WATER: 90, PROCNT: 1 }, sd: { PROCNT: 0.2 }, high: { NA: 5 } };
    expect(atMoisture(food, 50)).toEqual({
      composition: { WATER: 50, PROCNT: 5 },
      sd: { PROCNT: 1 },
      high: { NA: 25 },
    });
    expect(() => atMoisture({ composition: { PROCNT: 1 }, sd: {} }, 50)).toThrow(
      /composition.WATER is unknown/,
    );
    expect(() => atMoisture(food, 100)).toThrow(RangeError);
  });
});
