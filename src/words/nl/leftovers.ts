import type { Leftovers } from '../en/leftovers.ts';
import type { Figures } from '../figures.ts';

export const leftovers = (_f: Figures): Leftovers => ({
  unknownMix: 'Mengsel, onbekend welk',
  title: 'Resten',
});
