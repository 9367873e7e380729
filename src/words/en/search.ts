/** What a search for a food has to tell. */
import type { Figures } from '../figures.ts';

export const search = (_f: Figures) => ({
  /** @param what its name in English, in a sentence @param typed as the keeper wrote it */
  missing: (what: string, _typed: string) => `The tables have no ${what}.`,
  nearest: (food: string) => `The nearest is ${food}.`,
  addOwn: 'Add it as your own food from its label.',
  notAll: 'No food in the tables has all of these words.',
  notCalled: (word: string) => `No food in the tables is called “${word}”; shown is what is spelt nearly so.`,
  asides: {
    yeast: 'Baker’s yeast is another thing, and live.',
    cornflakes: 'Breakfast cornflakes are sweetened and fortified.',
  },
});

export type Search = ReturnType<typeof search>;
