import type { Figures } from '../figures.ts';

export const tradeOff = (_f: Figures) => ({});

export type TradeOff = ReturnType<typeof tradeOff>;
