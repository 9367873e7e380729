import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadReference } from '../household/reference-file.ts';
import { normalBelow, normalQuantile } from '../nutrition/normal.ts';
import { NUTRIENTS, type Tag } from '../nutrition/nutrients.ts';
import { buildReference, readPlainUsda } from './build/sources.ts';
import { coefficients, overGroups, quantile, rms, shrunk } from './build/variation.ts';
import { FOOD_GROUPS } from './food.ts';
import { labelSpread, spreadOf, variationOf } from './variation.ts';

const JSON_FILE = new URL('./data/variation.json', import.meta.url);
const rows = readPlainUsda(process.cwd());
const GROUPS = Object.keys(FOOD_GROUPS);

it('variation.json is what the build makes of the table, character for character (else: npm run reference)', () => {
  expect(readFileSync(JSON_FILE, 'utf8')).toBe(buildReference(process.cwd()).variation);
});

describe('the coefficient declared', () => {
  it('is of the group where the group is known, and says how many foods stand behind it', () => {
    const seed = variationOf('PROCNT', 'seed')!;
    // Reckoned anew below.
    expect(seed.n).toBe(73);
    expect(seed.source).toBe('variation of protein between samples, 73 foods of the group seed, USDA SR26');
  });

  it('falls back to all foods, then to the kind of nutrient', () => {
    expect(variationOf('PROCNT', undefined)).toEqual(variationOf('PROCNT', 'no such group'));
    expect(variationOf('BIOT', 'animal')).toEqual(variationOf('BIOT', undefined));
    expect(variationOf('FIBC', 'seed')!.source).toMatch(/^variation of fibre figures/);
    expect(variationOf('BIOT', 'animal')!.source).toMatch(/water-soluble vitamin figures/);
  });

  it('of an amino acid is that of the protein', () => {
    expect(variationOf('LYS', 'legume')).toEqual(variationOf('PROCNT', 'legume'));
  });

  it('covers every nutrient', () => {
    for (const { tag } of NUTRIENTS) expect(variationOf(tag, undefined)?.cv, tag).toBeGreaterThan(0);
  });

  it('is shrunk: between what the group alone says and what all foods say', () => {
    const group = coefficients(rows, 'FAT', 'nut');
    const any = overGroups(rows, 'FAT')!;
    expect(rms(group)).toBeLessThan(shrunk(group, any));
    expect(shrunk(group, any)).toBeLessThan(any);
    expect(shrunk([], any)).toBeCloseTo(any, 12);
  });
});

/** The printed table, read plainly: group, mean and sd of one nutrient, of foods that release 28 prints the same for. */
function printed(number: string, tag: Tag): { group: string; mean: number; sd: number }[] {
  const table = (name: string) =>
    gunzipSync(readFileSync(`tables/usda-sr26/${name}.tsv.gz`))
      .toString()
      .split('\n')
      .slice(1)
      .map((line) => line.split('\t'));
  const foods = new Map(table('foods').map(([id, group, name]) => [id, { group, name }]));
  const reference = loadReference();
  return table('nutrients').flatMap(([id = '', nutr, value, points, se, source = '']) => {
    const newer = reference.get(`sr28:${id.padStart(5, '0')}`)?.composition[tag] ?? 0;
    const [mean, n, error] = [Number(value), Number(points), Number(se)];
    if (nutr !== number || !['1', '6', '13'].includes(source) || n < 3 || error <= 0) return [];
    if (newer <= 0 || Math.abs(newer - mean) > 0.03 * newer) return [];
    const { group = '', name = '' } = foods.get(id) ?? {};
    // A pooled figure whose error is not that of its analyses (build/odd-spread.ts) has no spread in the reference.
    if (reference.get(`sr28:${id.padStart(5, '0')}`)!.sd[tag] === undefined) {
      expect(n).toBeGreaterThanOrEqual(30);
      return [];
    }
    // Dry goods count dry.
    const water = reference.get(`sr28:${id.padStart(5, '0')}`)!.composition.WATER!;
    if (['1200', '1600', '2000'].includes(group) && water > 20) return [];
    const kind = group === '1200' ? name.slice(0, 4) : group;
    // Kept to three figures.
    return [{ group: kind, mean: newer, sd: Number((error * Math.sqrt(n)).toPrecision(3)) }];
  });
}

/** The figures of one kind of food as they count: none twice, no trace, none above 4 medians or 1. */
function counted(all: ReturnType<typeof printed>, kinds: readonly string[]): number[] {
  const median = (values: readonly number[]) => {
    const sorted = [...values].sort((x, y) => x - y);
    return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
  };
  const own = all.filter((f) => kinds.includes(f.group));
  const once = [...new Map(own.map((f) => [`${f.mean} ${f.sd}`, f])).values()];
  const middle = median(once.map((f) => f.mean));
  const cvs = once.filter((f) => f.mean >= middle / 10).map((f) => Math.min(1, f.sd / f.mean));
  return cvs.map((cv) => Math.min(cv, 4 * median(cvs)));
}

describe('the coefficient, reckoned anew from the printed table', () => {
  // Groups of USDA: 2000 grains, 1600 legumes, 900 fruit, 1200 nuts and seeds, told apart by their first word.
  it.each([
    ['PROCNT', '203', 'seed', ['2000', 'Seed']],
    ['PROCNT', '203', 'legume', ['1600']],
    ['FAT', '204', 'nut', ['Nuts']],
    ['CA', '301', 'fruit', ['900']],
    ['FE', '303', 'seed', ['2000', 'Seed']],
  ] as const)('%s (%s) of the group %s', (tag, number, group, kinds) => {
    const all = printed(number, tag);
    const own = counted(all, kinds);
    const each = [
      ['2000', 'Seed'],
      ['1600'],
      ['1100'],
      ['200'],
      ['100', '500', '1000', '1300', '1500', '1700'],
      ['Nuts'],
      ['900'],
    ].map((of) => rms(counted(all, of)));
    const sum = own.reduce((squares, cv) => squares + cv ** 2, 0);
    // As though five foods stood beside the group's own that vary as foods of all groups do.
    const declared = Math.sqrt((sum + 5 * rms(each) ** 2) / (own.length + 5));
    expect(variationOf(tag, group)!.n).toBe(own.length);
    expect(variationOf(tag, group)!.cv).toBeCloseTo(declared, 3);
  });

  it('by hand: a trace is left out and so is a figure that stands twice, one odd food counts as 1, and five foods of the whole stand beside', () => {
    const row = (value: number, sd: number) => ({
      ...rows[0]!,
      tableGroup: '20',
      composition: { FE: value, WATER: 10 },
      sd: { FE: sd },
    });
    // The median is 10, so 0.5 is a trace. 1 / 10 is 0.1, 40 / 20 counts as 1.
    const cvs = coefficients([row(10, 1), row(20, 40), row(0.5, 0.5), row(10, 1)], 'FE', 'seed');
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
        (r) =>
          /^(02|09|11|12|16|20)$/.test(r.tableGroup) &&
          r.sd.WATER &&
          r.composition.WATER! >= from &&
          r.composition.WATER! < to,
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
  const any = overGroups(rows, tag)!;
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
