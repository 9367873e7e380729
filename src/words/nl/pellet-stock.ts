import type { PelletStock } from '../en/pellet-stock.ts';
import type { Figures } from '../figures.ts';

export const pelletStock = (_f: Figures): PelletStock => ({
  title: 'Brokjes',
});
