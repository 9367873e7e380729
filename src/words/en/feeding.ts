import type { Figures } from '../figures.ts';

export const feeding = (f: Figures) => {
  const days = (n: number) => f.count(n, { one: 'day', other: 'days' });
  const rules = (n: number) => f.count(n, { one: 'rule', other: 'rules' });
  return {
    notKnown: (animal: string) => `How much ${animal} is fed a day is not known; write it with the animal.`,
    ofMix: (grams: number) => `${f.grams(grams, 1)} of the mix`,
    ofFood: (grams: number, food: string) => `${f.grams(grams, 1)} ${food}`,
    amountNotKnown: (food: string) => `${food} (amount not known)`,
    aDay: (animal: string, parts: readonly string[]) => `${animal}: ${f.list(parts)} a day.`,
    nobodyNamed: 'No animal is named, so how long it lasts is not known.',
    nobodyHasSaid: (animals: readonly string[]) =>
      `How long it lasts is not known: nobody has said how much ${f.list(animals)} ${f.form(animals.length, { one: 'is', other: 'are' })} fed a day.`,
    nothingFed: 'Nothing of the mix is fed, so it does not run out.',
    lasts: (n: number, until: string) => `Lasts ${days(n)}, until ${until}.`,
    lastsAtMost: (n: number, until: string, animals: readonly string[]) =>
      `Lasts at most ${days(n)}, at the latest until ${until}; how much ${f.list(animals)} ${f.form(animals.length, { one: 'is', other: 'are' })} fed is not known.`,
    runsOut: (name: string, day: string) => `${name} runs out on ${day}.`,
    weighLeft: (name: string) => `Weigh what is left of ${name} and enter the weight.`,
    sayWhoEats: (name: string) => `Say which animals eat ${name}.`,
    enterDaily: (animal: string) => `Enter how much ${animal} is fed in a day.`,
    nobodyCanSay: (name: string, missing: string) => `Nobody can say yet when ${name} runs out. ${missing}`,

    change: {
      /** Of the contents of a whole day's food. */
      ofDay: (subject: string) => `${subject} of the day's food`,
      unchecked: (subject: string, amounts: readonly string[]) =>
        `${subject} is not checked while the food changes: nobody knows the ${f.list(amounts)} of the old food.`,
      day: (n: number) => `Day ${f.number(n)}`,
      daysFromTo: (first: number, last: number) => `Day ${f.number(first)} to ${f.number(last)}`,
      oldHolds: (amount: string) => `the old food holds ${amount}`,
      newHolds: (amount: string) => `the new ration holds ${amount}`,
      oldHas: (ratio: string) => `the old food has ${ratio}`,
      newHas: (ratio: string) => `the new ration has ${ratio}`,
      below: (when: string, subject: string, limit: string, since: readonly string[]) =>
        `${when}: ${subject} is below ${limit}, since ${f.list(since)}.`,
      above: (when: string, subject: string, limit: string, since: readonly string[]) =>
        `${when}: ${subject} is above ${limit}, since ${f.list(since)}.`,
      cannotCheck: (n: number) =>
        n === 1 ? 'One rule cannot be checked meanwhile.' : `${rules(n)} cannot be checked meanwhile.`,
      noRule: 'No rule can be asked of these days.',
      justOutside: (stepGrams: number, list: readonly number[]) =>
        `Weighed in steps of ${f.grams(stepGrams)}, ${f.form(list.length, { one: 'day', other: 'days' })} ${f.list(list.map((d) => f.number(d)))} ${f.form(list.length, { one: 'falls', other: 'fall' })} just outside.`,
      never: 'Out of range on every day.',
      always: 'In range on every day.',
      lastDay: (day: number) => `In range on the last day, day ${f.number(day)}.`,
      from: (day: number) => `In range from day ${f.number(day)} on.`,
      only: (day: number) => `In range on day ${f.number(day)} only.`,
      fromTo: (first: number, last: number) =>
        `In range from day ${f.number(first)} to day ${f.number(last)} only.`,
      caution: {
        slowly: 'Change slowly; keep some of the old food until the change is done.',
        droppings: 'Look at the droppings every day: they should stay dry, dark and formed.',
        weigh:
          'Weigh the animal every two or three days, and look into its hoard: what is carried off is not yet eaten.',
        'slow-down':
          'If droppings turn soft or the new food is left, stay at this step or go back to the last one that went well.',
        vet: 'With diarrhoea, if nothing is eaten, or if weight is lost, go back to the old food and see a vet the same day.',
      },
    },
  };
};

export type Feeding = ReturnType<typeof feeding>;
