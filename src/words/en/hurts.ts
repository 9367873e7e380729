/** What of a mix can hurt, in one line each above its foods. */
import type { Figures } from '../figures.ts';

export const hurts = (f: Figures) => ({
  all: 'What can hurt',
  fresh: (foods: readonly string[]) =>
    f.form(foods.length, {
      one: `${f.list(foods)} is fresh and would mould in the mix: dry it first.`,
      other: `${f.list(foods)} are fresh and would mould in the mix: dry them first.`,
    }),
  dry: (n: number) => f.form(n, { one: 'Put it in dried', other: 'Put them in dried' }),
  dried: (food: string) => `${food}, dried`,
  isDried:
    'The mix has it dried now, at the same share. What stood as fresh is to be dried at home before it is weighed.',
  never: (foods: readonly string[]) =>
    f.form(foods.length, {
      one: `${f.list(foods)} must not be fed and stays at 0 %.`,
      other: `${f.list(foods)} must not be fed and stay at 0 %.`,
    }),
  listed: (food: string, found: string) =>
    `${food} stays at 0 %: its own list of ingredients has ${found}, which must not be fed.`,
  beside: (food: string, found: string) =>
    `${food}, fed beside the mix: its own list of ingredients has ${found}, which must not be fed.`,
  goAhead: 'Go ahead, say why …',
  goAheadWith: (food: string) => `Go ahead, say why … (${food})`,
  gone: (food: string, found: string, day: string, note: string) =>
    `${food} is in by your choice of ${day} (“${note}”), though its list has ${found}.`,
  keepOut: 'Keep it out',
  why: 'Why it is fed all the same (a vet’s word, say); it is kept with the mix',
  yes: 'Go ahead',
  no: 'Leave it out',
});

export type Hurts = ReturnType<typeof hurts>;
