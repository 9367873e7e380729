import { expect, it } from 'vitest';
import { gridIn, readPasted } from './pasted-table.ts';

const NONE = new Map<string, string>();

it('a table with names, shares and figures of its own comes in by its headings', () => {
  const grid = gridIn(
    'Food\tShare %\tProtein g per 100 g\tFat g per 100 g\nRolled oats\t60\t\t\nMy crumble\t40\t21,5\t6\nSum\t100\t\t',
  );
  if (!grid) throw new Error('no table');
  let read = readPasted(grid, {}, NONE);
  // Whatever is asked is answered by its first choice.
  for (let i = 0; i < 8 && read.questions.length > 0; i++) {
    const answers = Object.fromEntries(read.questions.map((q) => [q.id, q.options[0]?.answer ?? '0']));
    read = readPasted(grid, answers, NONE);
  }
  expect(read.named).toEqual([{ name: 'Rolled oats', share: 60 }]);
  expect(read.own.map((r) => [r.name, r.share, r.figures.composition])).toEqual([
    ['My crumble', 40, { PROCNT: 21.5, FAT: 6 }],
  ]);
  expect(read.wrong).toEqual([]);
  expect(read.settled?.settled).toBe(true);
});

it('a list of lines is no table', () => {
  expect(gridIn('oats\nmillet\npeas')).toBeUndefined();
  expect(gridIn('oats\t5 %\nmillet\t10 %')).toBeUndefined();
  expect(gridIn('oats, 5 %\nmillet, 10 %')).toBeUndefined();
  expect(gridIn('oats')).toBeUndefined();
});
