/** Left-overs, and what they say of what was eaten. */
import type { Figures } from '../figures.ts';

export const leftovers = (f: Figures) => {
  const range = (low: number, high: number) =>
    f.grams(low, 1) === f.grams(high, 1) ? f.grams(low, 1) : `${f.grams(low, 1)} to ${f.grams(high, 1)}`;
  return {
    title: 'Left over',
    unknownMix: 'Mix, not known which',
    /** Between which limits an amount lies. */
    range,

    ask: {
      title: (name: string) => `What did ${name} leave?`,
      night: 'Of the food from',
      lastNight: (day: string) => `last night (${f.shortDay(day)})`,
      tonight: (day: string) => `today (${f.shortDay(day)})`,
      day: (day: string) => f.shortDay(day),
      noted: (day: string) => `${day}, noted`,
      nothing: 'Nothing left',
      weight: 'All that was left',
      pad: 'Digits',
      wipe: 'Take back the last digit',
      dot: 'Decimal point',
      keep: 'Keep',
      mostly: 'These were mostly left',
      mostlyHint: 'By eye: half or more of it is still there. With or without a weight above.',
      byFood: 'Weigh it food by food',
      together: 'Weigh it all together',
      sorted: 'Grams left of each food',
      sortedHint: 'An empty field means: nothing of it is left.',
      someHint: 'An empty field means: it lies in the rest.',
      rest: 'All the rest, together',
      some: 'I sorted out only some foods',
      since: 'Food of how many nights lay there',
      oneNight: 'one night',
      sinceDay: (day: string, nights: number) =>
        `${f.count(nights, { one: 'night', other: 'nights' })}, since ${f.shortDay(day)}`,
      more: 'More: several nights, or only a hoard',
      missing: 'Say first how much you offered.',
      none: 'Type what was left, or choose a food that was mostly left.',
      notNumber: (text: string) => `“${text}” is no weight.`,
    },
    offered: {
      line: (foods: readonly string[], grams: number) =>
        `Offered: ${f.list(foods)}, together ${f.grams(grams, 1)}.`,
      mix: (grams: number, name: string) => `${f.grams(grams, 1)} of ${name}`,
      food: (grams: number, name: string) => `${f.grams(grams, 1)} of ${name}`,
      usual: 'Nobody ticked this off, so the usual meal counts.',
      nobody: 'Nobody has said what was offered.',
      change: 'Change',
      done: 'Done',
      mixUnknown: 'Mix',
      planned: 'Which batch it was is not known: the mix counts as it is planned.',
      unknown: 'Which mix it was is not known, so it counts as one food.',
      theMix: 'the mix',
    },
    kept: {
      nothing: 'Kept: nothing left.',
      grams: (grams: number) => `Kept: ${f.grams(grams, 1)} left.`,
      some: 'Kept.',
      gone: 'Deleted.',
      undo: 'Undo',
      undone: 'Taken back.',
    },
    hoard: {
      title: 'Did you look for a hoard?',
      hint: 'What lies in a hoard is not eaten. Leave this out if you did not look.',
      none: 'Nothing there',
      found: 'Found some',
      taken: 'Taken out and weighed',
      keepSome:
        'If you take out a hoard, leave a little of the dry food in it: losing all of it upsets the animal.',
      correct: 'Correct the hoard',
    },
    result: {
      title: 'What was eaten',
      period: 'Look at',
      night: 'the last night noted',
      weeks: 'the last 2 weeks',
      months: 'the last 3 months',
      none: 'No left-overs were noted in these days.',
      nights: (noted: number, fed: number) =>
        `${f.count(noted, { one: 'night', other: 'nights' })} noted, of ${f.count(fed, { one: 'day', other: 'days' })} with food.`,
      taken: (offered: number, low: number, high: number) =>
        `Of ${f.grams(offered, 1)} offered, ${range(low, high)} was taken.`,
      eatenExactly: (low: number, high: number) => `Eaten, with the hoards counted: ${range(low, high)}.`,
      eatenInPart: (low: number, high: number) =>
        `Eaten: ${range(low, high)}. Not all hoards of these nights were counted, or what lay there may be from other nights too.`,
      eatenUnknown: (high: number) =>
        `Eaten: ${f.grams(high, 1)} at most. Nobody looked for hoards, so some of it may lie hidden.`,
      older:
        'Nobody had looked for hoards before. If some of what was found is older, more was eaten than this says.',
      unticked: (days: number) =>
        f.form(days, {
          one: 'For one of the days nobody said what was offered; it counts as nothing.',
          other: `For ${f.number(days)} of the days nobody said what was offered; they count as nothing.`,
        }),
      doubt: {
        more: 'More was left than was offered: it is wet, or from other nights, or one weight is wrong. That night’s weight tells nothing of what was eaten.',
        older:
          'The hoard holds more than was taken since the last look, so some of it is older. It tells nothing of how much was eaten.',
        scale: 'A little more was left than was offered, as kitchen scales have it. It counts as all of it.',
        mostly: 'More foods were said to be mostly left than the weight allows. The weight counts.',
        sum: 'The foods and the whole weight do not agree. The foods count.',
        'not-offered': (foods: readonly string[]) =>
          `${f.list(foods)} lay there and was not offered. It does not count.`,
        dried: (percent: number) =>
          `Fresh food dries while it lies there: what is left of it counts as up to ${f.percent(percent)} lighter than it was (common practice, no source). Dry food may draw a little damp; that is not counted.`,
      },
    },
    picture: {
      title: 'Food by food',
      hint: 'Each bar is what was offered. Full: surely taken. Striped: may be taken or left, since it was not sorted. Empty: left. The line across: how much of all food together went.',
      hintEaten:
        'Each bar is what was offered. Full: surely eaten. Striped: may be eaten or not. Empty: not eaten. The line across: how much of all food together went.',
      food: 'Food',
      takenHead: 'Taken',
      eatenHead: 'Eaten',
      index: 'Picked out?',
      of: (low: number, high: number, offered: number) => `${range(low, high)} of ${f.grams(offered, 1)}`,
      percent: (low: number, high: number) =>
        f.percent(low, 0) === f.percent(high, 0)
          ? f.percent(low, 0)
          : `${f.number(low, 0)} to ${f.percent(high, 0)}`,
      more: (n: number) => `Show ${f.count(n, { one: 'more food', other: 'more foods' })}`,
    },
    index: {
      title: 'Which foods are picked out',
      help: '100: eaten as it was offered. Above 100: picked out before others. Below 100: left. It is 100 times what was taken of a food over what its part of the whole would be (Leonardi and Armentano 2003, J. Dairy Sci.).',
      spanHelp:
        'The numbers in brackets: where the index for nights like these lies, 95 times in 100. They rest on how the nights differ (ratio estimate, Student’s t) and on what was not sorted.',
      byTaken: 'It rests on what was taken from the bowl, since hoards were not all counted.',
      byEaten: 'It rests on what was eaten: hoards are counted.',
      value: (value: number) => f.number(value, 0),
      limits: (low: number, high: number) => `${f.number(low, 0)} to ${f.number(high, 0)}`,
      leaning: {
        picked: 'picked out',
        left: 'left',
        even: 'as offered',
        unclear: 'cannot be told yet',
      },
      nights: (n: number) => f.count(n, { one: 'night', other: 'nights' }),
    },
    nutrients: {
      title: 'What that means for its food',
      hintTaken:
        'In 100 g as offered, and in 100 g as taken from the bowl. A range where not all was sorted or not all is known.',
      hintEaten:
        'In 100 g as offered, and in 100 g as eaten. A range where not all was sorted or not all is known.',
      offered: 'offered',
      taken: 'taken',
      eaten: 'eaten',
      amount: (low: number, high: number, unit: string) =>
        f.figure(low) === f.figure(high)
          ? `${f.figure(low)} ${unit}`
          : `${f.figure(low)} to ${f.figure(high)} ${unit}`,
      coverage: (percent: number) => `known of ${f.percent(percent, 0)} by weight`,
      more: 'More nutrients',
      fewer: 'Fewer nutrients',
      none: 'Nothing is known of these foods.',
    },
    advice: {
      title: 'What helps',
      vetToday: (taken: number, usual: number) =>
        `It took ${f.grams(taken, 1)} at most, and ${f.grams(usual, 1)} is usual. A small animal that hardly eats for a day is in danger: look at it now, weigh it, and see a vet today, at once if it seems ill.`,
      vetTodayNothing:
        'It took nothing. A small animal that does not eat for a day is in danger: look at it now, weigh it, and see a vet today, at once if it seems ill.',
      vetTomorrow: (taken: number, usual: number) =>
        `It took ${f.grams(taken, 1)} at most, and ${f.grams(usual, 1)} is usual. Weigh it and offer what it likes. If it takes as little the next night, or seems ill before, see a vet the same day.`,
      vetHoard:
        'It may live from its hoard. That is no reason to wait if it looks ill, loses weight or leaves its nest less.',
      vetRule:
        'The rule: less than half of the usual (the middle of its last nights) for a night, less than a quarter at once. Common practice, no source.',
      less: (foods: readonly string[]) =>
        `Picked out: ${f.list(foods)}. Offer a little less of it at a time, so the rest is eaten too. Cut it down over a week or two, not at once.`,
      change: (foods: readonly string[]) =>
        `Often left: ${f.list(foods)}. Try it in another form (whole, crushed, in smaller pieces), or give it a smaller share of the next mix and something it eats in its place.`,
      mix: 'To the mix',
      scatter:
        'Scatter smaller portions, twice a day if you can. What has to be found one by one is picked over less.',
      starve:
        'Never hold food back until it eats what it leaves: a small animal goes hungry within hours, not days.',
      bowl: 'An empty bowl is no proof that it ate: hamsters and many others carry food off. Now and then look for the hoard, weigh it, and count it here.',
    },
    nights: {
      title: 'Nights noted',
      none: 'None yet.',
      nothing: 'nothing left',
      left: (grams: number) => `${f.grams(grams, 1)} left`,
      leftOf: (grams: number, offered: number) => `${f.grams(grams, 1)} left of ${f.grams(offered, 1)}`,
      mostly: (foods: readonly string[]) => `mostly left: ${f.list(foods)}`,
      hoard: (grams: number) => `hoard ${f.grams(grams, 1)}`,
      noHoard: 'no hoard',
      hoardSeen: 'hoard found',
      since: (day: string) => `food since ${f.shortDay(day)}`,
      notWeighed: 'not weighed',
      onlyHoard: 'left-overs not looked at',
      correct: 'Correct',
      correctOf: (day: string) => `Correct ${f.shortDay(day)}`,
      remove: 'Delete',
      removeOf: (day: string) => `Delete what was noted of ${f.shortDay(day)}`,
    },
    gone: (name: string) => `${name} is not here any more. What was noted stays.`,
  };
};

export type Leftovers = ReturnType<typeof leftovers>;
