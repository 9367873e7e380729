import type { Calendar } from '../en/calendar.ts';
import type { Figures } from '../figures.ts';

export const calendar = (_f: Figures): Calendar => ({});
