/** What an animal is fed a day, and how long that lasts. */
import type { Figures } from '../figures.ts';

export const dailyFood = (_f: Figures) => ({
  title: 'Food',
});

export type DailyFood = ReturnType<typeof dailyFood>;
