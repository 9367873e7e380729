import type { Lifeline } from '../en/lifeline.ts';
import type { Figures } from '../figures.ts';

export const lifeline = (_f: Figures): Lifeline => ({
  title: 'Seine Tage',
});
