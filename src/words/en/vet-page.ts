/** The page for the vet: one printed page of one animal. */
import type { Figures } from '../figures.ts';

const between = (f: Figures, low: number, high: number) =>
  f.number(low, 1) === f.number(high, 1) ? f.grams(high, 1) : `${f.number(low, 1)} to ${f.grams(high, 1)}`;

export const vetPage = (f: Figures) => ({
  title: 'For the vet',
  help: 'One page to take along, on A4 or Letter. It has what you noted, and says what is not known.',
  print: 'Print this page',
  working: 'Working out what its food holds…',
  madeOn: (day: string) => `Made on ${day} from the keeper’s own records. Not a diagnosis.`,
  notKnown: 'not known',
  more: (n: number) => `and ${f.number(n)} more`,
  facts: {
    species: 'Animal',
    age: 'Age',
    sex: 'Sex',
    sexes: { female: 'female', male: 'male' },
    weight: 'Weight',
    health: 'Health',
    healthNone: 'nothing is noted',
    vetSaid: (what: string) => `${what} (a vet said so)`,
    since: (what: string, day: string) => `${what}, since ${day}`,
    weightOn: (grams: number, day: string) => `${f.grams(grams, 1)} on ${day}`,
    refuses: 'Refuses',
    died: (day: string) => `died on ${day}`,
    moved: (day: string) => `given away on ${day}`,
  },
  food: {
    title: 'Food a day',
    none: 'What it is fed is not known: no finished batch is fed to it.',
    ofMix: (grams: number, mix: string, day: string) => `${f.grams(grams, 1)} of ${mix}, made on ${day}`,
    ofMixUnknown: (mix: string, day: string) => `${mix}, made on ${day}: how much is not known`,
    ofFood: (grams: number, food: string) => `${f.grams(grams, 1)} of ${food}`,
    ofFoodUnknown: (food: string) => `${food}: how much is not known`,
    fed: (days: number, of: number, mix: number, beside: number) =>
      `Ticked off as fed on ${f.number(days)} of the last ${f.number(of)} days: ${f.grams(mix, 1)} of mix and ${f.grams(beside, 1)} beside it a day, on average.`,
    notTicked: 'What it was really fed was not ticked off in the last 30 days.',
    eaten: (low: number, high: number, offered: number, days: number) =>
      `Eaten, by left-overs of ${f.count(days, { one: 'night', other: 'nights' })}: ${between(f, low, high)} of ${f.grams(offered, 1)} offered a night.`,
    changing: (day: number, of: number) => `Its food is changing: day ${f.number(day)} of ${f.number(of)}.`,
    taken: (low: number, high: number, offered: number, days: number) =>
      `Taken, by left-overs of ${f.count(days, { one: 'night', other: 'nights' })}: ${between(f, low, high)} of ${f.grams(offered, 1)} offered a night. Not all hoards were looked for: some of it may lie hidden, not eaten.`,
    eatenUnknown: 'What it eats of that is not known: no left-overs were noted in the last 30 days.',
    foods: 'Foods of the mix, by weight',
    share: (food: string, percent: number) => `${food} ${f.percent(percent, 1)}`,
  },
  contents: {
    title: 'What the food holds',
    per100: 'per 100 g as fed, mix and pellet together',
    nutrient: 'Content',
    offered: 'Offered',
    dry: 'In dry matter',
    eaten: 'Eaten',
    taken: 'Taken',
    known: 'Known of',
    atLeast: (amount: string) => `at least ${amount}`,
    range: (low: string, high: string) => `${low} to ${high}`,
    estimated: 'est.',
    ratio: 'Calcium to phosphorus',
    toOne: (ratio: number) => `${f.number(ratio, 2)} : 1`,
    sources: (tables: number, own: number) =>
      `Figures of the mix: ${f.percent(tables, 0)} by weight from published food tables, ${f.percent(own, 0)} from labels or the keeper. Figures beside the mix: from the label as kept.`,
    knownHelp:
      '“Known of”: percent of the food, by weight, whose figure is known or estimated (est.). Crude and dietary fibre are two measures.',
    failed: (why: string) => `What the food holds could not be worked out: ${why}`,
    none: 'What the food holds is not known: nothing was weighed into a batch that is fed to it.',
  },
  weights: {
    title: 'Weights of the last 90 days',
    none: 'No weighing in the last 90 days.',
    count: (n: number) => f.count(n, { one: 'weighing', other: 'weighings' }),
    before: (days: number) => `About ${f.number(days)} days before`,
    last: 'Last',
    lowest: 'Lowest',
    highest: 'Highest',
    on: (grams: number, day: string) => `${f.grams(grams, 1)}, ${day}`,
    change: (grams: number, percent: number) =>
      `${f.bodyGrams(grams)} (${percent < 0 ? '−' : '+'}${f.percent(Math.abs(percent), 0)} since)`,
    usual: 'In health, as the keeper says',
    grown: 'Grown ones of its kind',
    span: (low: number, high: number, source: string) => `${f.number(low)} to ${f.grams(high)} (${source})`,
    lost: (percent: number, since: string, from: number, to: number) =>
      `Lost ${f.percent(percent, 0)} since ${since}: from ${f.bodyGrams(from)} to ${f.bodyGrams(to)}.`,
    gained: (percent: number, since: string, from: number, to: number) =>
      `Gained ${f.percent(percent, 0)} since ${since}: from ${f.bodyGrams(from)} to ${f.bodyGrams(to)}.`,
    behind: (to: number) => `Grows more slowly than published for its kind: ${f.bodyGrams(to)} now.`,
    picture: (n: number, lowest: number, highest: number) =>
      `Picture of ${f.count(n, { one: 'weighing', other: 'weighings' })}, from ${f.grams(lowest, 1)} to ${f.grams(highest, 1)}`,
    key: 'Dots: weighings. Line: smoothed. Broken upright lines: a new batch or food.',
  },
  changes: {
    title: 'Changes in the last 90 days',
    none: 'None noted.',
    firstBatch: (name: string) => `First batch of ${name}.`,
    batch: (name: string) => `New batch of ${name}, the same foods.`,
    batchIn: (name: string, added: readonly string[]) => `New batch of ${name}, with ${f.list(added)}.`,
    batchOut: (name: string, out: readonly string[]) => `New batch of ${name}, without ${f.list(out)}.`,
    batchBoth: (name: string, added: readonly string[], out: readonly string[]) =>
      `New batch of ${name}, with ${f.list(added)}, without ${f.list(out)}.`,
    otherFoods: (n: number) => f.count(n, { one: 'other food', other: 'other foods' }),
    beside: (names: readonly string[]) => `Beside the mix now: ${f.list(names)}.`,
    besideNone: 'Nothing is fed beside the mix any more.',
    packOpened: (name: string) => `New pack opened: ${name}.`,
    packBought: (name: string) => `New pack bought: ${name}.`,
    trial: (food: string, results: readonly string[]) => `New food tried: ${food}; ${f.list(results)}.`,
    seen: {
      first: (n: number) => `eaten first ${times(n)}`,
      eaten: (n: number) => `eaten ${times(n)}`,
      hoarded: (n: number) => `hoarded ${times(n)}`,
      left: (n: number) => `left ${times(n)}`,
      upset: (n: number) => `did not do well on it ${times(n)}`,
    },
    verdict: { liked: 'it likes it', refused: 'it refuses it', undecided: 'not decided yet' },
    begun: (what: string) => `Noted: ${what}.`,
    over: (what: string) => `Over: ${what}.`,
  },
  notes: {
    title: 'What the keeper saw',
    none: 'Nothing noted in the last 90 days.',
    vet: (text: string) => `A vet said: ${text}`,
  },
  contacts: {
    vet: 'Usual vet',
    emergency: (phone: string) => `emergencies ${phone}`,
    keeper: 'Keeper, phone',
  },
});

function times(n: number): string {
  return n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`;
}

export type VetPage = ReturnType<typeof vetPage>;
