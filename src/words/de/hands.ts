import type { Hands } from '../en/hands.ts';
import type { Figures } from '../figures.ts';

export const hands = (_f: Figures): Hands => ({
  title: 'Gesundheit und Hände',
});
