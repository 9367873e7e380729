import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeReference } from '../reference.ts';
import { comparePairs, PAIRS_LEFT_OUT, REPEATS } from './compare-pairs.ts';
import { fitFor, fitSpread, holdOut, spreadJson } from './fit.ts';
import { PAIRS } from './pairs.ts';
import { dryingReport } from './report.ts';

const reference = decodeReference(readFileSync(new URL('../data/reference.bin', import.meta.url)));
const { comparisons, calculated, skipped } = comparePairs(reference);
const spread = fitSpread(comparisons);

describe('the files made from the pairs (renew: npx vitest run src/foods/forms/report.test.ts -u)', () => {
  it('drying-spread.json is what the pairs give', async () => {
    await expect(spreadJson(spread)).toMatchFileSnapshot('drying-spread.json');
  });

  it('docs/drying-model.md is what the pairs give', async () => {
    await expect(dryingReport(reference)).toMatchFileSnapshot('../../../docs/drying-model.md');
  });
});

describe('coverage of plants the fit has not seen', () => {
  const held = holdOut(comparisons);
  const own = held.filter((h) => !REPEATS.includes(h.tag));
  const share = (some: typeof held) => some.filter((h) => h.covered).length / some.length;

  it('is at least 90 % overall, of values and of bounds', () => {
    const single = own.filter((h) => fitFor(spread, h.tag, h.pair.kind === 'fruit')!.sd !== null);
    expect(own.length).toBeGreaterThan(1000);
    expect(share(own)).toBeGreaterThanOrEqual(0.9);
    expect(share(single)).toBeGreaterThanOrEqual(0.9);
    expect(share(own.filter((h) => !single.includes(h)))).toBeGreaterThanOrEqual(0.9);
  });

  it('is at least 85 % in every nutrient with 20 figures or more', () => {
    for (const tag of new Set(held.map((h) => h.tag))) {
      const some = held.filter((h) => h.tag === tag);
      if (some.length >= 20) expect([tag, share(some) >= 0.85]).toEqual([tag, true]);
    }
  });

  it('is not had by declaring anything: the intervals of the main nutrients stay narrow', () => {
    expect(spread.general.ENERC_KCAL!.sd).toBeLessThan(0.1);
    for (const tag of ['PROCNT', 'ASH', 'MG', 'K', 'P'] as const)
      expect(spread.general[tag]!.sd).toBeLessThan(0.4);
  });

  it('leaves all rows of a plant out together', () => {
    // A plant whose figures no other plant resembles must be missed once it is left out.
    const pair = { plant: 'odd', kind: 'vegetable', fresh: 'a', dried: 'b' } as const;
    const odd = Array.from({ length: 40 }, () => ({ pair, tag: 'PROCNT' as const, kept: 9 }));
    const mixed = holdOut([...comparisons, ...odd]);
    expect(mixed.filter((h) => h.pair.plant === 'odd').some((h) => h.covered)).toBe(false);
  });
});

describe('the list of pairs', () => {
  it('names rows that exist, each pair once', () => {
    const refs = [...PAIRS, ...PAIRS_LEFT_OUT].flatMap((p) => [p.dried, ...(p.fresh ? [p.fresh] : [])]);
    expect(refs.filter((ref) => !reference.get(ref))).toEqual([]);
    const keys = [...PAIRS, ...PAIRS_LEFT_OUT].map((p) => `${p.fresh} ${p.dried}`);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('holds every dried fruit, vegetable and herb of SR28, used or with a reason', () => {
    const listed = new Set([...PAIRS, ...PAIRS_LEFT_OUT].map((p) => p.dried));
    const dried = Array.from({ length: reference.size }, (_, row) => reference.at(row)).filter(
      (food) =>
        ['02', '09', '11'].includes(food.tableGroup) &&
        /DRIED|DEHYD|RAISINS|PRUNES|POTATO FLOUR|(ONION|GARLIC|TOMATO|CHILI|CURRY) POWDER/i.test(
          food.tableName,
        ) &&
        !/STEWED|CANNED|JUICE|FRIED|SEASONING|PREPARED|DRY MIX/i.test(food.tableName),
    );
    expect(dried.length).toBeGreaterThan(50);
    expect(dried.filter((food) => !listed.has(food.ref)).map((food) => food.tableName)).toEqual([]);
  });

  it('finds the rows that USDA calculated from the fresh ones', () => {
    expect(calculated.map((p) => p.plant)).toEqual([
      'chinese chestnut',
      'japanese chestnut',
      'ginkgo',
      'acorn',
      'lotus seed',
    ]);
  });

  it('leaves out fibre that is crude, and carotene that is imputed', () => {
    const left = skipped.map((s) => `${s.pair.dried} ${s.tag}`);
    for (const figure of ['sr28:02012 FIBTG', 'sr28:02017 FIBTG', 'sr28:11683 CARTB'])
      expect(left).toContain(figure);
    expect(comparisons.some((c) => c.pair.dried === 'sr28:02012' && c.tag === 'FIBTG')).toBe(false);
  });
});
