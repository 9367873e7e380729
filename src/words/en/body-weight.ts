/** Weight: noting it, its trend, and what to look into. */
import type { Figures } from '../figures.ts';

export const bodyWeight = (f: Figures) => ({
  title: 'Weight',
  weigh: (name: string) => `Weigh ${name}`,
  /** "3 March, 14:30". */
  moment: (day: string, time: string) => `${day}, ${time}`,
  last: {
    none: (name: string) => `${name} has not been weighed yet.`,
    today: (grams: number, time: string) => `Weighed today at ${time}: ${f.grams(grams, 1)}.`,
    yesterday: (grams: number) => `Weighed yesterday: ${f.grams(grams, 1)}.`,
    on: (grams: number, day: string) => `Last weighed on ${day}: ${f.grams(grams, 1)}.`,
  },
  gone: (name: string) => `${name} is on record alone. What was weighed stays below.`,
  pad: {
    title: 'What the scale shows',
    press: 'One press keeps the weight. The one in the frame is the likeliest.',
    pressTub: (tub: number) =>
      `Press what the scale shows with the tub in it. Its ${f.grams(tub, 1)} are taken off.`,
    /** What a button is called, beside its figure. */
    button: (grams: number) => `${f.grams(grams)}`,
    /** The animal alone, under what the scale shows. */
    net: (grams: number) => `→ ${f.grams(grams, 1)}`,
    likeliest: 'the likeliest',
    other: 'Another weight',
    otherTub: 'Another weight, with the tub',
    keep: 'Keep',
    belowTub: (tub: number) =>
      `That is no more than the tub alone weighs (${f.grams(tub, 1)}). Is the animal in it? Or does your scale take the tub off by itself?`,
    first: 'After the first weighing there are buttons here, round the last weight.',
  },
  kept: (grams: number) => `${f.grams(grams, 1)} kept.`,
  keptTub: (grams: number, onScale: number) =>
    `${f.grams(grams, 1)} kept: ${f.grams(onScale, 1)} on the scale, without the tub.`,
  keptAfterOther: (grams: number, before: number) =>
    `${f.grams(grams, 1)} kept. The ${f.grams(before, 1)} kept just before stay in the list too.`,
  ask: {
    title: 'Is that right?',
    today: (grams: number, last: number) => `${f.grams(grams, 1)}? Earlier today it was ${f.grams(last, 1)}.`,
    yesterday: (grams: number, last: number) => `${f.grams(grams, 1)}? Yesterday it was ${f.grams(last, 1)}.`,
    on: (grams: number, last: number, day: string) =>
      `${f.grams(grams, 1)}? On ${day} it was ${f.grams(last, 1)}.`,
    kind: (grams: number, low: number, high: number) =>
      `${f.grams(grams, 1)}? A grown animal of this kind weighs ${f.grams(low)} to ${f.grams(high)}.`,
    likely: (grams: number, low: number, high: number) =>
      `${f.grams(grams, 1)}? By what is known of it, ${f.grams(low, 0)} to ${f.grams(high, 0)} is likely.`,
    correct: 'Correct it',
    right: 'It is right',
    rightAlarm: 'If it is right and the animal has lost that much, see a vet today.',
  },
  questions: {
    title: 'Is this right?',
    of: (grams: number, day: string) =>
      `${f.grams(grams, 1)} on ${day} is far from the weights around it. It counts for nothing until you say that it is right.`,
    right: (grams: number, day: string) => `It is right: ${f.grams(grams, 1)} on ${day}`,
    correct: (grams: number, day: string) => `Correct it: ${f.grams(grams, 1)} on ${day}`,
    said: (grams: number) => `${f.grams(grams, 1)} counts from now on.`,
  },
  tub: {
    switch: 'Weighed in a tub',
    hint: 'A small tub keeps the animal on the scale. Leave this off if your scale takes the tub off by itself (tare).',
    weigh: 'Weight of the empty tub',
    once: 'Weigh the empty tub once, dry and without bedding.',
    same: (grams: number) => `As last time: ${f.grams(grams, 1)}`,
    now: (grams: number) => `The tub weighs ${f.grams(grams, 1)}.`,
    again: 'Weigh the tub again',
    keep: 'Keep the tub’s weight',
  },
  alerts: {
    title: 'What to look into',
    none: 'Nothing stands out.',
    doubt:
      'The last weighing is in doubt, so nothing can be said yet. Weigh again, or answer the question above.',
    few: 'Too few weighings so far to say whether anything stands out.',
    vet: {
      today: 'See a vet today',
      days: 'See a vet within the next days',
      'next visit': 'Tell the vet at the next visit',
    },
    fast: {
      loss: (name: string, percent: number) =>
        `${name} has lost ${f.percent(percent, 0)} of its weight within days.`,
      gain: (name: string, percent: number) => `${name} has gained ${f.percent(percent, 0)} within days.`,
    },
    shift: {
      loss: (name: string, percent: number) =>
        `${name} weighs ${f.percent(percent, 0)} less than it used to, and stays there.`,
      gain: (name: string, percent: number) =>
        `${name} weighs ${f.percent(percent, 0)} more than it used to, and stays there.`,
    },
    slow: {
      loss: (name: string, percent: number) =>
        `${name} has been losing weight slowly, ${f.percent(percent, 0)} so far.`,
      gain: (name: string, percent: number) =>
        `${name} has been gaining weight slowly, ${f.percent(percent, 0)} so far.`,
    },
    growth: {
      loss: (name: string, _percent: number) =>
        `${name} is still young and does not gain as the young should.`,
      gain: (name: string, _percent: number) =>
        `${name} is still young and gains faster than was to be expected.`,
    },
    fromTo: (from: number, to: number, since: string) =>
      `It was ${f.grams(from, 0)} before and is ${f.grams(to, 0)} now; it began about ${since}.`,
    expectedIs: (from: number, to: number, on: string) =>
      `At least ${f.grams(from, 0)} was to be expected; it was ${f.grams(to, 0)} on ${on}.`,
    weighAgain: 'Weigh once more now, to be sure that the figure is right. If it is, do not wait.',
    look: 'Look whether it eats, drinks and moves as usual, at its teeth, its belly and its droppings, and tell the vet what you saw.',
    gain: 'A gain can also hide a loss of muscle, or be water or young. Feel along the back, and ask the vet.',
    noDiagnosis: 'This says that the weight changed, not why.',
    foundToo: 'Found in another way too:',
    moreCertain: 'How often such a warning is wrong',
    oneIn: (animals: number) =>
      `In about one animal in ${f.number(animals, 0)} a year this warning comes without cause.`,
    timesAYear: (times: number) =>
      `This warning comes without cause about ${f.number(times, 1)} times a year in each animal.`,
    hardlyEver: 'In fewer than one animal in 1000 a year does this warning come without cause.',
  },
  expected: {
    title: 'To be expected',
    autumn: (name: string) =>
      `${name} lives by daylight and its days grow short: a falling weight belongs to the season. It is taken into account here.`,
    spring: (name: string) =>
      `The days grow longer: ${name} gains back what it lost for the winter. It is taken into account here.`,
    'short days': (name: string) =>
      `In short days an animal of this kind gains weight. For ${name} it is taken into account here.`,
    growth: (name: string) => `${name} is still growing: a rising weight is as it should be.`,
    pregnancy: (name: string) => `${name} is pregnant: a rising weight is as it should be.`,
    nursing: (name: string) => `${name} is nursing: its weight goes up and down with that.`,
    birth: (name: string) => `${name} has given birth: the sudden fall comes from that.`,
    anyway: 'If it eats less, or seems ill, see a vet all the same.',
  },
  beside: {
    title: 'To compare with',
    kind: (species: string) => `Grown, ${species}`,
    range: (low: number, high: number) => `${f.grams(low)} to ${f.grams(high)}`,
    noKind: 'No figure is kept for this kind of animal.',
    usual: (name: string) => `${name} in health`,
    usualNone: 'Not said yet',
    sayUsual: 'Say it under “About”',
    lately: 'Last 90 days',
    latelyRange: (low: number, high: number) =>
      low === high ? `about ${f.grams(low, 0)}` : `${f.grams(low, 0)} to ${f.grams(high, 0)}`,
    own: 'What counts is how the animal’s own weight changes. Healthy animals of one kind differ by a lot.',
  },
  picture: {
    title: 'Picture',
    choose: 'One weighing in the picture',
    none: 'No weighing in this time.',
    at: (day: string, grams: number) => `${day}: ${f.grams(grams, 1)}.`,
    week: (day: string, low: number, high: number) =>
      `Week from ${day}: ${f.grams(low, 1)} to ${f.grams(high, 1)}.`,
    trend: (grams: number, low: number, high: number) =>
      `Trend ${f.bodyGrams(grams)} (${f.bodyGrams(low)} to ${f.bodyGrams(high)}).`,
    unlikely: 'Looks unlikely, counts for nothing.',
    said: (from: string, to: string, first: number, last: number, n: number) =>
      `Weights from ${from} to ${to}: ${f.count(n, { one: 'weighing', other: 'weighings' })}, trend from ${f.grams(first, 0)} to ${f.grams(last, 0)}.`,
    key: {
      dot: 'weighed',
      dots: 'lowest to highest of a week',
      trend: 'trend and how sure it is',
      unlikely: 'unlikely, does not count',
      alert: 'something to look into',
      range: 'grown animals of the kind',
    },
    table: 'The same as a table',
    columns: { day: 'Day', week: 'Week from', weighed: 'Weighed', trend: 'Trend', between: 'Between' },
    weighedRange: (low: number, high: number) => `${f.number(f.mass(low), 1)} to ${f.grams(high, 1)}`,
    trendRange: (low: number, high: number) => `${f.bodyGrams(low)} to ${f.bodyGrams(high)}`,
  },
  list: {
    title: 'Earlier weighings',
    none: 'None yet.',
    add: 'Add one of another day',
    item: (grams: number) => f.grams(grams, 1),
    tub: (onScale: number, tub: number) => `${f.grams(onScale, 1)} on the scale, tub ${f.grams(tub, 1)}`,
    unlikely: 'unlikely, does not count',
    sure: 'looked unlikely, said to be right',
    change: 'Correct',
    changeOf: (grams: number, moment: string) => `Correct ${f.grams(grams, 1)}, ${moment}`,
    deleteOf: (grams: number, moment: string) => `Delete ${f.grams(grams, 1)}, ${moment}`,
    deleted: (grams: number) => `${f.grams(grams, 1)} deleted.`,
    corrected: (grams: number) => `Now ${f.grams(grams, 1)}.`,
    added: (grams: number) => `${f.grams(grams, 1)} added.`,
  },
  form: {
    add: 'A weighing of another day',
    change: (moment: string) => `Correct the weighing of ${moment}`,
    weight: 'Weight',
    weightTub: (tub: number) => `On the scale, with the tub of ${f.grams(tub, 1)}`,
    day: 'Day',
    time: 'Time',
    note: 'Note',
    noWeight: 'Say what it weighed.',
    noDay: 'Say on which day.',
    ahead: 'That lies ahead: a weighing has a day and a time in the past.',
  },
});

export type BodyWeight = ReturnType<typeof bodyWeight>;
