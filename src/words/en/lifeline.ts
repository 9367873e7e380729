/** The life of one animal on one time axis. */
import type { Figures } from '../figures.ts';

export const lifeline = (_f: Figures) => ({
  title: 'Its days',
});

export type Lifeline = ReturnType<typeof lifeline>;
