/** What is done next with a mix, and when: of the plan as a whole, in sentences. */
import type { Figures } from '../figures.ts';

export const steps = (f: Figures) => {
  const days = (n: number) => f.count(n, { one: 'day', other: 'days' });
  return {
    /** What is done, as it stands in a list or in the middle of a sentence. */
    step: {
      buy: 'buy',
      freeze: 'freeze',
      thaw: 'thaw',
      dry: 'dry',
      weigh: 'weigh out',
      'change-over': 'change over',
    },
    /** "freeze 1". */
    numbered: (step: string, n: number) => `${step} ${f.number(n)}`,
    /** "freeze (1 of 2)". */
    numberedOf: (step: string, n: number, of: number) => `${step} (${f.number(n)} of ${f.number(of)})`,
    /** "freeze (4)": how many days it takes. */
    lasting: (step: string, n: number) => `${step} (${f.number(n)})`,
    /** "freeze: oats, millet". */
    with: (step: string, goods: string) => `${step}: ${goods}`,
    namedAndMore: (names: string, more: number) => `${names} and ${f.number(more)} more`,

    todo: {
      buy: (what: string) => `buy ${what}`,
      freeze: (what: string) => `freeze ${what}`,
      thaw: (what: string) => `take ${what} out of the freezer`,
      dry: (what: string) => `dry ${what}`,
      weigh: (made: string) => `weigh out ${made}`,
      'change-over': (made: string) => `begin to change over to ${made}`,
    },
    buyAnd: {
      freeze: (what: string) => `buy and freeze ${what}`,
      dry: (what: string) => `buy and dry ${what}`,
    },
    foods: (n: number) => f.count(n, { one: 'food', other: 'foods' }),
    todoToday: (todo: string) => `${todo} today.`,
    todoBy: (todo: string, day: string) => `${todo} by ${day}.`,
    todoLate: (todo: string, day: string, made: string, late: number) =>
      `${todo} now: it was due by ${day}, so ${made} comes ${days(late)} late.`,
    ready: (made: string) => `${made} is ready.`,
    goesOn: (step: string, day: string) => `${step} goes on until ${day}.`,
    goesOnToday: (step: string) => `${step} goes on until today.`,
    runsOutToday: (name: string, then: string) => `${name} runs out today; ${then}`,
    runsOut: (name: string, day: string, then: string) => `${name} runs out on ${day}; ${then}`,
    ranOut: (name: string, day: string, then: string) => `${name} ran out on ${day}; ${then}`,

    pace: (n: number, chain: string) => `It takes ${days(n)}. This sets the pace: ${chain}.`,
    allDone: (made: string) => `All steps to ${made} are done.`,
    first: (todo: string, day: string) => `First of all: ${todo} by ${day}.`,
    usedOn: (made: string, day: string) => `On ${day} the animals are used to ${made}.`,
    weighedOn: (made: string, day: string) => `On ${day} ${made} is weighed out.`,
    usedBy: (made: string, day: string) => `Then the animals are used to ${made} by ${day}.`,
    weighedBy: (made: string, day: string) => `Then ${made} is weighed out by ${day}.`,
    justFits: 'It just fits: there is no day to spare.',
    fits: (spare: number) => `It fits, with ${days(spare)} to spare.`,
    usedTooLate: (made: string, day: string, late: number, due: string) =>
      `It does not fit: the animals are used to ${made} on ${day}, ${days(late)} after ${due}.`,
    weighedTooLate: (made: string, day: string, late: number, due: string) =>
      `It does not fit: ${made} is weighed out on ${day}, ${days(late)} after ${due}.`,
    moveEarlier: (spare: number) => `Move steps to earlier days: there would be ${days(spare)} to spare.`,
    bridge: (name: string | undefined) =>
      `On the days without ${name ?? 'the mix'}, feed the complete pellet alone (common practice, no source), or make a small batch of what is ready.`,
    shortestFits: (day: string) =>
      `With the shortest times that keepers use (common practice, no source) it would be done on ${day}, and fit: give the steps fewer days.`,
    shortestLate: (day: string) =>
      `Even with the shortest times that keepers use (common practice, no source) it is done on ${day}.`,
  };
};

export type Steps = ReturnType<typeof steps>;
