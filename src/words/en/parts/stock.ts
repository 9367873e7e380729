/** What is said of what is kept, fed and frozen, and when. */
import { batch } from '../batch.ts';
import { calendar } from '../calendar.ts';
import { cupboard } from '../cupboard.ts';
import { feeding } from '../feeding.ts';
import { freezing } from '../freezing.ts';
import { pelletStock } from '../pellet-stock.ts';
import { verdict } from '../verdict.ts';

export const stock = { feeding, freezing, pelletStock, calendar, batch, cupboard, verdict };
