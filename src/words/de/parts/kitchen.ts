/** What is said of the kitchen, from the days to the scale. */
import type { PartOf } from '../../part-shapes.ts';
import { batch } from '../batch.ts';
import { calendar } from '../calendar.ts';
import { cupboard } from '../cupboard.ts';
import { drying } from '../drying.ts';
import { hands } from '../hands.ts';
import { shopping } from '../shopping.ts';
import { verdict } from '../verdict.ts';
import { weighing } from '../weighing.ts';

export const kitchen: PartOf<'kitchen'> = {
  shopping,
  cupboard,
  calendar,
  drying,
  weighing,
  batch,
  verdict,
  hands,
};
