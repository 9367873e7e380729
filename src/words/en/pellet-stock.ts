/** Packs of pellets: how long they last, and what a recall reached. */
import type { Figures } from '../figures.ts';

export const pelletStock = (_f: Figures) => ({
  title: 'Pellets',
});

export type PelletStock = ReturnType<typeof pelletStock>;
