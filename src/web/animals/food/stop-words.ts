import type { MealStop } from '../../../household/reckon/care/daily-meal.ts';
import { sayBarred } from '../../../kitchen/cupboard/barred.ts';
import { words } from '../../../words/words.ts';

/** @param name of the animal */
export function stopWords({ why, batch, lot, foods }: MealStop, name: string): string {
  const t = words().dailyFood.stop;
  if (why === 'upset') return batch ? t.upset(batch.name, foods, name) : t.besideUpset(foods, name);
  if (why === 'refused') return batch ? t.refused(batch.name, foods, name) : t.besideRefused(foods, name);
  const pack = lot?.name ?? '';
  const reason = sayBarred(lot?.barred?.why ?? '');
  return batch ? t[why](batch.name, pack, reason) : t.pack(pack, reason);
}
