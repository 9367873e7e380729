/** What is wished of a mix beyond its rules, and rules on how many foods it has. */
import type { Figures } from '../figures.ts';

export const wishes = (f: Figures) => {
  const foods = (n: number) => f.count(n, { one: 'food', other: 'foods' });
  return {
    /** A name in the middle of a sentence: "vitamin B6", not "Vitamin B6". */
    within: (name: string) => name.charAt(0).toLowerCase() + name.slice(1),
    heading: 'Wishes',
    intro:
      'Rules are always kept. Among the mixes that keep them, wishes are met one after the other, the first one first.',
    none: 'Nothing is wished yet beyond the rules.',
    working: 'Working…',
    lastAfter: 'And among the mixes that are left, the one',
    last: 'Among the mixes that keep the rules, the one',
    objectives: {
      nearest: 'nearest to what I want',
      cheapest: 'that costs least',
      varied: 'with the most variety',
    },
    fit: 'Make it fit by these wishes',
    simple: {
      liked: 'As much of the liked foods as possible',
      cupboard: 'Use what is at home',
      few: 'Few foods',
      fewToBuy: 'Few foods to buy',
      cheap: 'Cheap',
    },
    lessOf: 'Less of …',
    moreOf: 'More of …',
    less: {
      mix: (what: string) => `Less ${what} in the mix`,
      ration: (what: string) => `Less ${what} in the whole ration`,
    },
    more: {
      mix: (what: string) => `More ${what} in the mix`,
      ration: (what: string) => `More ${what} in the whole ration`,
    },
    smaller: (what: string) => `A smaller share of ${what}`,
    greater: (what: string) => `A greater share of ${what}`,
    units: {
      foods: 'foods',
      perKg: 'per kg',
      per100: (unit: string) => `${unit} in 100 g`,
    },
    value: {
      foods,
      toBuy: (n: number) => `${foods(n)} to buy`,
      price: (n: number) => `${f.money(n)} per kg`,
      share: (n: number) => `${f.figure(n)} % of the mix`,
      mix: (n: number, unit: string) => `${f.figure(n)} ${unit} in 100 g of the mix`,
      ration: (n: number, unit: string) => `${f.figure(n)} ${unit} in 100 g of the whole ration`,
    },
    lacks: {
      liked: 'No food is marked as liked yet. Tick “Liked” in a food’s details.',
      home: 'Nothing is said yet of what is at home. Write it in a food’s details.',
      price: (names: readonly string[]) =>
        `“Cheap” needs the price of every food. None is known for ${f.list(names)}; it is written in a food’s details.`,
      priceMany: (names: readonly string[], more: number) =>
        `“Cheap” needs the price of every food. None is known for ${names.join(', ')} and ${f.number(more)} more; it is written in a food’s details.`,
    },
    fault: {
      already: (wish: string) => `“${wish}” is wished already; move it up or down instead.`,
      opposite: (wish: string) => `“${wish}” is wished, which is the opposite; remove that first.`,
      most: (n: number) => `${f.number(n)} wishes are the most; remove one first.`,
    },
    gap: {
      nearest: (percent: number) =>
        `The search was cut short: this mix may still be up to ${f.figure(percent)} % away from the nearest to what you want.`,
      cheapest: (price: number) =>
        `The search was cut short: the cheapest mix may cost up to ${f.money(price)} per kg less.`,
      varied: (percent: number) =>
        `The search was cut short: a mix may be up to ${f.figure(percent)} % more varied.`,
    },
    form: {
      kind: 'Another wish',
      what: 'Of what',
      ruled: 'Nutrients with a rule',
      other: 'Other nutrients',
      groups: 'Groups',
      foods: 'Foods',
      on: 'Measured in',
      ration: 'the whole ration',
      mix: 'the mix',
      add: 'Add wish',
      added: (wish: string, rank: number) => `“${wish}” is wish ${f.number(rank)}.`,
    },
    list: {
      moved: (wish: string, rank: number, of: number) =>
        `“${wish}” is wish ${f.number(rank)} of ${f.number(of)} now.`,
      removed: (wish: string) => `“${wish}” is no longer wished.`,
      hint: '“May give way by” says how far a wish may stay short of its best so that the next ones get more.',
      came: (value: string) => `In the best mix: ${value}`,
      noMix: 'No mix to measure it in',
      rank: (rank: number) => `${f.number(rank)}.`,
      give: 'May give way by',
      up: (wish: string) => `Move up: ${wish}`,
      down: (wish: string) => `Move down: ${wish}`,
      remove: (wish: string) => `Remove: ${wish}`,
    },
    counts: {
      heading: 'How many foods',
      hint: 'These are rules: they are kept in every mix, not only wished.',
      gone: (rule: string) => `The rule “${rule}” is gone.`,
      added: (rule: string) => `The rule “${rule}” is kept from now on.`,
      leastGrams: 'No food under',
      any: 'any',
      scaleStep: (grams: number) => `Use the scale step, ${f.grams(grams)}`,
      leastHint: (batch: number) =>
        `A food is then left out, or has at least this weight in the batch of ${f.grams(batch)}. Less than one step of the scale cannot be weighed (common practice, no source).`,
      dropOne: 'Stay in range when any one food is left',
      dropOneHint:
        'Every nutrient rule then also holds for what is eaten when the animal leaves all of any one food.',
      broken: 'not kept yet',
      kept: 'kept',
      notTaken: (why: string) => `Not taken: ${why}`,
      noFewer: 'Foods, no fewer than',
      withEach: 'With each',
      noMore: 'Foods, no more than',
      another: 'Another rule',
      atLeast: 'At least so many foods',
      atMost: 'At most so many foods',
      howMany: 'How many',
      shareOfEach: 'Share of each',
      among: 'Counted among',
      allFoods: 'all foods',
      add: 'Add rule',
      remove: (rule: string) => `Remove: ${rule}`,
      rule: {
        least: (n: number, share: number) => `At least ${foods(n)} with ${f.percent(share)} each`,
        leastOf: (n: number, group: string, share: number) =>
          `At least ${f.number(n)} of ${group} with ${f.percent(share)} each`,
        most: (n: number) => `At most ${foods(n)}`,
        mostOf: (n: number, group: string) => `At most ${f.number(n)} of ${group}`,
        both: (least: string, most: string) => `${least} and ${most.charAt(0).toLowerCase()}${most.slice(1)}`,
        any: 'Any number of foods',
      },
      fault: {
        howMany: 'Write how many foods.',
        share: 'Write from which share on a food counts, above 0 %.',
        tooMuch: (n: number, share: number, all: number) =>
          `${foods(n)} with ${f.percent(share)} each come to ${f.percent(all)}, more than the whole mix; lower one of the two.`,
        tooFew: (open: number, wanted: number) =>
          `The mix has ${foods(open)} that may be used, fewer than ${f.number(wanted)}; ask for fewer, or add foods first.`,
        tooFewOf: (open: number, group: string, wanted: number) =>
          `The mix has ${foods(open)} of ${group}, fewer than ${f.number(wanted)}; ask for fewer, or add foods first.`,
        crossed: (min: number, max: number) =>
          `At least ${f.number(min)} and at most ${f.number(max)} cannot both be kept; change one of the two.`,
        none: 'A mix has one food at least; allow 1 or more.',
      },
    },
  };
};

export type Wishes = ReturnType<typeof wishes>;
