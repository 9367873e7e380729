/** Files of older versions. */
import { expect, it } from 'vitest';
import { upgraded } from './upgrades.ts';

const food = { id: 'bar', evidence: { ingredients: 'oats, chocolate' } };
const problem = { foods: [{ id: 'bar', composition: {} }], beside: [] };
const told = { ...problem, foods: [{ id: 'bar', composition: {}, ingredients: ['oats, chocolate'] }] };

it('a file of version 1 gets the lists of its own foods into its mixes, and is else as it was', () => {
  const records = (mixed: object) => [
    { kind: 'foods', id: 'bar', body: food },
    { kind: 'mixes', id: 'm', body: { id: 'm', problem: mixed } },
    { kind: 'versions', id: 'v', body: { id: 'v', problem: mixed } },
    { kind: 'batches', id: 'b', body: { id: 'b', problem } },
  ];
  expect(upgraded({ records: records(problem) }, 1)).toEqual({ records: records(told) });
  expect(upgraded({ records: records(problem) }, 2)).toEqual({ records: records(problem) });
  expect(upgraded({ foods: [food], mix: { problem } }, 1)).toEqual({ foods: [food], mix: { problem: told } });
});

it('leaves what is no household to those who check it', () => {
  for (const file of [
    { records: 'none' },
    { records: [null, { kind: 'mixes' }, { kind: 'mixes', body: { problem: { foods: 3 } } }] },
    { records: [{ kind: 'foods', body: { id: 'x', evidence: { sources: [null] } } }], mix: 4 },
  ])
    expect(upgraded(file, 1)).toEqual(file);
});
