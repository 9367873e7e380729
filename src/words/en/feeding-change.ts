/** How a ration stands on each day of a change of food. */
import type { Figures } from '../figures.ts';

export const feedingChange = (f: Figures) => {
  const rules = (n: number) => f.count(n, { one: 'rule', other: 'rules' });
  return {
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
  };
};

export type FeedingChange = ReturnType<typeof feedingChange>;
