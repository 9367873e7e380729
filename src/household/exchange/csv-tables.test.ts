import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { household } from '../../../test/household/arbitraries.ts';
import { demo } from '../../../test/household/demo-version.ts';
import type { Household } from '../model.ts';
import { csvOf, TABLES } from './csv-tables.ts';

const read = (text: string, delimiter: string) =>
  Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimiter, skipEmptyLines: true }).data;

describe('tables as CSV', () => {
  it('hold every object once, in columns that are all as long, and no cell that a spreadsheet would reckon', () => {
    fc.assert(
      fc.property(
        household,
        fc.constantFrom(...TABLES),
        fc.constantFrom('.' as const, ',' as const),
        fc.boolean(),
        (all, table, decimal, mark) => {
          const text = csvOf(table, all, { decimal, mark });
          expect(text.startsWith('\ufeff')).toBe(mark);
          const rows = read(text, decimal === ',' ? ';' : ',');
          const objects = {
            ...all,
            pours: all.batches.flatMap((b) => b.pours),
            mixes: all.mixes.flatMap((m) => m.problem.foods),
          }[table];
          expect(rows).toHaveLength(1 + objects.length);
          expect(new Set(rows.map((r) => r.length)).size).toBe(1);
          for (const cell of rows.flat()) expect(cell).not.toMatch(/^\s*(?:[=+@\t\r]|-(?!\d))/);
        },
      ),
      { numRuns: draws(2000, 150) },
    );
  });

  it('writes figures with the chosen mark and leaves what is not known empty', () => {
    const [pellet] = demo.foods;
    if (!pellet) throw new Error('no pellet');
    const foods = [
      { ...pellet, name: '=HYPERLINK("x")', composition: { ASH: 6.5, PROCNT: 17 } },
      { ...pellet, id: 'other', composition: { ASH: 0 } },
    ];
    const point = read(csvOf('foods', { ...demo, foods }, { decimal: '.', mark: false }), ',');
    expect(point[0]?.slice(6)).toEqual([
      'PROCNT (g/100 g)',
      'PROCNT at least',
      'PROCNT at most',
      'ASH (g/100 g)',
      'ASH at least',
      'ASH at most',
    ]);
    expect(point[1]?.[1]).toBe(`'=HYPERLINK("x")`);
    expect(point[1]?.slice(6)).toEqual(['17', '', '', '6.5', '', '']);
    expect(point[2]?.slice(6)).toEqual(['', '', '', '0', '', '']);
    const comma = read(csvOf('foods', { ...demo, foods }, { decimal: ',', mark: false }), ';');
    expect(comma[1]?.[9]).toBe('6,5');
  });

  it('tells of an animal what is known, and of what was written down of it each record', () => {
    const [bramble] = demo.animals;
    if (!bramble) throw new Error('no animal');
    const all: Household = {
      ...demo,
      animals: [
        {
          ...bramble,
          born: { on: '2025-01-02', about: true },
          conditions: [{ what: 'diabetes', since: '2026-01-02', vet: true }],
          wheel: false,
          gone: { how: 'died', on: '2026-10-02' },
        },
      ],
      weighings: [{ id: 'w', animalId: bramble.id, at: '2026-01-01T10:00:00Z', grams: 131.5 }],
      feedings: [
        {
          ...{ id: 'f', animalId: bramble.id, on: '2026-01-01', mix: { grams: 6 } },
          beside: [{ food: 'demo-pellet', grams: 6 }],
          left: { on: '2026-01-02', bowl: { parts: { millet: 2 }, sorted: true, grams: 2 } },
        },
      ],
      trials: [
        {
          ...{ id: 't', animalId: bramble.id, food: 'millet', name: 'Millet', days: ['2026-01-01'] },
          offerings: [{ on: '2026-01-01', seen: 'eaten', grams: 1, left: 0 }],
        },
      ],
      notes: [{ id: 'n', animalId: bramble.id, on: '2026-01-01', kind: 'vet', text: '=SUM(1)' }],
    };
    const rows = (table: (typeof TABLES)[number]) => {
      const [head = [], row = []] = read(csvOf(table, all, { decimal: '.', mark: false }), ',');
      return Object.fromEntries(head.map((name, i) => [name, row[i]]));
    };
    expect(rows('animals')).toMatchObject({
      ...{ 'born on': '2025-01-02', 'born about': 'yes', sex: '', wheel: 'no', daylight: '' },
      ...{ conditions: 'diabetes 2026-01-02 to now, a vet said so', gone: 'died', 'gone on': '2026-10-02' },
    });
    expect(rows('weighings')).toMatchObject({ 'animal name': bramble.name, grams: '131.5', 'tub (g)': '' });
    expect(rows('feedings')).toMatchObject({
      ...{ 'mix (g)': '6', beside: 'demo-pellet: 6 g', batch: '' },
      ...{ 'left in bowl (g)': '2', 'left in bowl, sorted': 'millet: 2 g', 'found in hoard (g)': '' },
    });
    expect(rows('trials')).toMatchObject({ offered: '2026-01-01: eaten (1 g, 0 g left)' });
    expect(rows('notes')).toMatchObject({ kind: 'vet', text: "'=SUM(1)" });
  });
});
