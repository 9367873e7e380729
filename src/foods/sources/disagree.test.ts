import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Composition } from '../food.ts';
import { disagreements } from './disagree.ts';
import type { FoodSource } from './source.ts';

const of = (id: string, composition: Composition, extra: Partial<FoodSource> = {}): FoodSource => ({
  id,
  name: `Source ${id}`,
  basis: 'as fed',
  composition,
  sd: {},
  ...extra,
});
const kinds = (...args: Parameters<typeof disagreements>) => disagreements(...args).map((d) => d.kind);

describe('sources that agree', () => {
  it('raise nothing', () => {
    expect(
      disagreements('all', [of('a', { WATER: 10, PROCNT: 12 }), of('b', { WATER: 9, PROCNT: 12.8 })], 'seed'),
    ).toEqual([]);
  });

  it('raise nothing with themselves, whatever they say', () => {
    const composition = fc.record(
      {
        WATER: fc.double({ min: 0, max: 99, noNaN: true }),
        PROCNT: fc.double({ min: 0, max: 50, noNaN: true }),
        FIBTG: fc.double({ min: 0, max: 50, noNaN: true }),
        CA: fc.double({ min: 0, max: 5000, noNaN: true }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(composition, (c) => {
        expect(disagreements('all', [of('a', c), of('b', c)], 'seed')).toEqual([]);
      }),
    );
  });

  it('raise nothing where the food only dried a little more', () => {
    const a = of('a', { WATER: 30, PROCNT: 20, CA: 100 }, { sd: { PROCNT: 0.5 } });
    const b = of('b', { WATER: 10, PROCNT: (20 * 90) / 70, CA: (100 * 90) / 70 }, { sd: { PROCNT: 0.5 } });
    expect(disagreements('CA', [a, b], 'seed')).toEqual([]);
  });
});

it('does not depend on which source comes first', () => {
  const figure = fc.double({ min: 0.1, max: 90, noNaN: true });
  fc.assert(
    fc.property(figure, figure, (x, y) => {
      const [a, b] = [of('a', { PROCNT: x }), of('b', { PROCNT: y })];
      expect(kinds('PROCNT', [a, b], 'seed')).toEqual(kinds('PROCNT', [b, a], 'seed'));
    }),
  );
});

describe('figures too far apart', () => {
  it('name the sources, the figures and the way out', () => {
    const [said] = disagreements('PROCNT', [of('a', { PROCNT: 12 }), of('b', { PROCNT: 20 })], 'seed');
    expect(said).toEqual({
      tag: 'PROCNT',
      kind: 'apart',
      between: ['a', 'b'],
      sentence:
        'Protein: Source a 12 g, Source b 20 g. They lie further apart than one food usually varies. Check that both mean the same variety, part and preparation, or choose the source to follow.',
    });
  });

  it('are judged by the sd printed, where one is', () => {
    const wide = { sd: { PROCNT: 2 } };
    expect(
      disagreements('PROCNT', [of('a', { PROCNT: 12 }, wide), of('b', { PROCNT: 20 }, wide)], 'seed'),
    ).toEqual([]);
  });
});

describe('a slip', () => {
  it.each([
    ['CA', 40, 400, /about 10 times Source a.*per kg/],
    ['CA', 4, 410, /about 100 times/],
    ['FE', 0.005, 5.1, /about 1000 times.*mg may stand for g/],
    ['PROCNT', 10, 25, /about 2.5 times.*250 g/],
    ['NA', 200, 495, /about 2.5 times.*salt/],
    ['ENERC_KCAL', 350, 1464, /about 4.184 times.*kilojoules/],
  ] as const)('of %s from %d to %d', (tag, less, more, message) => {
    const [said] = disagreements(tag, [of('a', { [tag]: less }), of('b', { [tag]: more })], undefined);
    expect(said!.kind).toBe('slip');
    expect(said!.sentence).toMatch(message);
  });

  it('of quantity is not seen in one nutrient alone: a wrong quantity scales all', () => {
    const [a, b] = [of('a', { PROCNT: 12, FAT: 3, ASH: 2 }), of('b', { PROCNT: 12, FAT: 3, ASH: 5 })];
    expect(kinds('all', [a, b], 'seed')).toEqual(['apart']);
    const [c, d] = [of('c', { PROCNT: 12, ASH: 2 }), of('d', { PROCNT: 30, ASH: 5 })];
    expect(kinds('all', [c, d], 'seed')).toEqual(['slip', 'slip']);
  });

  it('is not seen where a figure is 0', () => {
    expect(kinds('CA', [of('a', { CA: 0 }), of('b', { CA: 40 })], 'seed')).toEqual(['apart']);
  });
});

describe('fresh against dried', () => {
  // USDA SR28 carrots, raw (11124) and dehydrated (11683).
  const raw = of('raw', { WATER: 88.29, PROCNT: 0.93, FAT: 0.24, ASH: 0.97, CHOCDF: 9.58, FIBTG: 2.8 });
  const dried = of('dried', { WATER: 4, PROCNT: 8.1, FAT: 1.49, ASH: 6.84, CHOCDF: 79.57, FIBTG: 23.6 });

  it('is told once a pair, by moisture', () => {
    const said = disagreements('all', [dried, raw], 'vegetable').filter((d) => d.kind === 'dried');
    expect(said).toHaveLength(1);
    expect(said[0]!.sentence).toContain(
      'Source raw looks like the moist food (fresh or cooked), Source dried like the dry',
    );
  });

  it('is told for a single nutrient too', () => {
    expect(kinds('PROCNT', [raw, dried], 'vegetable')).toEqual(['dried']);
  });

  it('does not hide what differs on dry matter too', () => {
    const lime = of('lime', { ...dried.composition, CA: 5000 });
    const said = disagreements('all', [of('raw', { ...raw.composition, CA: 33 }), lime], 'vegetable');
    expect(said.map((d) => [d.tag, d.kind])).toEqual([
      ['WATER', 'dried'],
      ['CA', 'apart'],
    ]);
  });

  it('is suspected without moistures where everything is larger by one factor', () => {
    const { WATER: _, ...noWater } = dried.composition;
    const conserved = Object.fromEntries(
      Object.entries(raw.composition).map(([t, v]) => [t, (v! * 96) / 11.71]),
    ) as Composition;
    const said = disagreements(
      'PROCNT',
      [raw, of('x', { ...noWater, ...conserved, WATER: undefined })],
      'vegetable',
    );
    expect(said.map((d) => d.kind)).toEqual(['dried']);
    expect(said[0]!.sentence).toContain('8.2 times');
  });

  it('is not seen where the foods differ on dry matter as well', () => {
    const other = of('other', { WATER: 8, PROCNT: 45, FAT: 30, ASH: 1, FIBTG: 60 });
    expect(kinds('all', [raw, other], 'vegetable')).not.toContain('dried');
  });
});

describe('crude fibre against dietary', () => {
  it('is seen by the ratio usual in the group', () => {
    const [said] = disagreements('FIBTG', [of('a', { FIBTG: 4 }), of('b', { FIBTG: 13 })], 'legume');
    expect(said!.kind).toBe('fibre');
    expect(said!.sentence).toMatch(
      /^Dietary fibre: Source a 4 g, Source b 13 g\. Source a looks like crude fibre/,
    );
  });

  it('is seen where one prints as dietary what the other prints as crude', () => {
    const [said] = disagreements(
      'FIBTG',
      [of('a', { FIBTG: 2.1 }), of('b', { FIBTG: 12, FIBC: 2.2 })],
      'seed',
    );
    expect(said).toMatchObject({ kind: 'fibre', between: ['a', 'b'] });
  });

  it('is seen where one prints as crude what the other prints as dietary', () => {
    const [said] = disagreements(
      'FIBC',
      [of('a', { FIBC: 2.2, FIBTG: 12 }), of('b', { FIBC: 12.2 })],
      'seed',
    );
    expect(said!.sentence).toContain('Source b looks like dietary fibre written as crude');
  });

  it('is impossible the other way round: crude above dietary', () => {
    const [said] = disagreements('FIBC', [of('a', { FIBC: 9 }), of('b', { FIBTG: 3 })], 'seed');
    expect(said!.sentence).toContain('Crude fibre is a part of dietary fibre and cannot be more');
  });

  it('raises nothing where both measures fit', () => {
    expect(disagreements('all', [of('a', { FIBC: 3 }), of('b', { FIBTG: 10 })], 'seed')).toEqual([]);
  });
});

describe('guaranteed bounds', () => {
  const label = of('label', {}, { low: { PROCNT: 16 }, high: { FIBC: 8 } });

  it('are broken from below and from above', () => {
    const said = disagreements('all', [of('a', { PROCNT: 12, FIBC: 9 }), label], undefined);
    expect(said.map((d) => d.sentence)).toEqual([
      expect.stringContaining('Protein: Source a 12 g, but Source label guarantees at least 16 g'),
      expect.stringContaining('Crude fibre: Source a 9 g, but Source label guarantees at most 8 g'),
    ]);
  });

  it('hold at the bound itself', () => {
    expect(disagreements('all', [of('a', { PROCNT: 16, FIBC: 8 }), label], undefined)).toEqual([]);
  });

  it('may contradict one another', () => {
    const [said] = disagreements('PROCNT', [label, of('b', {}, { high: { PROCNT: 14 } })], undefined);
    expect(said!.sentence).toContain('No food keeps both');
  });
});
