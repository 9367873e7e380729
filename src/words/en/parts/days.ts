/** What Now says of the days to come, and what all of the kitchen says. */
import { feeding } from '../feeding.ts';
import { freezing } from '../freezing.ts';
import { steps } from '../steps.ts';
import { supply } from '../supply.ts';

export const days = { steps, feeding, freezing, supply };
