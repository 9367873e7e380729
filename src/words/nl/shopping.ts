import type { Shopping } from '../en/shopping.ts';
import type { Figures } from '../figures.ts';

export const shopping = (_f: Figures): Shopping => ({});
