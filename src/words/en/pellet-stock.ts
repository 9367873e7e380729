/** Packs of what is fed beside the mix: how long they last, and what a pack that is not used any more reached. */
import type { Figures } from '../figures.ts';

export const pelletStock = (f: Figures) => {
  const days = (n: number) => f.count(n, { one: 'day', other: 'days' });
  return {
    title: 'Pellets',
    section: 'Fed beside the mix',
    about: 'Pellets, and what else you feed from the pack. They are not frozen and not weighed into a mix.',
    lasts: (n: number, until: string) => `Lasts ${days(n)}, until ${until}.`,
    lastsAbout: (n: number, until: string) => `Lasts about ${days(n)}, until ${until}.`,
    buyBy: (day: string) => `Buy more by ${day}.`,
    buyNow: 'Buy more now.',
    tooMuch: (grams: string) => `Some ${grams} will be past its best before by then and is not counted.`,
    /** Behind a grams: how it is known. */
    state: {
      inUse: 'in use: fed next',
      kept: 'ready',
      past: 'past its best before: look at it and smell it, better open a new one',
      /** By what was fed, it should be empty. */
      shouldBeEmpty: 'should be empty by now: weigh it',
    },
    left: (left: string, all: string) => `${left} left of ${all}`,
    leftAbout: (left: string, all: string) => `about ${left} left of ${all}`,
    pack: {
      title: 'What is left',
      fromBought: (start: string, day: string) => `Counted from ${start} on ${day}, when it came in.`,
      fromWeighed: (start: string, day: string) => `Counted from ${start} on ${day}, when it was weighed.`,
      fed: (grams: string) => `${grams} noted as fed since.`,
      guessed: (grams: string) =>
        `${grams} more for days without a note, by what the animals are fed a day now. That is an estimate: weigh the pack to be sure.`,
      over: (grams: string) => `${grams} more is noted as fed than it held. Weigh it, or correct its weight.`,
      weigh: 'Weigh what is left',
      weighHint: 'Before today’s food is taken.',
      notWeighed: 'not weighed',
      allGone: 'All gone',
      saidLeft: (grams: string) => `${grams} left, noted.`,
      saidGone: 'Noted: nothing is left of it.',
      open: 'Opened today',
      opened: (day: string) => `Opened on ${day}.`,
    },
    keeping: {
      text: 'Once open: shut it well, keep it dry, dark and no warmer than a room, and use it up within about 3 months (common practice, no source). Keep the front of the pack: its number says whether a recall is about yours.',
      source:
        'A dry diet that is stored well can be used up to about 6 months after it was made; warmth above 21 °C, damp, light and air make it spoil sooner (National Research Council 1996, Guide for the Care and Use of Laboratory Animals, p. 39).',
      more: 'How long it keeps',
      openLong: (n: number) =>
        `It has been open for ${days(n)}: its vitamins fade. Smell it, and better open a new one (common practice, no source).`,
    },
    shop: {
      hint: (n: number) => `For ${days(n)}, the days that this batch lasts, less what is left of your packs.`,
      unknown: (foods: readonly string[]) =>
        `How much ${f.list(foods)} to buy is not known: <animals>say what each animal is fed a day</animals>.`,
    },
    days: {
      title: 'What is fed beside the mix',
      runsOut: (food: string) => `${food} runs out`,
      buy: (food: string) => `Buy ${food}`,
      buyNow: (food: string) => `Buy ${food} now`,
      row: (food: string) => `${food}: from the pack`,
      estimate: 'by estimate',
      noPack: (food: string) =>
        `No pack of ${food} is kept, so nobody can say when it runs out. <stock>Add a pack</stock>`,
      fileRunsOut: (food: string) => `${food} runs out`,
      fileBuy: (food: string) => `Buy ${food}`,
      fileText: (grams: string, aDay: string) => `${grams} left, ${aDay} fed a day.`,
      category: 'food',
    },
    stop: {
      region: 'Not to be fed',
      /** The heads, by reason. */
      sure: {
        recalled: 'Do not feed: recalled',
        infested: 'Do not feed: insects in it',
        spoiled: 'Do not feed: spoiled or mouldy',
        other: 'Do not feed',
      },
      maybe: {
        recalled: 'Perhaps not to be fed: a recalled pack may be in it',
        infested: 'Perhaps not to be fed: a pack with insects may be in it',
        spoiled: 'Perhaps not to be fed: a spoiled pack may be in it',
        other: 'Perhaps not to be fed: a pack that is not used any more may be in it',
      },
      holds: (grams: string, why: string, day: string) =>
        `It holds ${grams} of <pack></pack>, not used since ${day}: ${why}.`,
      holdsSome: (why: string, day: string) =>
        `It holds some of <pack></pack>, not used since ${day}: ${why}.`,
      mayHold: (why: string, day: string) =>
        `It may hold some of <pack></pack>, not used since ${day}: ${why}. Nobody noted which pack went in, or it was taken out again.`,
      doIt: 'Take what is left of it away from the animals, out of bowls and hoards too, and give other food at once: the pellet alone will do if it is a complete food.',
      hold: 'Better give something else until you know which pack went in.',
      vet: 'See a vet when an animal that ate of it eats less, has loose droppings, breathes hard or seems ill. This is no veterinary advice.',
      noAmounts: 'No daily amounts are given for it.',
      eaten: 'Nothing is left of it. It was in it.',
      eatenMaybe: 'Nothing is left of it. It may have been in it.',
      gone: 'Nothing is left of it',
      saidGone: 'Noted: nothing is left of it.',
      givenUp: 'It was given up and not fed.',
      undo: 'If the pack was stopped by mistake, open the pack and use it again.',
      /** On a printed label, in capitals by the stylesheet. */
      label: 'Do not feed',
      labelMaybe: 'Perhaps not to be fed',
      labelWhy: (pack: string, why: string, day: string) => `${pack}: ${why}, ${day}.`,
      tag: 'do not feed',
      tagMaybe: 'perhaps not to be fed',
      plan: (batch: string) =>
        `${batch} is not fed any more, since a pack in it is not used any more. It does not count as food in hand.`,
      planMaybe: (batch: string) =>
        `${batch} may hold a pack that is not used any more. It still counts as food in hand; look at its record.`,
      record: 'See its record',
    },
    animal: {
      batch: (batch: string) => `<batch>${batch}</batch>: do not feed it.`,
      batchMaybe: (batch: string) =>
        `<batch>${batch}</batch> may hold a pack that is not used any more. Better give something else until you know.`,
      pack: (why: string, from: string, to: string) =>
        `<pack></pack> is not used any more: ${why}. It was fed from ${from} to ${to}. Take what is left of it away, out of hoards too.`,
      packMaybe: (why: string, from: string, to: string) =>
        `<pack></pack> is not used any more: ${why}. It may have been fed between ${from} and ${to}; nobody noted from which pack. Take what is left away, out of hoards too.`,
    },
    reach: {
      title: 'Animals fed from the pack',
      none: 'No feeding is noted from it, and it was not the pack in use.',
      sure: (grams: string, from: string, to: string, n: number) =>
        `<animal></animal>: ${grams} on ${days(n)}, ${from} to ${to}`,
      maybe: (from: string, to: string, n: number) =>
        `<animal></animal>: perhaps, on ${days(n)} without a note, ${from} to ${to}`,
      clear:
        'Take what is left of it out of bowls, cages and hoards. When nothing is left, press “All gone” above: then it is not told any more.',
    },
  };
};

export type PelletStock = ReturnType<typeof pelletStock>;
