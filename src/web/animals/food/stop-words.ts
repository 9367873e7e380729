import type { Stop } from '../../../household/reckon/care/daily-meal.ts';
import { words } from '../../../words/words.ts';

/** @param name of the animal */
export function stopWords({ why, batch, lot, foods }: Stop, name: string): string {
  const t = words().dailyFood.stop;
  if (why === 'upset' || why === 'refused') return t[why](batch.name, foods, name);
  return t[why](batch.name, lot?.name ?? '', lot?.barred?.why ?? '');
}
