import type { Search } from '../en/search.ts';
import type { Figures } from '../figures.ts';

export const search = (_f: Figures): Search => ({
  missing: (_what, typed) => `“${typed}” staat niet in de tabellen.`,
  nearest: (food) => `Het dichtst in de buurt komt ${food}.`,
  addOwn: 'Voeg het toe als eigen ingrediënt, naar het etiket.',
  notAll: 'Geen ingrediënt in de tabellen heeft al deze woorden.',
  notCalled: (word) => `Geen ingrediënt in de tabellen heet “${word}”; getoond wordt wat er op lijkt.`,
  asides: {
    yeast: 'Bakkersgist is iets anders, en leeft.',
    cornflakes: 'Cornflakes voor het ontbijt zijn gezoet en verrijkt.',
  },
});
