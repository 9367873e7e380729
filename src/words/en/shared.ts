/** Parts that several screens are made of. */
import type { Figures } from '../figures.ts';

export const shared = (f: Figures) => ({
  number: {
    needed: (label: string) => `${label} needs a number.`,
    none: (label: string, typed: string) =>
      `${label}: “${typed}” is not a number; write for example 6.25 or 6,25.`,
    tooLow: (label: string, typed: string, least: string) =>
      `${label}: ${typed} is too low; it may be ${least} or more.`,
    tooHigh: (label: string, typed: string, most: string) =>
      `${label}: ${typed} is too high; it may be ${most} at most.`,
  },
  meanwhile: {
    changed: (label: string, now: string, typed: string) =>
      `${label} was changed to ${now} elsewhere while you typed. Enter puts ${typed || 'nothing'} there all the same, Escape leaves it.`,
    emptied: (label: string, typed: string) =>
      `${label} was emptied elsewhere while you typed. Enter puts ${typed || 'nothing'} there all the same, Escape leaves it.`,
  },
  caution: {
    never: (title: string) => `Never feed: ${title}.`,
    limit: (title: string) => `Only a little: ${title}.`,
    prepare: (title: string) => `Prepare first: ${title}.`,
    neverUpTo: (title: string, most: number) =>
      `Never feed more than ${f.percent(most)} of the mix: ${title}.`,
    limitUpTo: (title: string, most: number) =>
      `Only a little, at most ${f.percent(most)} of the mix: ${title}.`,
    prepareUpTo: (title: string, most: number) =>
      `Prepare first, at most ${f.percent(most)} of the mix: ${title}.`,
    source: (source: string) => `Source: ${source}`,
  },
  choice: {
    narrow: (label: string) => `${label}: list those with`,
    part: 'a part of the name',
    many: (listed: number, all: number) =>
      `${f.number(listed)} of ${f.number(all)} are listed: type a part of the name`,
    listed: (n: number) => f.form(n, { one: `${f.number(n)} is listed`, other: `${f.number(n)} are listed` }),
  },
  fresh: {
    which: 'Which fresh food is it dried from? These look like it:',
    dryFrom: (dried: string, fresh: string) => `Dry ${dried} from ${fresh}`,
    another: 'Find another fresh food',
    change: 'Change the fresh food',
    title: (name: string) => `Fresh food for ${name}`,
    own: (water: string) => `own food · ${water}`,
    search: 'Search foods',
    example: 'carrots raw, dandelion greens raw…',
    searching: 'Searching…',
    choose: 'Choose',
    chooseOne: (name: string) => `Choose ${name}`,
    water: (grams: number) => `${f.number(grams)} g water per 100 g`,
    noWater: 'water not known',
  },
  whatIs: (word: string) => `What is “${word}”?`,
  done: 'Done',
  working: 'Working…',
  parts: {
    first: (end: number, all: number) => `Showing ${f.number(end)} of ${f.number(all)}`,
    later: (start: number, end: number, all: number) =>
      `Showing ${f.number(start)} to ${f.number(end)} of ${f.number(all)}`,
    all: (all: number) => `All ${f.number(all)} are shown`,
    more: (n: number) => `Show ${f.number(n)} more`,
    back: (n: number) => `Back to the first ${f.number(n)}`,
  },
  limits: {
    between: (min: number, max: number) => `${f.number(min, 3)} to ${f.number(max, 3)}`,
    least: (min: number) => `at least ${f.number(min, 3)}`,
    most: (max: number) => `at most ${f.number(max, 3)}`,
    none: 'no limits',
    per100: (unit: string) => `${unit} per 100 g`,
    per100Dry: (unit: string) => `${unit} per 100 g dry matter`,
    toOne: 'to 1',
    ratio: (over: string, under: string) => `${over} to ${under.toLowerCase()}`,
  },
  clock: {
    on: (time: string, day: string) => `${time} on ${day}`,
    minutes: (minutes: number) => `${f.number(minutes)} min`,
    hours: (hours: number) => `${f.number(hours)} h`,
    both: (hours: number, minutes: number) => `${f.number(hours)} h ${f.number(minutes)} min`,
  },
  firstMix: {
    title: 'No mix yet',
    text: 'A mix begins with an animal and a few foods. Shares and grams are worked out from there.',
    start: 'Start a mix',
    name: 'My mix',
    choice: 'Mix',
  },
  contained: (what: string, why: string) =>
    `${what} cannot be shown (${why}). What changed it last stands in the <changes>history</changes>.`,
});

export type Shared = ReturnType<typeof shared>;
