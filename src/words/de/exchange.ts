import type { Exchange } from '../en/exchange.ts';
import type { Figures } from '../figures.ts';

export const exchange = (_f: Figures): Exchange => ({
  refused: 'Die Datei wurde nicht übernommen. Es wurde nichts geändert:',
  failed: 'Das hat nicht geklappt:',
  pageFailed: 'Auf dieser Seite ging etwas schief. Lade sie neu und versuche es noch einmal.',
});
