import type { TradeOff } from '../en/trade-off.ts';
import type { Figures } from '../figures.ts';

export const tradeOff = (_f: Figures): TradeOff => ({});
