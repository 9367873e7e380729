import type { Trials } from '../en/trials.ts';
import type { Figures } from '../figures.ts';

export const trials = (_f: Figures): Trials => ({
  title: 'Nieuw voer',
});
