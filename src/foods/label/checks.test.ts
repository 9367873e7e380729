import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { crudeProtein } from '../crude-protein.ts';
import type { Composition, Figures, Food } from '../food.ts';
import { decodeReference, type Reference } from '../reference.ts';
import { type About, checkFigures } from './checks.ts';
import type { CheckName } from './warning.ts';

let reference: Reference;
beforeAll(() => {
  reference = decodeReference(readFileSync(new URL('../data/reference.bin', import.meta.url)));
});

const figures = (composition: Composition, more: Partial<Figures> = {}): Figures => ({
  composition,
  sd: {},
  ...more,
});
const checks = (f: Figures, about?: About) => checkFigures(f, about).map((w) => w.check);
const food = (name: string, composition: Composition): Food => ({
  ref: 'own:1',
  name,
  source: 'invented',
  composition,
  sd: {},
});

const PELLET: Composition = { WATER: 10, PROCNT: 17, FAT: 5.5, FIBC: 8, ASH: 4.5 };

describe('figures that cannot be true', () => {
  it('says nothing of figures that can', () => {
    expect(checkFigures(figures(PELLET))).toEqual([]);
    expect(checkFigures(figures({}))).toEqual([]);
  });

  it('parts over 100 g, with the sum', () => {
    const [warning] = checkFigures(figures({ WATER: 10, PROCNT: 42.5, FAT: 13.8, CHOCDF: 60 }));
    expect(warning!.check).toBe('sum');
    expect(warning!.message).toContain('126 g');
    expect(warning!.tags).toEqual(['WATER', 'PROCNT', 'FAT', 'CHOCDF']);
  });

  it('minimum amounts count towards the sum, maximum amounts do not', () => {
    expect(checks(figures({ PROCNT: 60 }, { low: { FAT: 45 } }))).toEqual(['sum']);
    expect(checks(figures({ PROCNT: 60 }, { high: { FAT: 45 } }))).toEqual([]);
  });

  it('the largest carbohydrate figure counts once, never with its own parts', () => {
    expect(checks(figures({ WATER: 10, CHOCDF: 70, FIBTG: 30, SUGAR: 20, PROCNT: 15 }))).toEqual([]);
  });

  it('a part over its whole', () => {
    expect(checks(figures({ SUGAR: 20, CHOCDF: 12 }))).toEqual(['part']);
    expect(checks(figures({ FASAT: 6, FAT: 4 }))).toEqual(['part']);
    expect(checks(figures({ FIBTG: 20, CHOCDF: 12 }))).toEqual(['part']);
    expect(checks(figures({ FASAT: 6 }, { high: { FAT: 4 } }))).toEqual(['part']);
    expect(checks(figures({ FASAT: 6 }, { low: { FAT: 4 } }))).toEqual([]);
  });

  it('crude fibre over dietary fibre', () => {
    expect(checks(figures({ FIBC: 12, FIBTG: 6 }))).toEqual(['fibre']);
    expect(checks(figures({ FIBC: 6, FIBTG: 12 }))).toEqual([]);
  });

  it('begin to warn where arithmetic by hand says, for the oats of SR28', () => {
    // USDA SR28 20038, per 100 g as fed. The parts: 8.22 + 16.89 + 6.9 + 66.27 + 1.72 = 100.00 g.
    const oats = { WATER: 8.22, PROCNT: 16.89, FAT: 6.9, CHOCDF: 66.27, FIBTG: 10.6, ASH: 1.72 };
    expect(checks(figures(oats))).toEqual([]);
    expect(checks(figures({ ...oats, WATER: 8.22 + 2.99 }))).toEqual([]);
    expect(checks(figures({ ...oats, WATER: 8.22 + 3.01 }))).toEqual(['sum']);
    // Fibre is part of carbohydrate: 66.27 x 1.05 + 0.5 = 70.08 g is the most it may be by rounding. By itself, since
    // such fibre would make the sum too large as well.
    expect(checks(figures({ CHOCDF: 66.27, FIBTG: 70.07 }))).toEqual([]);
    expect(checks(figures({ CHOCDF: 66.27, FIBTG: 70.09 }))).toEqual(['part']);
    // 4 x 16.89 + 9 x 6.9 + 4 x 66.27 = 394.74 kcal; NFE is 100 - 8.22 - 16.89 - 6.9 - 10.6 - 1.72 = 55.67 g, so
    // 3.5 x 16.89 + 8.5 x 6.9 + 3.5 x 55.67 = 312.61 kcal. Least 0.8 x 312.61 - 15 = 235.1, most 1.2 x 394.74 + 15 = 488.7.
    for (const [energy, warned] of [
      [389, []],
      [236, []],
      [235, ['energy']],
      [488, []],
      [489, ['energy']],
      [389 * 4.184, ['energy']],
    ] as const)
      expect(checks(figures({ ...oats, ENERC_KCAL: energy })), String(energy)).toEqual(warned);
    const [warning] = checkFigures(figures({ ...oats, ENERC_KCAL: 389 * 4.184 }));
    expect(warning!.message).toContain('395 (4/9/4) or 313 (3.5/8.5/3.5');
  });

  it('energy in kJ taken for kcal, and energy per another weight', () => {
    const right = { ENERC_KCAL: 377, PROCNT: 12, FAT: 6.5, CHOCDF: 69, FIBTG: 9 };
    expect(checks(figures(right))).toEqual([]);
    expect(checks(figures({ ...right, ENERC_KCAL: 1580 }))).toEqual(['energy']);
    expect(checks(figures({ ...right, ENERC_KCAL: 113 }))).toEqual(['energy']);
    const [warning] = checkFigures(figures({ ...right, ENERC_KCAL: 1580 }));
    expect(warning!.message).toContain('383 (4/9/4)');
  });

  it('a minimum over a maximum, and a value outside its bounds', () => {
    expect(checks(figures({}, { low: { FAT: 6 }, high: { FAT: 4 } }))).toEqual(['bounds']);
    expect(checks(figures({ FAT: 3 }, { low: { FAT: 4 } }))).toEqual(['bounds']);
    expect(checks(figures({ FAT: 5 }, { low: { FAT: 4 }, high: { FAT: 6 } }))).toEqual([]);
  });
});

