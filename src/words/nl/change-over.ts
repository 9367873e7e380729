import type { ChangeOver } from '../en/change-over.ts';
import type { Figures } from '../figures.ts';

export const changeOver = (_f: Figures): ChangeOver => ({});
