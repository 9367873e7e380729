/** One base mix for several animals, and what each gets added. */
import type { Figures } from '../figures.ts';

export const sharing = (f: Figures) => ({
  heading: 'Several animals',
  each: 'Make a mix for each: copy this one, and choose one animal for each copy.',
  none: 'With two animals or more, one base mix can be found for all of them, with the little that each gets added. No animal is kept yet: <add>add one</add>.',
  one: 'With two animals or more, one base mix can be found for all of them, with the little that each gets added. One animal is kept so far: <add>add another</add>.',
  chosenNone:
    'This mix is made for no animal yet. Choose two or more under “Made for”, near the top of this page. Then one base mix is found for all of them, with the little that each gets added.',
  chosenOne:
    'This mix is made for one animal. Choose two or more under “Made for”, near the top of this page. Then one base mix is found for all of them, with the little that each gets added.',
  base: {
    weighings: (n: number) =>
      `${f.count(n, { one: 'addition, weighed apart.', other: 'additions, weighed apart.' })}`,
    suits: (animals: readonly string[]) => `One mix suits ${f.list(animals)} without additions.`,
    unverified: 'What does not hold, or was not checked',
    notProved: 'Perhaps less would do.',
    base: 'The base',
    mix: 'The mix',
    caption: (batch: number, step: number) => `${f.grams(batch)} in steps of ${f.grams(step)}`,
    food: 'Food',
    share: 'Share',
    grams: 'Grams',
    shareOf: (share: number) => `${f.fixed(share, 1)} %`,
    takeBase: 'Take the base mix',
    take: 'Take this mix',
    takeHint:
      'Taken, the mix on this page is the base alone. It can be out of range until the additions are in it.',
    tookBase: 'The mix now stands at the shares of the base.',
    took: 'The mix now stands at these shares.',
    tookNotice: 'The mix is the shared base. Undo takes this back.',
    adds: 'What each gets added',
    costs: 'What it costs each',
    asItIs: 'Gets the base as it is.',
    addedFor: (animal: string) => `Added for ${animal}`,
    to100: (grams: number) => `To ${f.grams(grams)} of base`,
    toBatch: (grams: number) => `To ${f.grams(grams)}`,
    rounded: (step: number) =>
      `Rounded to whole steps of ${f.grams(step)}, the nearest that keep the rules where there are such.`,
    weighedIn: '✓ As weighed, in range.',
    weighedOut: (sentences: readonly string[]) =>
      `! As weighed, just outside: ${sentences.join(' ')} A finer scale step or a larger batch may mend it.`,
  },
  cost: {
    same: 'Its mix is as the best mix of its own would be.',
    sameDearer: (money: number) =>
      `Its mix is as the best mix of its own would be, and it is ${f.money(money)} dearer per kg.`,
    sameCheaper: (money: number) =>
      `Its mix is as the best mix of its own would be, and it is ${f.money(money)} cheaper per kg.`,
    other: (percent: number) =>
      `${f.figure(percent)} % of its mix is other food than in the best mix of its own.`,
    otherDearer: (percent: number, money: number) =>
      `${f.figure(percent)} % of its mix is other food than in the best mix of its own, and it is ${f.money(money)} dearer per kg.`,
    otherCheaper: (percent: number, money: number) =>
      `${f.figure(percent)} % of its mix is other food than in the best mix of its own, and it is ${f.money(money)} cheaper per kg.`,
  },
  found: {
    notProved: 'Fewer or lighter additions may do: the search was ended before that was settled.',
    aimsLeft: 'Wishes are followed only where one mix suits all; here they were not.',
    notDropped:
      'Whether the rules hold when one food is left was looked at only for the best mix of each animal.',
    forOne: (animal: string, sentence: string) => `For ${animal}: ${sentence}`,
    nothing: 'no animal anything',
    money: (animal: string, money: number) => `${animal} ${f.figure(money)} more per kg`,
    fromWanted: (animal: string, percent: number) => `${animal} ${f.figure(percent)} % of the wanted shares`,
    fromOwn: (animal: string, percent: number) => `${animal} ${f.figure(percent)} % of its own best mix`,
    costs: (parts: readonly string[]) => f.list(parts),
    addition: (grams: number, food: string) => `${f.figure(grams)} g of ${food}`,
    gets: (animal: string, additions: readonly string[]) => `${animal} gets ${f.list(additions)}`,
    oneMix: (cost: string) => `Sharing one mix costs ${cost}; nothing has to be weighed apart.`,
    oneBase: (cost: string, extras: readonly string[]) =>
      `Sharing one base costs ${cost}; on 100 g of it ${extras.join('; ')}.`,
    alone: (animal: string, verdict: string) => `${animal} has no mix even alone. ${verdict}`,
    noFood: (animals: readonly string[]) =>
      `There is no food that ${f.list(animals)} may all eat; each has a mix of its own.`,
    noBase: (animals: readonly string[], most: number) =>
      `No base can be made to suit ${f.list(animals)}, even with ${f.number(most)} g of any food added to 100 g of it; each has a mix of its own.`,
  },
});

export type Sharing = ReturnType<typeof sharing>;
