import { describe, expect, it } from 'vitest';
import { NUTRIENTS } from '../../nutrition/nutrients.ts';
import keeperFoods from './keeper-foods.json' with { type: 'json' };
import publishedFoods from './published-foods.json' with { type: 'json' };

interface KeeperFood {
  ref: string;
  name: string;
  group: string;
  also: string[];
  form: string;
}

interface PublishedFood {
  id: string;
  name: string;
  scientific?: string;
  group: string;
  per100g: Record<string, number>;
  sd?: Record<string, number>;
  n?: number;
  source: string;
  sourceNote: string;
  proteinFactor?: number;
}

const foods = keeperFoods as KeeperFood[];
const published = publishedFoods as unknown as PublishedFood[];

const GROUPS = ['seed', 'legume', 'vegetable', 'herb', 'animal', 'nut', 'fruit'];
const FORMS = ['dry', 'fresh', 'cooked'];
const REF = /^(sr28:\d{5}|pub:[a-z0-9-]+)$/;
const GRAM_TAGS = ['WATER', 'PROCNT', 'FAT', 'ASH', 'FIBTG', 'FIBC', 'FIBND', 'FIBAD', 'CHOCDF'];
const AMINO_ACIDS = NUTRIENTS.filter((n) => n.group === 'amino acid').map((n): string => n.tag);
const TAGS = [
  ...GRAM_TAGS,
  ...['CA', 'P', 'MG', 'K', 'NA', 'FE', 'ZN', 'CU', 'MN', 'SE', 'VITB12', 'ENERC_KCAL'],
  ...AMINO_ACIDS,
];
const NEVER_FED =
  /\b(onion|garlic|leek|chives?|shallot|orange|lemon|lime|grapefruit|clementine|kumquat|avocado|chocolate|cocoa|rhubarb|almond|kidney bean)/i;

/** Values that occur more than once, compared without regard to case. */
function repeated(values: string[]): string[] {
  const seen = new Set<string>();
  return values.filter((value) => {
    const key = value.toLowerCase();
    if (seen.has(key)) return true;
    seen.add(key);
    return false;
  });
}

describe('keeper foods', () => {
  it('lists at least 140 foods', () => {
    expect(foods.length).toBeGreaterThanOrEqual(140);
  });

  it('names and refers to each food once', () => {
    expect(repeated(foods.map((food) => food.name))).toEqual([]);
    expect(repeated(foods.map((food) => food.ref))).toEqual([]);
  });

  it.each(foods)('$name is well formed', (food) => {
    expect(food.ref).toMatch(REF);
    expect(GROUPS).toContain(food.group);
    expect(FORMS).toContain(food.form);
    expect(food.name).toMatch(/^[A-Z]/);
    expect(repeated([food.name, ...food.also])).toEqual([]);
  });

  it('holds nothing from the never-feed list', () => {
    expect(foods.filter((food) => NEVER_FED.test([food.name, ...food.also].join(';')))).toEqual([]);
  });

  it('covers every group', () => {
    expect(new Set(foods.map((food) => food.group))).toEqual(new Set(GROUPS));
  });

  it('and the published table refer to each other completely, with the same name and group', () => {
    const referred = foods.filter((food) => food.ref.startsWith('pub:'));
    const key = (id: string, name: string, group: string) => `${id} ${name} ${group}`;
    expect(referred.map((food) => key(food.ref.slice(4), food.name, food.group)).sort()).toEqual(
      published.map((food) => key(food.id, food.name, food.group)).sort(),
    );
  });
});

describe('published foods', () => {
  it('names and identifies each row once', () => {
    expect(repeated(published.map((food) => food.id))).toEqual([]);
    expect(repeated(published.map((food) => food.name))).toEqual([]);
  });

  it.each(published)('$name has a source, a note and possible figures', (food) => {
    expect(food.source.length).toBeGreaterThan(20);
    expect(food.sourceNote.length).toBeGreaterThan(10);
    expect(GROUPS).toContain(food.group);

    const figures = Object.entries(food.per100g);
    expect(figures.length).toBeGreaterThanOrEqual(3);
    for (const [tag, value] of figures) {
      expect(TAGS).toContain(tag);
      expect(Number.isFinite(value), tag).toBe(true);
      expect(value, tag).toBeGreaterThanOrEqual(0);
      if (GRAM_TAGS.includes(tag)) expect(value, tag).toBeLessThanOrEqual(100);
    }
    for (const [tag, value] of Object.entries(food.sd ?? {})) {
      expect(food.per100g, tag).toHaveProperty(tag);
      expect(Number.isFinite(value) && value >= 0, tag).toBe(true);
    }
  });

  it.each(published)('the parts of $name do not exceed the whole', ({ per100g: g }) => {
    const fibre = Math.max(g.FIBTG ?? 0, g.FIBC ?? 0);
    const grams = (g.WATER ?? 0) + (g.PROCNT ?? 0) + (g.FAT ?? 0) + (g.ASH ?? 0);
    expect(grams + fibre).toBeLessThanOrEqual(100.5);
    expect(grams + (g.CHOCDF ?? 0)).toBeLessThanOrEqual(100.5);
    const mineralGrams =
      (['CA', 'P', 'MG', 'K', 'NA'] as const).reduce((sum, tag) => sum + (g[tag] ?? 0), 0) / 1000;
    // 5 % slack: the SR28 roselle record itself lists slightly more mineral than ash.
    if (g.ASH !== undefined) expect(mineralGrams).toBeLessThanOrEqual(g.ASH * 1.05);
    const aminoAcids = AMINO_ACIDS.reduce((sum, tag) => sum + (g[tag] ?? 0), 0) / 1000;
    // Each takes up a molecule of water when the protein is split: at most about a sixth more than the protein.
    expect(aminoAcids).toBeLessThanOrEqual((g.PROCNT ?? 0) * 1.17);
    if (g.FIBTG !== undefined && g.FIBC !== undefined) {
      expect(g.FIBC).toBeLessThanOrEqual(g.FIBTG);
    }
  });

  it.each([
    ['mealworm-live', 'mealworm-dried', 'P'],
    ['cricket-fresh', 'cricket-dried', 'MG'],
    ['bsf-larva-live', 'bsf-larva-dried', 'CA'],
    ['nettle-leaf-fresh', 'nettle-leaf-dried', 'CA'],
  ])('%s and %s agree on a dry-matter basis', (freshId, driedId, tag) => {
    const onDryMatter = (id: string) => {
      const g = published.find((food) => food.id === id)!.per100g;
      return g[tag]! / (100 - g.WATER!);
    };
    expect(onDryMatter(driedId) / onDryMatter(freshId)).toBeCloseTo(1, 1);
  });

  it('gives no crude or dietary fibre for insects, where methods measure chitin', () => {
    for (const food of published.filter((row) => row.group === 'animal')) {
      expect(food.per100g).not.toHaveProperty('FIBC');
      expect(food.per100g).not.toHaveProperty('FIBTG');
    }
  });
});
