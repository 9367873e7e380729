/** How far the change of food to the batch being fed has come. */
import { STEP_DAYS } from '../../../kitchen/calendar/step-days.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Household } from '../../model.ts';
import type { PresentBatch } from '../batch/present-batch.ts';
import type { Circumstances } from './circumstances.ts';

/** Which day of how many it is, the day on which the batch was finished being the first; undefined outside them. */
export function changeOverDay(
  house: Household,
  { batch }: Pick<PresentBatch, 'batch'>,
  { today, dayAt }: Pick<Circumstances, 'today' | 'dayAt'>,
): { readonly day: number; readonly of: number } | undefined {
  if (batch.finishedAt === undefined) return undefined;
  const of = house.kitchen[0]?.stepDays?.['change-over'] ?? STEP_DAYS['change-over'];
  const day = daysBetween(dayAt(batch.finishedAt), today) + 1;
  return day < 1 || day > of ? undefined : { day, of };
}
