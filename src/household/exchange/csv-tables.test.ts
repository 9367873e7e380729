import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { household } from '../../../test/household/arbitraries.ts';
import { demo } from '../../../test/household/demo-version.ts';
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
});
