/** More of one thing, less of another. */
import type { Figures } from '../figures.ts';

export const tradeOff = (f: Figures) => ({
  heading: 'More of one, less of another',
  intro:
    'Two things wanted at once often pull apart. Each point below is a mix that keeps every rule; no other mix is better in both. The points between show how much of one a little more of the other takes.',
  one: 'One wish',
  against: 'Against',
  price: 'The price can be chosen once every food has one (see the details of each food).',
  missing: (axis: string) =>
    `${axis}: figures are missing for a part of the foods, so it is at least what the picture shows.`,
  noConflict: 'These two do not get in each other’s way:',
  noConflictMore: 'one mix is best in both.',
  noPlace: 'Where the mix as it stands lies cannot be told: a figure is missing.',
  outside: 'The mix as it stands breaks a rule, so it may lie where no mix that keeps the rules can.',
  look: 'Look at that mix',
  taken: 'Taken: the mix now has these shares. Undo brings the old ones back.',
  count: (n: number, seconds: number) =>
    `${f.count(n, { one: 'mix', other: 'mixes' })}, worked out in ${f.number(seconds, 1)} s. Every rule holds in each.`,
  countHeld: (n: number, seconds: number) =>
    `${f.count(n, { one: 'mix', other: 'mixes' })}, worked out in ${f.number(seconds, 1)} s. Every rule holds in each, and held foods stay where they are.`,
  goals: {
    near: 'near to what I want',
    nearAxis: 'How much of the mix differs from the wanted shares',
    nearShort: 'Differs from the wanted shares by',
    nearer: 'nearer',
    varied: 'varied',
    variedAxis: 'Variety: as varied as so many foods in equal parts',
    variedShort: 'As varied as',
    moreVaried: 'more varied',
    foods: 'foods',
    equalFoods: 'foods in equal parts',
    cheap: 'cheap',
    cheapAxis: 'Price',
    cheaper: 'cheaper',
    perKg: 'per kg',
    less: (what: string) => `less ${what}`,
    more: (what: string) => `more ${what}`,
    ofMix: (what: string) => `${what} of the mix`,
    ofRation: (what: string) => `${what} of the whole ration`,
    group: (group: string) => `${group} in the mix`,
    lessWord: 'less',
    moreWord: 'more',
    value: (what: string, value: number, unit: string) => `${what} ${f.figure(value)} ${unit}`,
    both: (first: string, second: string) => `${first}, ${second}`,
  },
  point: {
    label: 'The mix that is chosen',
    chosen: (what: string) => `The mix chosen: ${what}.`,
    same: 'This is the mix as it stands.',
    against: 'Against the mix as it stands:',
    change: (from: number, to: number) => `${f.fixed(from, 1)} to ${f.fixed(to, 1)} %`,
    rest: (n: number) =>
      f.form(n, {
        one: 'One more share moves, by no more than these.',
        other: `${f.number(n)} more shares move, each by no more than these.`,
      }),
    take: 'Take this mix',
  },
  table: {
    same: 'The same as a table',
    mix: 'Mix',
    head: (what: string, unit: string) => `${what} (${unit})`,
    lookAt: 'Look at it',
    look: 'Look',
    shown: 'Shown',
    lookOf: (k: number, what: string) => `Look: mix ${f.number(k)}, ${what}`,
    shownOf: (k: number, what: string) => `Shown: mix ${f.number(k)}, ${what}`,
  },
  picture: {
    axis: (what: string, unit: string) => `${what}, ${unit}`,
    all: 'Best mixes along the line; the arrow keys walk along it',
    mix: (k: number, n: number, what: string) => `Mix ${f.number(k)} of ${f.number(n)}: ${what}`,
    best: 'a best mix',
    present: (what: string) => `the mix as it stands (${what})`,
  },
});

export type TradeOff = ReturnType<typeof tradeOff>;
