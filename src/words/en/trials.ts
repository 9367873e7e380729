/** New foods, offered one at a time. */
import type { Figures } from '../figures.ts';

export const trials = (_f: Figures) => ({
  title: 'New foods',
});

export type Trials = ReturnType<typeof trials>;
