import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NUTRIENTS } from '../../nutrition/nutrients.ts';
import type { Food } from '../food.ts';
import { atMoisture } from './dried-composition.ts';
import { type Formed, formOf } from './form-of.ts';
import { publishedDrying, RETENTION_ROWS, retentionRow } from './retention.ts';

const almond: Food = {
  ref: 'mine',
  name: 'almond',
  group: 'nut',
  source: 'test',
  composition: { WATER: 5, PROCNT: 19, THIA: 0.2, TOCPHA: 24, VITC: 0, MN: 2, FOL: 40, FOLDFE: 40 },
  sd: { PROCNT: 1, THIA: 0.02 },
};
const spinach: Food = {
  ref: 'mine',
  name: 'leaf',
  group: 'herb',
  source: 'test',
  composition: { WATER: 90, PROCNT: 3, CHOCDF: 4, CA: 100, VITC: 30, VITK1: 400, VITB12: 0, ENERC_KCAL: 25 },
  sd: { CA: 10 },
};
const formed = (answer: ReturnType<typeof formOf>): Formed => {
  if (!answer.formed) throw new Error(answer.reason);
  return answer;
};

describe('the table of retention factors', () => {
  it('has percentages to the nearest 5, each row once', () => {
    for (const row of RETENTION_ROWS)
      for (const percent of Object.values(row.percent))
        expect([percent % 5, percent > 0 && percent <= 100]).toEqual([0, true]);
    expect(new Set(RETENTION_ROWS.map((row) => `${row.form} ${row.for}`)).size).toBe(RETENTION_ROWS.length);
  });

  it('gives the factors for drying fruit, and none for what it does not list', () => {
    expect(publishedDrying('VITC')).toBe(0.2);
    expect(publishedDrying('THIA')).toBe(0.7);
    expect(publishedDrying('VITK1')).toBeUndefined();
    expect(retentionRow('roasted', 'legume')).toBeUndefined();
  });
});

describe('dried', () => {
  it('holds what the dry matter of the fresh food held, worked out by hand', () => {
    // USDA SR28 11124, raw carrot, per 100 g: water 88.29, protein 0.93, dietary fibre 2.8. At 4 g water 100 g hold
    // 96 g of dry matter instead of 11.71 g: 0.93 x 96 / 11.71 = 7.624 g protein and 2.8 x 96 / 11.71 = 22.955 g fibre.
    const carrot: Food = {
      ref: 'sr28:11124',
      name: 'carrot',
      group: 'vegetable',
      source: 'SR28',
      composition: { WATER: 88.29, PROCNT: 0.93, FIBTG: 2.8, VITB12: 0 },
      sd: {},
    };
    const { figures, notes, source } = formed(formOf(carrot, 'dried', { moisture: 4 }));
    expect(figures.composition.WATER).toBe(4);
    expect(figures.composition.PROCNT).toBeCloseTo(7.624, 3);
    expect(figures.composition.FIBTG).toBeCloseTo(22.955, 3);
    expect(figures.composition.VITB12).toBe(0);
    expect(notes.PROCNT).toMatch(/^dry matter conserved/);
    expect(source).toBe('SR28, dried to 4 % moisture by calculation');
  });

  it('gives a vitamin that drying spoils bounds with the reason, and is never surer than the fresh food', () => {
    // 10 g of dry matter become 92 g: x 9.2.
    const { figures, notes } = formed(formOf(spinach, 'dried', { moisture: 8 }));
    expect(figures.composition.CA).toBeCloseTo(920, 9);
    expect(figures.sd.CA).toBeGreaterThan(92);
    expect(figures.composition).not.toHaveProperty('VITC');
    // A fifth of vitamin C is kept (USDA's factor for dried fruit): 30 x 9.2 x 0.2 lies between the bounds.
    expect(figures.low!.VITC).toBeLessThan(55.2);
    expect(figures.high!.VITC).toBeGreaterThan(55.2);
    expect(notes.VITC).toContain('limits only');
  });
});

describe('roasted', () => {
  it('conserves dry matter and applies the factors, with the source', () => {
    const answer = formed(formOf(almond, 'roasted', { moisture: 2 }));
    const factor = 98 / 95;
    expect(answer.figures.composition.PROCNT).toBeCloseTo(19 * factor, 12);
    expect(answer.figures.composition.THIA).toBeCloseTo(0.2 * factor * 0.85, 12);
    expect(answer.figures.sd.THIA).toBeCloseTo(0.02 * factor * 0.85, 12);
    expect(answer.figures.composition.FOLDFE).toBe(answer.figures.composition.FOL);
    expect(answer.figures.composition.VITC).toBe(0);
    expect(answer.source).toContain('Retention Factors, Release 6');
    expect(answer.source).toContain('2203');
  });

  it('leaves amino acids unknown: heat takes some of the lysine', () => {
    const food = { ...almond, composition: { ...almond.composition, LYS: 570 } };
    const { figures, notes } = formed(formOf(food, 'roasted', { moisture: 2 }));
    expect(figures.composition).not.toHaveProperty('LYS');
    expect(notes.LYS).toContain('no published factor');
  });

  it('leaves a vitamin without a factor unknown, with the reason', () => {
    const answer = formed(formOf(almond, 'roasted', { moisture: 2 }));
    expect(answer.figures.composition).not.toHaveProperty('TOCPHA');
    expect(answer.notes.TOCPHA).toContain('no published factor');
  });
});

