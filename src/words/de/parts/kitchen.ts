/** What is said of the kitchen, from the days to the scale. */
import type { PartOf } from '../../parts.ts';
import { batch } from '../batch.ts';
import { calendar } from '../calendar.ts';
import { cupboard } from '../cupboard.ts';
import { drying } from '../drying.ts';
import { feeding } from '../feeding.ts';
import { freezing } from '../freezing.ts';
import { pelletStock } from '../pellet-stock.ts';
import { shopping } from '../shopping.ts';
import { weighing } from '../weighing.ts';

export const kitchen: PartOf<'kitchen'> = {
  shopping,
  cupboard,
  calendar,
  drying,
  freezing,
  weighing,
  batch,
  feeding,
  pelletStock,
};
