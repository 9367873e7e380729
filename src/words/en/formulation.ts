/** What is reckoned of a mix, in words: what a rule is about, what is broken, what collides, why the best mix is as it is. */
import type { Figures } from '../figures.ts';

export const formulation = (f: Figures) => ({
  /** What a limit is about, within a sentence. */
  subject: {
    mix: (content: string) => `${content} of the mix`,
    ration: (content: string) => `${content} of the whole ration`,
    group: {
      mix: (group: string) => `${group} share of the mix`,
      ration: (group: string) => `${group} share of the whole ration`,
    },
    food: (food: string) => `share of ${food}`,
    foodIn: {
      mix: (food: string) => `share of ${food} in the mix`,
      ration: (food: string) => `share of ${food} in the whole ration`,
    },
    together: (foods: readonly string[]) => `share of ${f.list(foods)} together`,
    theMix: 'the mix',
    groupShare: (group: string) => `${group} share`,
    without: (subject: string, food: string) => `${subject} without ${food}`,
    some: (percent: number) => `number of foods with ${f.percent(percent)} or more`,
    someOf: (group: string, percent: number) => `number of ${group} foods with ${f.percent(percent)} or more`,
    few: 'number of foods',
    fewOf: (group: string) => `number of ${group} foods`,
    whereUsed: (food: string) => `share of ${food}, where it is used,`,
    smallest: 'the smallest amount of a food',
  },
  noAnswer: 'It could not be worked out: the arithmetic came to no end.',
  percent: '%',
  percentDry: '% of dry matter',
  per100: (unit: string) => `${unit} per 100 g`,
  per100Dry: (unit: string) => `${unit} per 100 g of dry matter`,
  mustAtLeast: (subject: string, amount: string) => `${subject} must be at least ${amount}`,
  mustAtMost: (subject: string, amount: string) => `${subject} must be at most ${amount}`,
  because: (limit: string, reason: string) => `${limit} (${reason})`,
  above: (subject: string, is: string, most: string) =>
    `${subject} is ${is}, above the most allowed, ${most}`,
  below: (subject: string, is: string, least: string) =>
    `${subject} is ${is}, below the least allowed, ${least}`,
  noMost: (subject: string, most: string) =>
    `${subject} cannot be told, since there is nothing to divide by; the most allowed is ${most}`,
  noLeast: (subject: string, least: string) =>
    `${subject} cannot be told, since there is nothing to divide by; the least allowed is ${least}`,
  atLeast: (subject: string, least: string) => `${subject} stands at its least, ${least}`,
  atMost: (subject: string, most: string) => `${subject} stands at its most, ${most}`,
  sentence: (text: string) => `${text}.`,
  toTheLastDigit:
    'No mix of these foods keeps every rule to the last digit; loosen any one of them a little.',
  collide: (limits: readonly string[]) => `No mix of these foods can keep the rules: ${f.list(limits)}.`,
  held: (foods: readonly string[]) =>
    f.form(foods.length, {
      one: `No mix can keep the rules while ${f.list(foods)} is held. Let go of it.`,
      other: `No mix can keep the rules while ${f.list(foods)} are held. Let go of one.`,
    }),
  nothingFits: 'No mix can keep the rules. Press “Make it fit” to see why.',
  heldAt: (food: string, percent: number) => `${food} is held at ${f.percent(percent)}.`,
  leave: {
    asks: 'what is eaten must keep the rules on contents too when any one food is left',
    because: 'every food may be left',
    any: 'Any one food may be left: what is eaten stays in range.',
    without: (food: string, breach: string) => `Without ${food}, ${breach}.`,
    out: (foods: readonly string[]) => `Out of range when one of these is left: ${f.list(foods)}.`,
    more: (n: number) => `${f.number(n)} more`,
  },
  foods: {
    more: (n: number) => f.count(n, { one: 'more food', other: 'more foods' }),
    estimate: (nutrient: string, foods: string) => `${nutrient} of ${foods} is an estimate.`,
    crudeAsLeast: (foods: string) =>
      `Dietary fibre of ${foods} is not known; its crude fibre counts as the least it can be.`,
    water: (foods: string) =>
      `Moisture of ${foods} is not known; of its dry matter a least counts as if it held the least water it can, a most as if it held the most.`,
    onlyLeast: (nutrient: string, foods: string) =>
      `${nutrient} of ${foods} is only guaranteed as a least; that counts, and it may hold more.`,
    unknown: (nutrient: string, foods: string) =>
      `${nutrient} of ${foods} is not known and counts as the least it can be.`,
  },
  grams: {
    doubt: (squares: number, least: number) =>
      `These grams keep every rule, but are not proven the nearest to the shares: their squared distances come to ${f.figure(squares)} g², those of any others to ${f.figure(least)} g² or more.`,
    crossed: 'no grams keep every rule: a food must be fed beyond what its caution allows',
    noMultiple: (batch: number, step: number) =>
      `a batch of ${f.grams(batch)} is no whole number of ${f.grams(step)} steps; choose a multiple of the step`,
    none: (batch: number, step: number) =>
      `no whole steps of ${f.grams(step)} keep every rule in ${f.grams(batch)}; weigh a larger batch or use a finer scale`,
    notFound: (batch: number, step: number, tries: number) =>
      `no whole steps of ${f.grams(step)} that keep every rule in ${f.grams(batch)} were found, though there may be some: the search was ended after ${f.number(tries)} tries; weigh a larger batch or use a finer scale`,
  },
  why: {
    varied: (subject: string) => `${subject}, with the margin for how much foods vary,`,
    free: (limit: string) => `${limit}, which costs nothing: without that limit the mix would be as good.`,
    nothing: (limit: string) => `${limit}; moving it a little changes nothing.`,
    raise: (limit: string, to: string, better: string, shares: string) =>
      `${limit}. Raising the limit to ${to} would ${better}${shares}.`,
    lower: (limit: string, to: string, better: string, shares: string) =>
      `${limit}. Lowering the limit to ${to} would ${better}${shares}.`,
    shares: (changes: readonly string[]) => `: ${f.list(changes)}`,
    rest: (value: string) => ` Without that limit it would come to rest at ${value}.`,
    up: (food: string, from: number, to: number) =>
      `${food} up from ${f.fixed(from, 1)} to ${f.fixed(to, 1)} %`,
    down: (food: string, from: number, to: number) =>
      `${food} down from ${f.fixed(from, 1)} to ${f.fixed(to, 1)} %`,
    save: (price: number) => `save ${f.figure(price)} per kg`,
    varies: 'make the mix more varied',
    nearer: (percent: number) => `bring the mix ${f.figure(percent)} % nearer to what you want`,
    bring: (aim: string, from: number, to: number) =>
      `bring ${aim} from ${f.figure(from)} to ${f.figure(to)}`,
  },
  aim: {
    liked: 'the share of liked foods',
    cupboard: 'what comes out of your stock, in percent of the mix,',
    few: 'the number of foods',
    fewToBuy: 'the number of foods to buy',
    cheap: 'the price per kg',
    of: (subject: string) => `the ${subject}`,
  },
});

export type Formulation = ReturnType<typeof formulation>;
