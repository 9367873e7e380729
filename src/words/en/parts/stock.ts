/** What is said of what is kept and bought. */
import { calendar } from '../calendar.ts';
import { cupboard } from '../cupboard.ts';
import { pelletStock } from '../pellet-stock.ts';
import { shopping } from '../shopping.ts';

export const stock = { calendar, cupboard, pelletStock, shopping };
