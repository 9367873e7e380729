import type { Wishes } from '../en/wishes.ts';
import type { Figures } from '../figures.ts';

export const wishes = (_f: Figures): Wishes => ({});
