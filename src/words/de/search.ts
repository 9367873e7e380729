import type { Search } from '../en/search.ts';
import type { Figures } from '../figures.ts';

export const search = (_f: Figures): Search => ({
  missing: (_what, typed) => `„${typed}“ steht nicht in den Tabellen.`,
  nearest: (food) => `Am nächsten kommt: ${food}.`,
  addOwn: 'Leg es nach dem Etikett als eigene Zutat an.',
  notAll: 'Keine Zutat der Tabellen hat alle diese Wörter.',
  notCalled: (word) => `Keine Zutat der Tabellen heißt „${word}“; gezeigt wird, was ähnlich geschrieben ist.`,
  asides: {
    yeast: 'Backhefe ist etwas anderes, und sie lebt.',
    cornflakes: 'Cornflakes zum Frühstück sind gesüßt und angereichert.',
  },
});
