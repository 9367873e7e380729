import type { Pairing } from '../en/pairing.ts';
import type { Figures } from '../figures.ts';

export const pairing = (_f: Figures): Pairing => ({});
