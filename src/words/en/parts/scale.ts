/** What is said beside the scale. */
import { batch } from '../batch.ts';
import { hands } from '../hands.ts';
import { weighing } from '../weighing.ts';

export const scale = { weighing, hands, batch };
