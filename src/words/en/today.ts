/** The first page: what to do next, and what needs hands today. */
import type { Figures } from '../figures.ts';

export const today = (f: Figures) => ({
  /** The example household. */
  example: {
    title: 'The example household',
    is: 'What you see is an example: the animal, its pellet and the mix are made up, so that you can look round. The foods and their figures are real.',
    startOwn: 'Start your own',
    startOwnHint: 'The example goes away. You can have it back at any time.',
    lookingAt: 'You are looking at the example. Your own things are kept and stay as they are.',
    backToOwn: (mix: string) => `Back to ${mix}`,
    beside: 'The example is still here to look at.',
    look: 'Look at the example',
    takeAway: 'Take the example away',
    gone: 'The example is gone.',
    canLook: 'Want to see how it can look?',
  },
  title: 'Now',
  next: 'Next',
  gathering: 'Reading what was written down…',
  looking: (mix: string) => `Looking at ${mix}…`,
  noFoods: (mix: string) => `${mix} has no food yet.`,
  chooseFoods: 'Add its first food',
  notMade: (mix: string) => `${mix} has its foods; the shares are still to be worked out.`,
  outFirst: (mix: string) => `${mix} is not in range yet. Make it fit first.`,
  toFit: 'Go to Mixes and press “Make it fit”',
  toMix: 'Go to Mixes',
  outBefore: (mix: string) =>
    `${mix} is out of range as it stands: make it fit before you weigh the next batch.`,
  later:
    'Then come the <shopping>shopping</shopping>, the <freezer>freezer, against insects</freezer>, and the <scale>scale</scale>. <days>Days</days> says when.',
  allDays: 'See all days',
  errands: 'For today',
  things: 'things',
  due: 'What is due today',
  links: {
    shopping: 'Go to the shopping list',
    freezer: 'Go to the freezer',
    drying: 'Go to drying',
    scale: 'Go to the scale',
    changeOver: 'Plan the change of food',
    days: 'See the days',
    weighOn: 'Go on weighing',
    animal: (name: string) => `Go to ${name}`,
    forWhom: 'Say which animals the mix is for',
    eachDay: 'How much on each day',
    reached: 'See what it reached',
    run: 'Go to this drying',
    pack: 'See the pack',
    record: 'See its record',
  },
  weighing: (batch: string, grams: number, of: number) =>
    `${batch} is being weighed: ${f.grams(grams)} of ${f.grams(of)} lie in the bowl.`,
  openBatch: 'On the scale',
  changing: (batch: string, day: number, of: number) =>
    `Change over to ${batch} slowly, a little more of it each day: day ${f.number(day)} of ${f.count(of, { one: 'day', other: 'days' })}. See a vet if an animal eats less or has loose droppings.`,
  notToUse: (pack: string, why: string, batches: readonly string[]) =>
    `${pack} is not to be used any more (${why}) and went into ${f.list(batches)}. Do not feed it before you have looked into it.`,
  batchOf: (batch: string, day: string) => `${batch} of ${day}`,
  checkDue: (food: string, time: string) => `Turn and check what dries: ${food}. It was due at ${time}.`,
  checkAt: (food: string, time: string) => `Turn and check what dries at ${time}: ${food}.`,
  freezing: {
    due: (packs: string, n: number) =>
      `${packs} ${f.form(n, { one: 'has', other: 'have' })} been frozen or thawed long enough: tick off the step.`,
    goIn: (packs: string, n: number) =>
      `${packs} ${f.form(n, { one: 'goes', other: 'go' })} into the freezer today.`,
    comeOut: (packs: string, n: number) =>
      `${packs} ${f.form(n, { one: 'comes', other: 'come' })} out of the freezer today.`,
    noDays: (packs: string, n: number) =>
      `${packs} ${f.form(n, { one: 'waits', other: 'wait' })} for freezing and ${f.form(n, { one: 'has', other: 'have' })} no days yet.`,
  },
  pastBest: (pack: string, day: string) =>
    `${pack} is past its best before, ${day}: look at it and smell it before you use it.`,
  pastUseBy: (batch: string, day: string) =>
    `${batch} was to be used by ${day}: an estimate, but do not feed it without looking, and better make a new one.`,
  byDay: (batch: string, day: string) => `${batch} is to be used by ${day} (an estimate).`,
  first: 'Look at this first',
  /** Of a label that stands on many lines, the animal it is for. */
  ofOne: (label: string, name: string) => `${label}: ${name}`,
  care: {
    title: 'Your animals today',
    nothing: 'Nothing is due for your animals today.',
    animals: 'animals',
    feed: (parts: readonly string[]) => `Fed: ${parts.join(', ')}`,
    ofMix: (grams: number) => `${f.grams(grams, 1)} mix`,
    ofPellet: (grams: number) => `${f.grams(grams, 1)} pellet`,
    ofNew: (grams: number) => `${f.grams(grams, 1)} new mix`,
    ofOld: (grams: number) => `${f.grams(grams, 1)} old mix`,
    ofFood: (grams: number, food: string) => `${f.grams(grams, 1)} ${food}`,
    feedAll: (n: number) => `All ${f.number(n)} fed as planned`,
    sayAmount: 'Say what it is fed',
    doNotFeed: 'Do not feed: see why',
    weigh: 'Weigh',
    inDoubt: (grams: number) => `${f.grams(grams, 1)}: is that right?`,
    weighed: (grams: number) => `Weighed: ${f.grams(grams, 1)}`,
    left: 'Left over',
    leftDone: 'Left over: noted',
    notToday: 'Not today',
    noThanks: 'No, thanks',
    weighAgain: (day: string) => `Time to weigh it again: last on ${day}.`,
    weighFirst: 'It would be good to weigh it.',
    weighWhy: {
      alert: 'Every day, until its weight is clear.',
      ill: (days: number) => `Every ${f.number(days)} days, for what a vet has said of it.`,
      young: (days: number) => `Every ${f.number(days)} days while it grows.`,
      trial: (days: number) => `Every ${f.number(days)} days while it tries a new food.`,
      change: (days: number) => `Every ${f.number(days)} days while its food changes.`,
      old: (days: number) => `Every ${f.number(days)} days, since it is old.`,
    },
    lookLeft: (names: readonly string[]) => `Look for what was left last night: ${f.list(names)}.`,
    offer: (food: string) => `Offer ${food} today.`,
    offerGrams: (grams: number, food: string) => `Offer ${f.grams(grams, 1)} of ${food} today.`,
    offerBeside: (food: string, known: string) => `Offer ${food} today, beside ${known}.`,
    offerGramsBeside: (grams: number, food: string, known: string) =>
      `Offer ${f.grams(grams, 1)} of ${food} today, beside ${known}.`,
    planned: (day: string) => `It was planned for ${day}.`,
    toTrial: 'Go to the new food',
    ticked: (name: string) => `${name} is ticked off.`,
    tickedAll: (n: number) => `${f.count(n, { one: 'animal', other: 'animals' })} ticked off.`,
  },
  weight: {
    lost: (name: string, percent: number, since: string, from: number, to: number) =>
      `${name} has lost ${f.percent(percent, 0)} since ${since}: from ${f.bodyGrams(from)} to ${f.bodyGrams(to)}.`,
    gained: (name: string, percent: number, since: string, from: number, to: number) =>
      `${name} has gained ${f.percent(percent, 0)} since ${since}: from ${f.bodyGrams(from)} to ${f.bodyGrams(to)}.`,
    behind: (name: string, grams: number) =>
      `${name} grows more slowly than it should: ${f.bodyGrams(grams)} now.`,
    vet: {
      today: 'See a vet today.',
      days: 'See a vet within days.',
      'next visit': 'Tell the vet at the next visit.',
    },
    link: 'See its weights',
  },
  upset: {
    own: (food: string, animal: string, batch: string) =>
      `${food} did not do well with ${animal} and is in ${batch}: do not feed it to ${animal}. See a vet if it is ill.`,
    other: (food: string, animal: string, batch: string) =>
      `${food} did not do well with ${animal} and is in ${batch}, which others are fed: look into it.`,
    link: 'See the new food',
  },
  maybeBarred: (batch: string) =>
    `${batch} may hold a pack that is not used any more: nobody noted which went in. Better feed something else until you know.`,
  barredPack: (pack: string, why: string, animals: readonly string[]) =>
    `${pack} is not to be used any more (${why}). ${f.list(animals)} ${f.form(animals.length, { one: 'was', other: 'were' })} fed from it, or may have been: take what is left of it away, out of hoards too.`,
  buyPack: 'Go to the shopping list',
  runsOut: (batch: string, day: string) => `${batch} runs out on ${day}.`,
  runsOutToday: (batch: string) => `${batch} runs out today.`,
  ranOut: (batch: string, day: string) =>
    `${batch} was to run out on ${day}. Weigh what is left, or say that it is all eaten.`,
  planNext: 'Plan the next batch',
  left: {
    title: 'What is left',
    others: 'What is left of other batches',
    of: (batch: string) => `What is left of ${batch}`,
    weigh: (batch: string) => `Weigh what is left of ${batch}`,
    notWeighed: 'not weighed today',
    before: 'Before today’s food is taken.',
    allEaten: 'All eaten',
    saidEaten: (batch: string) => `${batch}: all eaten.`,
    said: (grams: number, batch: string) => `${f.grams(grams)} of ${batch} kept.`,
    weighed: (grams: number, batch: string, day: string) =>
      `${f.grams(grams)} of ${batch} were left on ${day}.`,
    made: (grams: number, batch: string, day: string) => `${f.grams(grams)} of ${batch} were made on ${day}.`,
    weighedAbout: (grams: number, batch: string, day: string, left: number) =>
      `${f.grams(grams)} of ${batch} were left on ${day}; by what is eaten, about ${f.grams(left)} should be left today.`,
    madeAbout: (grams: number, batch: string, day: string, left: number) =>
      `${f.grams(grams)} of ${batch} were made on ${day}; by what is eaten, about ${f.grams(left)} should be left today.`,
  },
});

export type Today = ReturnType<typeof today>;
