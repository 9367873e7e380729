import type { Exchange } from '../en/exchange.ts';
import type { Figures } from '../figures.ts';

export const exchange = (_f: Figures): Exchange => ({});