describe('blanched', () => {
  it('asks for weights, since moisture alone does not say what was washed out', () => {
    const answer = formOf(spinach, 'blanched', { moisture: 92 });
    expect(answer.formed).toBe(false);
    expect(answer).toMatchObject({ reason: expect.stringMatching(/weigh before and after/) });
  });

  it('gives factors where published, bounds elsewhere', () => {
    // 100 g of leaf with 10 g of dry matter become 90 g with 8 % dry matter: 2.8 g washed out.
    const { figures, notes } = formed(formOf(spinach, 'blanched', { moisture: 92, before: 100, after: 90 }));
    expect(figures.composition.CA).toBeCloseTo((100 / 0.9) * 0.95, 9);
    expect(figures.high!.CA).toBeCloseTo(100 / 0.9, 9);
    expect(figures.composition.VITC).toBeCloseTo((30 / 0.9) * 0.55, 9);
    expect(figures.composition).not.toHaveProperty('PROCNT');
    expect(figures.low!.PROCNT).toBeCloseTo(Math.max(0, 3 / 0.9 - 2.8 / 0.9), 9);
    expect(figures.high!.PROCNT).toBeCloseTo(3 / 0.9, 9);
    expect(figures.composition.VITB12).toBe(0);
    for (const tag of ['VITK1', 'ENERC_KCAL'] as const) {
      expect(figures.composition).not.toHaveProperty(tag);
      expect(notes[tag]).toMatch(/^not given/);
    }
  });

  it('refuses weights that would mean dry matter was gained, and weights that are none', () => {
    const blanch = (p: object) => () =>
      formOf(spinach, 'blanched', { moisture: 80, before: 100, after: 90, ...p });
    expect(blanch({})).toThrow(/dry matter was gained/);
    expect(blanch({ before: 0 })).toThrow(/before must be a weight above 0/);
    expect(blanch({ after: Number.NaN })).toThrow(/after must be a weight above 0/);
    expect(blanch({ moisture: 100 })).toThrow(/moisture/);
  });
});

describe('a form without a source', () => {
  it.each([
    ['sprouted', almond, /sprouting/],
    ['roasted', spinach, /no row for leaf, roasted/],
    ['roasted', { ...almond, group: 'seed' as const }, /no row for seed, roasted.*measured food/],
    ['blanched', { ...spinach, group: 'animal' as const }, /no row for animal, blanched/],
  ] as const)('%s answers with the reason', (form, food, reason) => {
    const answer = formOf(food, form, { moisture: 5, before: 100, after: 90 });
    expect(answer.formed).toBe(false);
    if (!answer.formed) expect(answer.reason).toMatch(reason);
  });

  it('may be told what the food is like', () => {
    expect(formOf({ ...almond, group: 'seed' }, 'roasted', { moisture: 2, as: 'nut' }).formed).toBe(true);
  });
});

describe('any form', () => {
  it('keeps the nitrogen factor that the protein was counted with', () => {
    const leaf = { ...spinach, proteinFactor: 5.7 };
    const nut = { ...almond, proteinFactor: 5.18 };
    expect(formed(formOf(leaf, 'dried', { moisture: 8 })).figures.proteinFactor).toBe(5.7);
    expect(formed(formOf(nut, 'roasted', { moisture: 2 })).figures.proteinFactor).toBe(5.18);
    const weights = { moisture: 91, before: 100, after: 95 };
    expect(formed(formOf(leaf, 'blanched', weights)).figures.proteinFactor).toBe(5.7);
    expect(atMoisture(leaf, 50).proteinFactor).toBe(5.7);
    expect(formed(formOf(spinach, 'dried', { moisture: 8 })).figures).not.toHaveProperty('proteinFactor');
  });

  it('never makes an unknown known', () => {
    const tags = NUTRIENTS.map((n) => n.tag).filter((tag) => tag !== 'WATER');
    fc.assert(
      fc.property(
        fc.subarray(tags),
        fc.constantFrom('dried', 'roasted', 'blanched'),
        fc.constantFrom('nut', 'legume', 'vegetable'),
        (known, form, as) => {
          const composition = { ...Object.fromEntries(known.map((tag) => [tag, 1])), WATER: 60 };
          const food: Food = { ...almond, composition, sd: {} };
          const answer = formOf(food, form, { moisture: 50, before: 100, after: 70, as });
          if (!answer.formed) return;
          const { figures } = answer;
          for (const part of [figures.composition, figures.sd, figures.low ?? {}, figures.high ?? {}])
            expect(Object.keys(part).filter((tag) => !(tag in composition))).toEqual([]);
        },
      ),
    );
  });
});
