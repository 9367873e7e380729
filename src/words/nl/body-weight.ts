import type { BodyWeight } from '../en/body-weight.ts';
import type { Figures } from '../figures.ts';

export const bodyWeight = (_f: Figures): BodyWeight => ({
  title: 'Gewicht',
});
