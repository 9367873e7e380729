import { feeding } from '../feeding.ts';
import { freezing } from '../freezing.ts';
import { steps } from '../steps.ts';
import { supply } from '../supply.ts';

export const days = { steps, feeding, freezing, supply };
