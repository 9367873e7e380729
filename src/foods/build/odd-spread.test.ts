import { expect, it } from 'vitest';
import { withoutOddSpreads } from './odd-spread.ts';
import type { Sr26Food } from './sr26.ts';

const food = (ndb: string, group: string, value: number, sd: number, analyses = 40): [string, Sr26Food] => [
  ndb,
  {
    ndb,
    name: 'A',
    group,
    amounts: new Map([
      ['PROCNT', { value, sd, analyses }],
      ['CA', { value: 10, sd: 1, analyses }],
    ]),
  },
];
const tenths = Array.from({ length: 11 }, (_, i) => food(`16${i}`, '16', 20 + i, (20 + i) / 10));
const spreadOf = (foods: Map<string, Sr26Food>, ndb: string) => foods.get(ndb)!.amounts.get('PROCNT')!;

it('leaves out a spread of many analyses that is more than four times the median of its group, and only that', () => {
  const kept = withoutOddSpreads(
    new Map([...tenths, food('a', '16', 40, 15.9), food('b', '16', 50, 20.1), food('c', '16', 50, 20.1, 29)]),
  );
  for (const [ndb, tenth] of tenths) expect(kept.get(ndb)).toEqual(tenth);
  expect(spreadOf(kept, 'a').sd).toBe(15.9);
  expect(spreadOf(kept, 'b')).toEqual({ value: 50, analyses: 40 });
  expect(kept.get('b')!.amounts.get('CA')!.sd).toBe(1);
  // A few samples may well lie far apart.
  expect(spreadOf(kept, 'c').sd).toBe(20.1);
});

it('goes by all groups where its own has few spreads', () => {
  const kept = withoutOddSpreads(new Map([...tenths, food('a', '09', 10, 4.1), food('b', '09', 10, 3.9)]));
  expect([spreadOf(kept, 'a').sd, spreadOf(kept, 'b').sd]).toEqual([undefined, 3.9]);
});
