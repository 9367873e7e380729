import type { Figures } from '../figures.ts';

export const feeding = (f: Figures) => {
  const days = (n: number) => f.count(n, { one: 'day', other: 'days' });
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
  };
};

export type Feeding = ReturnType<typeof feeding>;
