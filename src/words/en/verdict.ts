import type { Figures } from '../figures.ts';

export const verdict = (f: Figures) => {
  const others = (n: number) =>
    n === 0 ? '' : ` The same goes for ${f.count(n, { one: 'more food', other: 'more foods' })}.`;
  return {
    title: 'Verdict',
    /** Where there is room for a few words only. */
    state: {
      sure: 'Surely in range',
      if: 'In range, if …',
      out: 'Out of range',
      none: 'No mix can keep these rules',
      working: 'Working it out',
      fault: 'The mix cannot be read',
    },
    working: 'Working it out…',
    stop: 'Stop',
    stopped: 'Stopped. What was found before stands; change the mix or press “Make it fit” to go on.',
    made: 'It fits: every limit is kept.',
    nothingFits: 'No mix can keep these rules. What gets in the way is listed below.',
    makeFit: 'Make it fit',
    caution:
      'Not veterinary advice. A home mix never replaces a complete food. Change foods slowly, over 10 to 14 days (common practice, no source). See a vet on weight loss or illness.',
    head: {
      sure: 'Surely in range',
      ifKnown: 'In range if what is not known turns out well',
      ifFigures: 'In range if the figures are right',
      ifAverage: 'In range if the bags are like the average',
      out: 'Out of range',
    },
    told: (head: string, rest: string) => `${head}. ${rest}`,
    of: {
      mix: (nutrients: string) => `${nutrients} of the mix`,
      ration: (nutrients: string) => `${nutrients} of the whole ration`,
    },
    amount: (value: number, unit: string) => `${f.figure(value)} ${unit}`,
    noRuleBroken: 'No rule is broken.',
    notWhole: (total: number) => `The shares add up to ${f.percent(total)}, not to 100 %.`,
    moreBroken: (n: number) =>
      `${f.count(n, { one: 'more rule is broken', other: 'more rules are broken' })}.`,
    noSpread: 'How much these foods vary from bag to bag is not known.',
    chance: (chance: number) =>
      `Foods vary from bag to bag: all limits are kept at once with a chance of ${f.percent(100 * chance, 0)}.`,
    unproven: {
      ratio: (top: string, bottom: string) => `${top} to ${bottom}`,
      bare: (what: string) => `${what} is not proven.`,
      saysAtLeast: (what: string, food: string, amount: string, more: number) =>
        `${what} is not proven: ${food} says at least ${amount}, which may be any amount more.${others(more)}`,
      saysAtMost: (what: string, food: string, amount: string, more: number) =>
        `${what} is not proven: ${food} says at most ${amount}, which may be any amount less.${others(more)}`,
      nobodySays: (what: string, nutrient: string, food: string, more: number) =>
        `${what} is not proven: how much ${nutrient} ${food} holds is not known.${others(more)}`,
    },
    moreUnproven: (n: number) =>
      `${f.count(n, { one: 'more limit is', other: 'more limits are' })} not proven.`,
    /** The part in <food> leads to that food's figures. */
    settle: {
      most: (nutrient: string, food: string) =>
        `<food>Write the most ${nutrient} that ${food} holds</food> to know.`,
      mostEnough: (nutrient: string, food: string, amount: string) =>
        `<food>Write the most ${nutrient} that ${food} holds</food>: with ${amount} or less, this is settled.`,
      least: (nutrient: string, food: string) =>
        `<food>Write the least ${nutrient} that ${food} holds</food> to know.`,
      leastEnough: (nutrient: string, food: string, amount: string) =>
        `<food>Write the least ${nutrient} that ${food} holds</food>: with ${amount} or more, this is settled.`,
    },
  };
};

export type Verdict = ReturnType<typeof verdict>;
