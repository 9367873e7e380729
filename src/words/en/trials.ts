/** New foods, offered one at a time: plan, what was seen, verdict, and what follows for mixes. */
import type { Figures } from '../figures.ts';

export const trials = (f: Figures) => ({
  title: 'New foods',
  intro: (animal: string) =>
    `Offer one new food at a time, a little of it beside food that ${animal} knows, and note what you saw.`,
  gone: (animal: string) => `${animal} no longer lives here. What was tried stays on record.`,
  choose: {
    open: 'Try a new food',
    heading: 'Which food is new?',
    search: 'Search foods',
    placeholder: 'flax seed, mealworms, dandelion…',
    searching: 'Searching…',
    own: 'own food',
    pellet: 'own pellet',
    inMix: 'in a mix',
    never: 'Foods that must not be fed are not in this list.',
    neverFound: (food: string) => `${food} must not be fed.`,
    pick: (food: string) => `Choose ${food}`,
    take: 'Choose',
    cancel: 'Not now',
  },
  plan: {
    heading: (food: string) => `Try ${food}`,
    other: 'Another food',
    cautions: 'To know before',
    amount: 'Each time',
    amountHint: (per: number, body: number) =>
      `About ${f.grams(per)} for every ${f.grams(100)} of body weight, taken from ${f.grams(body)}; that is a tenth of a day’s food or so (common practice, no source).`,
    amountUnknown: 'A very small piece. With a body weight noted, an amount stands here.',
    offers: 'How often',
    times: (n: number) => f.count(n, { one: 'offer', other: 'offers' }),
    from: 'From',
    beside: 'Beside',
    noBeside: 'its usual food',
    days: (days: readonly string[]) => `Days: ${f.list(days)}`,
    apart:
      'A day lies between two offers, so that you see how each one went (common practice, no source). Three offers that agree are needed for a verdict.',
    begin: 'Begin',
    noDay: 'Choose the first day.',
  },
  running: {
    heading: (food: string) => `Being tried: ${food}`,
    beside: (grams: string, food: string) => `${grams} each time, beside ${food}.`,
    alone: (grams: string) => `${grams} each time, beside its usual food.`,
    little: (food: string) => `A very small piece each time, beside ${food}.`,
    littleAlone: 'A very small piece each time, beside its usual food.',
    today: 'An offer is due today.',
    late: (day: string, days: number) =>
      `An offer was due on ${day}, ${f.count(days, { one: 'day', other: 'days' })} ago. It can be made today.`,
    next: (day: string) => `Next offer: ${day}.`,
    done: 'All planned offers are noted.',
    other: (food: string) =>
      `${food} is being tried now. Another new food can be tried once that trial has ended: if two are new at once, nobody can tell which one did harm.`,
    end: 'End this trial',
    ended: (food: string) => `The trial of ${food} has ended.`,
    more: 'Two more offers',
  },
  note: {
    heading: 'What did you see?',
    offered: 'Offered on',
    today: 'today',
    yesterday: 'yesterday',
    seen: {
      first: 'Eaten first',
      eaten: 'Eaten',
      hoarded: 'Carried off',
      left: 'Left',
      upset: 'Did not do well',
    },
    help: {
      first: 'before its usual food',
      eaten: 'sooner or later',
      hoarded: 'into the pouches or the hoard',
      left: 'it still lay there',
      upset: 'loose droppings, a bloated belly, unwell',
    },
    noted: (seen: string, day: string) => `Noted for ${day}: ${seen}. Press another if that is not right.`,
    hoarding: 'Carried off is neither eaten nor refused: nobody can see which.',
    weigh: 'I weighed what was left',
    offeredGrams: 'Offered',
    leftGrams: 'Still there',
    saveWeights: 'Note the weights',
    weighed: (left: string, grams: string) => `${left} of ${grams} were left`,
    takeBack: 'Take back',
    takenBack: (day: string) => `Taken back: ${day}.`,
    sofar: 'What was noted',
    takeBackOf: (day: string) => `Take back what was noted for ${day}`,
  },
  upset: {
    heading: (food: string, animal: string) => `${food}: not good for ${animal}`,
    stop: (animal: string) =>
      `Stop feeding it. Take away what is left of it, in the hoard too; ${animal} keeps its usual food and fresh water.`,
    vet: 'See a vet the same day if it has watery droppings, a wet or dirty tail, a bloated belly, eats nothing or is dull: a small animal fails within a day. If milder signs last until tomorrow, see a vet too.',
    out: (food: string) => `${food} is out of every mix now, under every name and in every form.`,
    others: (day: string, note: string) =>
      `You give it to the other animals all the same, since ${day}: “${note}”.`,
    goAhead: 'Give it to the others, say why …',
    why: 'Why the others get it all the same (they have long eaten it, say)',
    yes: 'Give it to the others',
    no: 'Leave it out',
    keepOut: 'Keep it out for all',
    wrong: 'If it was something else, take that note back below; the food then comes back.',
  },
  verdict: {
    liked: (animal: string, food: string) => `${animal} likes ${food}.`,
    refused: (animal: string, food: string) => `${animal} does not want ${food}.`,
    upset: (animal: string, food: string) => `${animal} did not do well on ${food}.`,
    undecided: 'Not settled yet.',
    stillRefused: (animal: string, food: string) =>
      `${animal} refused ${food} before. It stays out of its mixes until new offers say otherwise.`,
    stillLiked: (animal: string, food: string) =>
      `${animal} liked ${food} before. The new offers have not settled it yet.`,
    chance: (percent: number) =>
      `The chance that it eats it at least every second time is ${f.percent(percent, 0)}.`,
    chanceBetween: (low: number, high: number) =>
      `The chance that it eats it at least every second time is between ${f.percent(low, 0)} and ${f.percent(high, 0)}: of what was carried off nobody knows whether it was eaten.`,
    span: (low: number, high: number) =>
      `It eats it in ${f.number(low, 0)} to ${f.percent(high, 0)} of all offers (95 % sure).`,
    more: (eaten: number, left: number) =>
      `Settled at the soonest after ${f.count(eaten, { one: 'more offer that is eaten', other: 'more offers that are all eaten' })}, or ${f.count(left, { one: 'that is left', other: 'that are all left' })}.`,
    looks: (n: number) => f.count(n, { one: 'offer noted', other: 'offers noted' }),
    noLooks: 'No offer is noted yet.',
    how: 'How this is worked out',
    why: `Each offer is one look. Before the first, every answer counts as equally likely (a uniform prior). After e looks at which the food was eaten and l at which it was left, how often it eats it follows a Beta(1 + e, 1 + l) distribution. A verdict is given once it is 90 % sure either way; it takes three looks that agree (common practice, no source). Food that was weighed counts by its weight. What was carried off is counted once as eaten and once as left, and the verdict must hold both ways.`,
    older: `Tastes change: in a new trial, every look of the trial before counts half, of the one before that a quarter (common practice, no source).`,
    picture: (low: number, high: number, from: number, to: number) =>
      `How often it eats it: most likely ${from === to ? f.percent(from, 0) : `${f.number(from, 0)} to ${f.percent(to, 0)}`}, 95 % sure ${f.number(low, 0)} to ${f.percent(high, 0)}.`,
    never: 'never',
    half: 'every second time',
    always: 'always',
  },
  follows: {
    liked: 'It may go into its mixes.',
    refused: (mixes: readonly string[]) =>
      mixes.length === 0
        ? 'It stays out of every mix made for it, also under another name.'
        : `It is out of ${f.list(mixes)} and of every mix made for it, also under another name.`,
    listed:
      'It also stands on its list of refusals, which you wrote yourself: it stays out until you take it off that list.',
    undecided: 'Mixes stay as they are.',
  },
  lists: {
    upset: 'Did not do well',
    refused: 'Refused',
    liked: 'Liked',
    undecided: 'Tried, not settled',
    untried: 'In its mixes, never tried',
    untriedHint: (animal: string) =>
      `Tick what ${animal} knows from elsewhere. What a finished batch held counts as known.`,
    noneUntried: 'It knows every food of its mixes.',
    noMix: 'No mix is made for it yet.',
    knows: 'It knows this one',
    knowsOf: (food: string) => `It knows ${food}`,
    said: 'You say it knows',
    known: 'known',
    tryIt: 'Try',
    tryItOf: (food: string) => `Try ${food}`,
    again: 'Offer again',
    againOf: (food: string) => `Offer again: ${food}`,
    nothing: 'No food has been tried yet.',
    trialFrom: (day: string) => `Trial from ${day}`,
    trialEnded: (day: string, end: string) => `Trial from ${day}, ended on ${end}`,
    noDays: 'Trial',
    remove: 'Delete trial',
    removeOf: (food: string, day: string) => `Delete trial: ${food}, ${day}`,
    removed: (food: string) => `The trial of ${food} was deleted.`,
    back: (food: string) => `The trial of ${food} is back.`,
  },
  mix: {
    isOut: (food: string, animal: string) => `${food} is out: ${animal} left it in <trial>a trial</trial>.`,
    upset: (food: string, animal: string) =>
      `${food} is out of every mix: ${animal} did not do well on it in <trial>a trial</trial>.`,
    upsetOwn: (food: string, animal: string) =>
      `${food} is out: ${animal} did not do well on it in <trial>a trial</trial>. It stays out of this mix while that stands.`,
    upsetBeside: (food: string, animal: string) =>
      `${food}, fed beside the mix, is out: ${animal} did not do well on it in <trial>a trial</trial>. The ration is reckoned without it; choose another complete food.`,
    refusedBeside: (food: string, animal: string) =>
      `${food}, fed beside the mix, is out: ${animal} refuses it. The ration is reckoned without it; choose another complete food.`,
    lifted: (food: string, animal: string, day: string, note: string) =>
      `${food} is in by your choice of ${day} (“${note}”), though ${animal} did not do well on it in <trial>a trial</trial>.`,
    goAheadWith: (food: string) => `Give it to the others, say why … (${food})`,
    all: 'Out after a trial',
    outShort: (animal: string) => `refused by ${animal}`,
    upsetShort: (animal: string) => `not good for ${animal}`,
    newTo: (animal: string, n: number) =>
      `${animal} has never tried ${f.count(n, { one: 'food', other: 'foods' })} of this mix.`,
    newHint: 'Try new foods one at a time before they go into a batch; or tick what it knows.',
    trying: 'being tried now',
    knowsAll: (animal: string) => `${animal} knows all of these`,
  },
  about: {
    refused: (food: string) => `${food} is out too: the animal left it in <trial>a trial</trial>.`,
    upset: (food: string) =>
      `${food} is out of every mix: the animal did not do well on it in <trial>a trial</trial>.`,
  },
  today: {
    look: (animal: string, food: string) =>
      `${animal} did not do well on ${food}: look how it is. See a vet if it goes on, the same day if it is dull or eats nothing.`,
    trial: 'The trial',
  },
  batch: {
    heading: 'Do not feed this',
    notFor: (food: string, animal: string) =>
      `Not for ${animal}: it holds ${food}, on which ${animal} did not do well.`,
    own: (food: string, animal: string) =>
      `It holds ${food}, on which ${animal} did not do well in <trial>a trial</trial>. Do not feed it to ${animal}. See a vet if it goes on.`,
    other: (food: string, animal: string) =>
      `It holds ${food}, on which ${animal} did not do well in <trial>a trial</trial>. Do not feed it, or go ahead for the others there.`,
  },
});

export type Trials = ReturnType<typeof trials>;
