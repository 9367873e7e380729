/** Words that stand on several screens. */
import type { Figures } from '../figures.ts';

export const common = (f: Figures) => ({
  save: 'Save',
  cancel: 'Cancel',
  close: 'Close',
  undo: 'Undo',
  delete: 'Delete',
  remove: 'Remove',
  add: 'Add',
  change: 'Change',
  name: 'Name',
  note: 'Note',
  back: 'Back',
  print: 'Print',
  tryAgain: 'Try again',
  yes: 'Yes',
  no: 'No',
  more: 'More',
  unknown: 'unknown',
  mix: 'mix',
  ration: 'whole ration',
  pellet: 'pellet',
  days: (n: number) => f.count(n, { one: 'day', other: 'days' }),
  hours: (n: number) => f.count(n, { one: 'hour', other: 'hours' }),
  foods: (n: number) => f.count(n, { one: 'food', other: 'foods' }),
  /** "Rolled oats and 3 more". */
  andMore: (first: string, more: number) => `${first} and ${f.number(more)} more`,
});

export type Common = ReturnType<typeof common>;
