/** What the mix can be asked, and why it is as it is. */
import type { Figures } from '../figures.ts';

export const why = (f: Figures) => ({
  tabs: {
    all: 'Ask about this mix',
    why: 'Why',
    wishes: 'Wishes',
    trade: 'More or less',
    versions: 'Versions',
    refusals: 'If a food is left',
    sharing: 'Several animals',
    change: 'Change-over',
  },
  heading: 'Why the mix is as it is',
  unreadable: 'The mix cannot be read as it stands; the verdict above says why.',
  noMix: 'No mix keeps these rules. What collides, and what mends it, is listed near the top.',
  elsewhere: 'What follows is about the best mix. The mix on the screen is another.',
  fit: 'Make the mix fit',
  nothing: 'Nothing holds it back.',
  best: {
    wishes: 'The best mix meets your wishes as well as these foods can; no limit stands in the way.',
    nearest: 'The best mix is the nearest there is to what you want; no limit keeps it from coming nearer.',
    cheapest: 'The best mix is the cheapest there is; no limit makes it dearer.',
    varied: 'The best mix is as varied as these foods can be; no limit makes it less so.',
  },
  holding: (n: number) =>
    f.form(n, {
      one: 'One limit holds the best mix back. Limits on nutrients are there for the animal: change one only where you know why.',
      other: `${f.number(n)} limits hold the best mix back, what costs most first. Limits on nutrients are there for the animal: change one only where you know why.`,
    }),
  list: 'Limits that hold the mix back',
  free: 'At a limit, at no cost',
  freeList: 'Limits that cost nothing',
  held: (food: string, share: number) => `${food} is held at ${f.percent(share, 1)}.`,
  heldFree: (food: string, share: number, free: number) =>
    `${food} is held at ${f.percent(share, 1)}. Let go, it would come to ${f.percent(free, 1)}, and the mix would be better.`,
  letGo: 'Let go',
  letGoOf: (food: string) => `Let go of ${food}`,
  foreign: 'This rule comes from the needs of another animal of this mix; it is changed there, under Needs.',
  raise: (to: string) => `Raise the limit to ${to}`,
  lower: (to: string) => `Lower the limit to ${to}`,
  raiseOf: (to: string, what: string) => `Raise the limit to ${to}: ${what}`,
  lowerOf: (to: string, what: string) => `Lower the limit to ${to}: ${what}`,
});

export type Why = ReturnType<typeof why>;
