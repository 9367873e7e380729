/** Whether the use-by of a batch is near or past. */
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';

/** From so many days before its use-by a batch is spoken of (our own choice, no source). */
const NEAR_DAYS = 14;

/** Undefined while the use-by is further away. */
export function nearUseBy(useBy: Day, today: Day): 'near' | 'past' | undefined {
  const left = daysBetween(today, useBy);
  if (left > NEAR_DAYS) return undefined;
  return left < 0 ? 'past' : 'near';
}
