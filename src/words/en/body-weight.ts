/** Weight: noting it, its trend, and what to look into. */
import type { Figures } from '../figures.ts';

export const bodyWeight = (_f: Figures) => ({
  title: 'Weight',
});

export type BodyWeight = ReturnType<typeof bodyWeight>;