describe('dried foods', () => {
  for (const name of [
    'dried carrot',
    'Karotten, getrocknet',
    'carottes séchées',
    'gedroogde wortel',
    'tomate seco',
  ])
    it(`"${name}" with the moisture of the fresh food`, () => {
      expect(checks(figures({ WATER: 88 }), { name })).toEqual(['dried']);
      expect(checks(figures({ WATER: 8 }), { name })).toEqual([]);
    });

  it('a food not called dried may be moist, and dried fruit softer than the rest', () => {
    expect(checks(figures({ WATER: 88 }), { name: 'carrot' })).toEqual([]);
    expect(checks(figures({ WATER: 30 }), { name: 'dried apricot', group: 'fruit' })).toEqual([]);
    expect(checks(figures({ WATER: 30 }), { name: 'dried mealworm', group: 'animal' })).toEqual(['dried']);
  });

  it('figures of the fresh food under the name of the dried', () => {
    const fresh = food('raw carrot', { WATER: 88, PROCNT: 0.93, CHOCDF: 9.6, FIBTG: 2.8 });
    expect(checks(figures({ PROCNT: 0.9, CHOCDF: 9.4 }), { name: 'dried carrot', like: fresh })).toEqual([
      'dried',
    ]);
    expect(checks(figures({ PROCNT: 7.6, CHOCDF: 78 }), { name: 'dried carrot', like: fresh })).not.toContain(
      'dried',
    );
  });
});

describe('beside a like food', () => {
  const like = food('oat', {
    WATER: 8,
    PROCNT: 17,
    FAT: 7,
    CHOCDF: 66,
    FIBTG: 10.6,
    CA: 54,
    MG: 177,
    FE: 4.7,
  });
  const like17 = like.composition;

  it('says nothing of the same figures', () => {
    expect(checks(figures(like17), { like })).toEqual([]);
  });

  it('a slipped decimal mark and a slipped unit', () => {
    expect(checks(figures({ PROCNT: 1.7 }), { like })).toEqual(['slip']);
    expect(checks(figures({ MG: 1770 }), { like })).toEqual(['slip']);
    expect(checks(figures({ FE: 4700 }), { like })).toEqual(['slip']);
  });

  it('amounts per 250 g', () => {
    const many = figures({ PROCNT: 42.5, FAT: 17.5, FIBTG: 26.5 });
    expect(checkFigures(many, { like }).map((w) => w.message.includes('250 g'))).toContain(true);
  });

  it('moisture is set equal before comparing', () => {
    const fresh = food('raw carrot', { WATER: 90, PROCNT: 0.9, CHOCDF: 9 });
    expect(checks(figures({ WATER: 4, PROCNT: 8.6, CHOCDF: 86 }), { like: fresh })).toEqual([]);
    expect(checks(figures({ PROCNT: 8.6 }), { like: fresh })).toEqual(['slip']);
  });
});

