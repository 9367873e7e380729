/** Left-overs, and what they say of what was eaten. */
import type { Figures } from '../figures.ts';

export const leftovers = (_f: Figures) => ({
  unknownMix: 'Mix, not known which',
  title: 'Left over',
});

export type Leftovers = ReturnType<typeof leftovers>;
