import type { Exchange } from '../en/exchange.ts';
import type { Figures } from '../figures.ts';

export const exchange = (_f: Figures): Exchange => ({
  refused: 'Het bestand is niet overgenomen. Er is niets gewijzigd:',
  failed: 'Dat lukte niet:',
  pageFailed: 'Er ging iets mis op deze pagina. Laad haar opnieuw en probeer het nog eens.',
});