describe('the reference tables themselves', () => {
  /** Most rows in 1000 that each check may wrongly warn of. */
  const CEILINGS: Readonly<Record<Exclude<CheckName, 'slip'>, number>> = {
    sum: 1.5,
    part: 1,
    fibre: 0.5,
    bounds: 0,
    // Cocoa, coffee, vinegar, sugar alcohols and the like, counted in a table without the rows of makers.
    energy: 11,
    // Dried fruit stewed again, and dried meat and fish of the Alaska Native tables that stay moist.
    dried: 5.5,
  };

  it('seldom trip a check', () => {
    const found = new Map<string, number>();
    for (let row = 0; row < reference.size; row++) {
      const f = reference.at(row);
      // Table group 09 of SR28 is fruit.
      const group = f.tableGroup === '09' ? 'fruit' : f.group;
      for (const check of new Set(checks(f, { name: f.tableName, ...(group && { group }) })))
        found.set(check, (found.get(check) ?? 0) + 1);
    }
    // Counted again by plain arithmetic from the words of each check.
    const again = { sum: 0, part: 0, fibre: 0 };
    for (let row = 0; row < reference.size; row++) {
      const c = reference.at(row).composition;
      const of = (tag: keyof Composition) => c[tag] ?? 0;
      const rest = Math.max(of('CHOCDF'), of('FIBTG'), of('FIBC'), of('SUGAR'), of('STARCH'));
      if (of('WATER') + of('PROCNT') + of('FAT') + of('ASH') + rest > 103) again.sum++;
      const over = (part: number, whole: number | undefined) =>
        whole !== undefined && part > 1.05 * whole + 0.5;
      const carbohydrates = [of('SUGAR'), of('STARCH'), of('FIBTG')].some((part) => over(part, c.CHOCDF));
      const fats = [of('FASAT'), of('FAMS'), of('FAPU'), of('F18D2CN6'), of('F18D3N3')];
      if (carbohydrates || fats.some((part) => over(part, c.FAT))) again.part++;
      if (over(of('FIBC'), c.FIBTG)) again.fibre++;
    }
    for (const [check, count] of Object.entries(again)) expect(found.get(check) ?? 0, check).toBe(count);
    for (const [check, ceiling] of Object.entries(CEILINGS))
      expect((1000 * (found.get(check) ?? 0)) / reference.size, check).toBeLessThanOrEqual(ceiling);
  });

  it('seldom look slipped beside the row before of the same food', () => {
    const before = new Map<string, Food>();
    let pairs = 0;
    let slips = 0;
    for (let row = 0; row < reference.size; row++) {
      const f = reference.at(row);
      const key = `${f.tableGroup} ${f.tableName.split(',').slice(0, 3).join(',')}`;
      const like = before.get(key);
      before.set(key, f);
      if (!like) continue;
      pairs++;
      if (checks(f, { like }).includes('slip')) slips++;
    }
    expect(pairs).toBeGreaterThan(2500);
    expect(slips / pairs).toBeLessThan(0.02);
  });

  it('a slip by ten of protein shows in nearly every row beside itself', () => {
    let seen = 0;
    let rows = 0;
    for (let row = 0; row < reference.size; row += 7) {
      const f = reference.at(row);
      if ((f.composition.PROCNT ?? 0) < 1) continue;
      rows++;
      const slipped = figures({ ...f.composition, PROCNT: crudeProtein(f)!.value * 10 });
      if (checks(slipped, { like: f }).includes('slip')) seen++;
    }
    expect(seen).toBe(rows);
  });

  it('never throw, whatever the figures', () => {
    const amount = fc.double({ min: 0, max: 1e6, noNaN: true });
    const some = fc.record(
      {
        WATER: amount,
        PROCNT: amount,
        FAT: amount,
        CHOCDF: amount,
        FIBTG: amount,
        ENERC_KCAL: amount,
        ASH: amount,
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(some, some, some, fc.string(), (composition, low, high, name) => {
        const like = food('like', low as Composition);
        for (const w of checkFigures(
          { composition: composition as Composition, sd: {}, low, high } as Figures,
          { name, like },
        ))
          expect(w.message).toMatch(/\d/);
      }),
    );
  });
});
