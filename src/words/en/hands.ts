/** Hygiene, dust, allergies, water and the size of pieces. */
import type { Figures } from '../figures.ts';

export const hands = (_f: Figures) => ({
  title: 'Health and hands',
});

export type Hands = ReturnType<typeof hands>;
