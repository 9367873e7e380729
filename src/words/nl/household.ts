import type { Household } from '../en/household.ts';
import type { Figures } from '../figures.ts';

export const household = (_f: Figures): Household => ({});
