import { describe, expect, it } from 'vitest';
import { splitText } from '../../../src/household/exchange/table/split-text.ts';
import { TABLES } from './invented-tables.ts';
import { settle } from './settle-table.ts';

describe('tables as keepers write them', () => {
  for (const table of TABLES) {
    it(table.what, () => {
      const split = table.text === undefined ? undefined : splitText(table.text);
      expect(split?.rivals ?? []).toEqual([]);
      const grid = split?.grid ?? table.cells ?? [];
      const { table: read, asked } = settle(grid, table.answers);
      const wanted = Object.keys(table.answers);
      const isWanted = (id: string) => wanted.includes(id) || wanted.includes(id.split(' ')[0] ?? '');
      expect(asked.filter((id) => !isWanted(id))).toEqual([]);
      // Each answer was asked for: none is taken in silence.
      expect(wanted.filter((w) => !asked.some((id) => id === w || id.split(' ')[0] === w))).toEqual([]);
      const rows = read.rows
        .filter((r) => r.become?.as !== 'left-out')
        .map((r) => ({
          name: r.name,
          ...(r.share !== undefined && { share: r.share }),
          ...(r.group && { group: r.group }),
          ...(r.pricePerKg !== undefined && { price: r.pricePerKg }),
          values: r.figures.composition,
          low: r.figures.low ?? {},
          high: r.figures.high ?? {},
        }));
      expect(rows).toEqual(table.rows.map((r) => ({ values: {}, low: {}, high: {}, ...r })));
      expect(read.rows.flatMap((r) => r.faults)).toEqual([]);
      expect(read.offHundred).toBe(table.offHundred);
    });
  }
});
