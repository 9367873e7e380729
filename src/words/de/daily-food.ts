import type { DailyFood } from '../en/daily-food.ts';
import type { Figures } from '../figures.ts';

export const dailyFood = (_f: Figures): DailyFood => ({
  title: 'Futter',
});
