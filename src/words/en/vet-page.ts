/** The page for the vet. */
import type { Figures } from '../figures.ts';

export const vetPage = (_f: Figures) => ({
  title: 'For the vet',
});

export type VetPage = ReturnType<typeof vetPage>;
