import { expect, it } from 'vitest';
import { plainFormulate } from './plain-formulate.ts';

it.each([
  [['formulate', 'a.json'], 'a.json', {}],
  [['formulate', '-'], '-', {}],
  [['formulate', '--pretty', 'a.json', '--why'], 'a.json', { pretty: true, why: true }],
  [['formulate', 'a.json', '--swaps', '--swaps'], 'a.json', { swaps: true }],
])('takes %j', (args, file, options) => {
  expect(plainFormulate(args)).toEqual({ file, options });
});

it.each([
  [[]],
  [['formulate']],
  [['formulate', '--pretty']],
  [['formulate', '--help']],
  [['formulate', 'a.json', '-h']],
  [['formulate', 'a.json', '--prety']],
  [['formulate', 'a.json', 'b.json']],
  [['formulate', '--', 'a.json']],
  [['foods', 'search', 'oats']],
  [['--pretty', 'formulate', 'a.json']],
])('leaves %j to the command line', (args) => {
  expect(plainFormulate(args)).toBeUndefined();
});
