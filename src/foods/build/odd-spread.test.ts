import { expect, it } from 'vitest';
import { withoutOddSpreads } from './odd-spread.ts';
import type { TableRow } from './table.ts';

const row = (group: string, value: number, sd: number): TableRow => ({
  ref: `sr28:${group}${value}`,
  tableName: 'A',
  tableGroup: group,
  composition: { PROCNT: value, CA: 10 },
  sd: { PROCNT: sd, CA: 1 },
  suggestible: true,
});
const tenths = Array.from({ length: 11 }, (_, i) => row('16', 20 + i, (20 + i) / 10));

it('leaves out a spread of more than four times the median of its group, and only that one', () => {
  const [...kept] = withoutOddSpreads([...tenths, row('16', 40, 15.9), row('16', 50, 20.1)]);
  expect(kept.slice(0, 11)).toEqual(tenths);
  expect(kept[11]!.sd).toEqual({ PROCNT: 15.9, CA: 1 });
  expect(kept[12]!.sd).toEqual({ CA: 1 });
  expect(kept[12]!.composition).toEqual({ PROCNT: 50, CA: 10 });
});

it('goes by all groups where its own has few spreads', () => {
  const kept = withoutOddSpreads([...tenths, row('09', 10, 4.1), row('09', 10, 3.9)]);
  expect(kept.slice(11).map((r) => r.sd.PROCNT)).toEqual([undefined, 3.9]);
});
